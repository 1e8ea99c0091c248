import { textsOf } from "../../chain/change-text.ts";
import { checkCommit } from "../../chain/check-commit.ts";
import { linkRevision } from "../../chain/link-revision.ts";
import { hashOfVersion } from "../../chain/link-written.ts";
import type { Claim } from "../../domain/claim.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Examination } from "../../domain/examination.ts";
import { frozenCopy } from "../../domain/frozen-copy.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { type ExaminationWrite, nextVersion } from "../../domain/next-version.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import { keepChanges } from "../../ports/keep-changes.ts";
import { checkLife } from "../../ports/notes.ts";
import type { Along, Store } from "../../ports/store.ts";
import { searchGraph } from "../../search/search-graph.ts";
import { findCard, findCards, listCards } from "./cards.ts";
import { claimConditions, termConditions } from "./conditions.ts";
import type { Database } from "./database.ts";
import { dumpFile } from "./dump-file.ts";
import { addVersion, findExamination, listExaminations } from "./examinations.ts";
import { followOthers } from "./follow-others.ts";
import { listEdits } from "./list-edits.ts";
import { listThings } from "./list-things.ts";
import { neighbourhoodCache } from "./neighbourhood-cache.ts";
import { findNotes, putNotes } from "./notes.ts";
import { type OpenOptions, openFile, TO_WRITE_MUCH } from "./open-file.ts";
import { readNeighbourhood } from "./read-neighbourhood.ts";
import { readThings } from "./read-things.ts";
import { readWalkBlocks } from "./read-walk-blocks.ts";
import { restoreFile } from "./restore-file.ts";
import { findRevision, listRevisions, newestRevision, readChange } from "./revisions.ts";
import { sliceThings } from "./slice-things.ts";
import { standingView } from "./standing-view.ts";
import { readEditCounts } from "./tally.ts";
import { verifyFile } from "./verify-file.ts";
import { writeRevision } from "./write-rows.ts";
import { newestWrite, noteWrite, writesAfter } from "./writes.ts";

/**
 * Opens the store in a file, which is made with its folder where it is missing. Several programs of this version on one
 * machine may write to it. What keeps it from opening is a problem: `STORE_LOCKED`, `STORE_CORRUPT`, `STORE_FULL`,
 * `STORE_UNREACHABLE`, `WRONG_FORMAT` (a database of another program), `OTHER_VERSION` (a later store, or too old a SQLite).
 * `patience` is how long to wait for another program, in milliseconds.
 */
export async function openSqliteStore(
  path: string,
  { readOnly = false, patience = 5000 }: Partial<OpenOptions> = {},
): Promise<Store | Problem> {
  const database = await openFile(path, { readOnly, patience });
  return isProblem(database) ? database : storeIn(database, path, patience);
}

/** Edits from which on a change is a large one. */
const MUCH = 5_000;

function storeIn(database: Database, path: string, patience: number): Store {
  const cache = neighbourhoodCache();
  const others = followOthers(database, cache);
  /** A restore that is under way: it writes over a connection of its own, and other writes wait for its end. */
  let filled: Promise<unknown> = Promise.resolve();
  const write = async <Answer>(what: () => Answer | Problem): Promise<Answer | Problem> => {
    await filled;
    return database.write(what);
  };
  /** Reads one state, after forgetting what another program may have changed. */
  const read = <Answer>(what: () => Answer): Promise<Answer> =>
    database.read(() => {
      others.follow();
      return what();
    });

  const writeExamination = async (
    id: ExaminationId,
    wanted: ExaminationWrite,
    along?: Along,
  ): Promise<Examination | Problem> => {
    const { does, with: beside } = frozenCopy({ does: wanted, with: along });
    const done = await write(() => {
      const next = nextVersion(id, (version) => findExamination(database, id, version), does);
      if (isProblem(next)) return next;
      addVersion(database, next);
      const examination = { id, version: next.version };
      const noted = noteWrite(database, { examination }, { examination: hashOfVersion(next) }, beside);
      return isProblem(noted) ? noted : { next: deepFreeze(next), sequence: noted.sequence };
    });
    if (isProblem(done)) return done;
    others.wrote(done.sequence);
    return done.next;
  };

  const graph: Pick<Store, "newestRevision" | "changeAt" | "allTerms" | "allClaims"> = {
    newestRevision: () => read(() => newestRevision(database)),
    changeAt: keepChanges((revision) => read(() => readChange(database, revision))),
    allTerms: (filter, at) => sliceThings<Term>(database, "term", termConditions(filter), at),
    allClaims: (filter, at) => sliceThings<Claim>(database, "claim", claimConditions(filter), at),
  };

  return {
    name: "sqlite",

    editCounts: (revisions) => read(() => readEditCounts(database, revisions)),
    revisions: (page) => read(() => listRevisions(database, page)),
    revision: (number) => read(() => findRevision(database, number)),
    history: (kind, id, page) => read(() => listEdits(database, kind, id, page)),
    commit: async (commit) => {
      const { change, expected, ...about } = frozenCopy(commit);
      const done = await write(() => {
        if (change.length > MUCH) database.raw.exec(TO_WRITE_MUCH);
        const newest = newestRevision(database);
        const refusal = checkCommit(standingView(database, change), newest?.number ?? 0, change, expected);
        if (refusal !== undefined) return refusal;
        const texts = textsOf(change);
        const revision = linkRevision(texts.change, about, newest);
        writeRevision(database, revision, change, texts);
        const made = { revision: revision.hash };
        const noted = noteWrite(database, { revision: revision.number }, made, about);
        return isProblem(noted) ? noted : { revision: deepFreeze(revision), sequence: noted.sequence };
      });
      if (isProblem(done)) return done;
      for (const { kind, before } of change) if (kind === "term" && before) cache.forgetTerm(before.id);
      others.wrote(done.sequence);
      return done.revision;
    },

    wouldRefuse: (change) => read(() => checkCommit(standingView(database, change), 0, change, undefined)),

    neighbourhood: (ask) => read(() => readNeighbourhood(database, cache, ask)),
    walkBlocks: (at) => readWalkBlocks(read, database, at),
    terms: (ids, at) => read(() => readThings<Term>(database, "term", ids, at)),
    claims: (ids, at) => read(() => readThings<Claim>(database, "claim", ids, at)),
    sources: (ids, at) => read(() => readThings<Source>(database, "source", ids, at)),
    listTerms: (filter, page, at) =>
      read(() => listThings<Term>(database, "term", termConditions(filter), page, at)),
    listClaims: (filter, page, at) =>
      read(() => listThings<Claim>(database, "claim", claimConditions(filter), page, at)),
    listSources: (page, at) => read(() => listThings<Source>(database, "source", [], page, at)),
    ...graph,
    search: searchGraph(graph),

    createExamination: (id, piece, at, along) => writeExamination(id, { does: "create", piece, at }, along),
    changeExamination: (id, on, piece, at, along) =>
      writeExamination(id, { does: "change", on, piece, at }, along),
    undoExamination: (id, on, at, along) => writeExamination(id, { does: "undo", on, at }, along),
    deleteExamination: (id, on, at, along) => writeExamination(id, { does: "delete", on, at }, along),
    examination: (id, version) => read(() => findExamination(database, id, version)),
    listExaminations: (page, leftOut) => read(() => listExaminations(database, page, leftOut)),

    writeCards: async (along) => {
      const copy = frozenCopy(along);
      const done = await write(() => noteWrite(database, {}, {}, copy));
      if (!isProblem(done)) others.wrote(done.sequence);
      return done;
    },
    card: (kind, id) => read(() => findCard(database, kind, id)),
    cards: (kind, ids) => read(() => findCards(database, kind, ids)),
    listCards: (filter, page, order = "up") => read(() => listCards(database, filter, page, order)),

    leaveNotes: async (by, notes, life) => {
      const copy = frozenCopy({ by, notes, life: checkLife(life) });
      return write(() => {
        putNotes(database, copy.by, copy.notes, copy.life);
        return "left";
      });
    },
    notesAbout: (about) => read(() => findNotes(database, about)),

    newestWrite: () => read(() => newestWrite(database)),
    writesAfter: (sequence, first) => read(() => writesAfter(database, sequence, first)),

    dump: () => dumpFile(path),
    restore: async (records) => {
      const done = filled.then(() => restoreFile(path, records, patience));
      filled = done.catch(() => undefined);
      return done;
    },
    verify: (progress) => verifyFile(path, progress),
    close: async () => {
      await filled;
      await database.close();
    },
  };
}
