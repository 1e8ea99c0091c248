import type { Claim } from "../../domain/claim.ts";
import { frozenCopy } from "../../domain/frozen-copy.ts";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import { keepChanges } from "../../ports/keep-changes.ts";
import { checkLife } from "../../ports/notes.ts";
import type { Store } from "../../ports/store.ts";
import { searchGraph } from "../../search/search-graph.ts";
import { findCards, listCards } from "./cards.ts";
import { type ConnectOptions, connect } from "./connect.ts";
import type { Database } from "./database.ts";
import { dumpDatabase } from "./dump-database.ts";
import { findExamination, listExaminations } from "./examinations.ts";
import { listEdits } from "./list-edits.ts";
import type { Neo4jAddress } from "./neo4j-address.ts";
import { findNotes, putNotes } from "./notes.ts";
import { readNeighbourhood } from "./read-neighbourhood.ts";
import { ALL, listThings, readThings, sliceThings, wantedClaims, wantedTerms } from "./read-things.ts";
import { readWalkBlocks } from "./read-walk-blocks.ts";
import { restoreRecords } from "./restore-records.ts";
import { findRevision, listRevisions, newestRevision, readChange } from "./revisions.ts";
import { readEditCounts } from "./tally.ts";
import { verifyDatabase } from "./verify-database.ts";
import { writeExamination } from "./write-examination.ts";
import { commitChange, wouldRefuse, writeCardsAlone } from "./write-graph.ts";
import { newestWrite, writesAfter } from "./writes.ts";

/**
 * Opens a store of a Neo4j server, whose database is prepared where it is new. Any number of programs may read and write.
 * What keeps it from opening is a problem: `STORE_UNREACHABLE`, `WRONG_FORMAT` (a database of another program),
 * `OTHER_VERSION` (a later store).
 */
export async function openNeo4jStore(
  address: Neo4jAddress,
  { readOnly = false, patience = 10_000, rowsAtOnce = 5_000 }: Partial<ConnectOptions> = {},
): Promise<Store | Problem> {
  const database = await connect(address, { readOnly, patience, rowsAtOnce });
  return isProblem(database) ? database : storeIn(database, readOnly);
}

function storeIn(database: Database, readOnly: boolean): Store {
  const graph: Pick<Store, "newestRevision" | "changeAt" | "allTerms" | "allClaims"> = {
    newestRevision: () => newestRevision(database.read),
    changeAt: keepChanges(
      async (revision) => (await findRevision(database.read, revision)) && readChange(database, revision),
    ),
    allTerms: (filter, at) => sliceThings<Term>(database, "term", wantedTerms(filter), at),
    allClaims: (filter, at) => sliceThings<Claim>(database, "claim", wantedClaims(filter), at),
  };
  const write = async <Answer>(what: () => Promise<Answer | Problem>): Promise<Answer | Problem> =>
    readOnly ? openedToRead() : what();

  return {
    name: "neo4j",

    ...graph,
    editCounts: (revisions) => readEditCounts(database, revisions),
    revisions: (page) => listRevisions(database, page),
    revision: (number) => findRevision(database.read, number),
    history: (kind, id, page) => listEdits(database, kind, id, page),
    commit: (commit) => {
      const copy = frozenCopy(commit);
      return write(() => commitChange(database, copy));
    },

    wouldRefuse: (change) => wouldRefuse(database, change),

    neighbourhood: (ask) => readNeighbourhood(database, ask),
    walkBlocks: (at) => readWalkBlocks(database, at),
    terms: (ids, at) => readThings<Term>(database, "term", ids, at),
    claims: (ids, at) => readThings<Claim>(database, "claim", ids, at),
    sources: (ids, at) => readThings<Source>(database, "source", ids, at),
    listTerms: (filter, page, at) => listThings<Term>(database, "term", wantedTerms(filter), page, at),
    listClaims: (filter, page, at) => listThings<Claim>(database, "claim", wantedClaims(filter), page, at),
    listSources: (page, at) => listThings<Source>(database, "source", ALL, page, at),
    search: searchGraph(graph),

    createExamination: (id, piece, at, along) => {
      const copy = frozenCopy({ piece, along });
      return write(() =>
        writeExamination(database, id, { does: "create", piece: copy.piece, at }, copy.along),
      );
    },
    changeExamination: (id, on, piece, at, along) => {
      const copy = frozenCopy({ piece, along });
      return write(() =>
        writeExamination(database, id, { does: "change", on, piece: copy.piece, at }, copy.along),
      );
    },
    undoExamination: (id, on, at, along) => {
      const copy = along && frozenCopy(along);
      return write(() => writeExamination(database, id, { does: "undo", on, at }, copy));
    },
    deleteExamination: (id, on, at, along) => {
      const copy = along && frozenCopy(along);
      return write(() => writeExamination(database, id, { does: "delete", on, at }, copy));
    },
    examination: (id, version) => findExamination(database.read, id, version),
    listExaminations: (page, leftOut) => listExaminations(database, page, leftOut),

    writeCards: (along) => {
      const copy = frozenCopy(along);
      return write(() => writeCardsAlone(database, copy));
    },
    card: async (kind, id) => (await findCards(database.read, kind, [id])).get(id),
    cards: (kind, ids) => findCards(database.read, kind, ids),
    listCards: (filter, page, order = "up") => listCards(database, filter, page, order),

    leaveNotes: async (by, notes, life) => {
      const copy = frozenCopy({ by, notes, life: checkLife(life) });
      return write(() => putNotes(database, copy.by, copy.notes, copy.life));
    },
    notesAbout: (about) => findNotes(database, about),

    newestWrite: () => newestWrite(database),
    writesAfter: (sequence, first) => writesAfter(database, sequence, first),

    dump: () => dumpDatabase(database),
    restore: (records) => write(() => restoreRecords(database, records)),
    verify: (progress) => verifyDatabase(database, progress),
    close: () => database.close(),
  };
}

const openedToRead = (): Problem =>
  problem("STORE_LOCKED", "The store was opened to read only; nothing was written.");
