import { checkCommit } from "../../chain/check-commit.ts";
import { collectDump, type DumpContent } from "../../chain/collect-dump.ts";
import { findBrokenLedger, keyOfVersion } from "../../chain/find-broken-ledger.ts";
import { hashOfVersion, linkWritten, type MadeByWrite } from "../../chain/link-written.ts";
import { changeDoesNotFit, ledgerTampered, storeNotEmpty } from "../../chain/refusals.ts";
import { sealDump } from "../../chain/seal-dump.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { DumpedThing } from "../../domain/dump.ts";
import type { Examination } from "../../domain/examination.ts";
import { frozenCopy } from "../../domain/frozen-copy.ts";
import { viewOfGraph } from "../../domain/graph-view.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { type ExaminationWrite, nextVersion } from "../../domain/next-version.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { WriteNote, Written } from "../../domain/written.ts";
import { checkCount } from "../../ports/check-count.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { Along, Store } from "../../ports/store.ts";
import { searchGraph } from "../../search/search-graph.ts";
import {
  allCards,
  type Cards,
  cardsOf,
  findCard,
  findCards,
  leavesOut,
  listCards,
  withCards,
} from "./card-drawer.ts";
import { allVersions, type Drawer, findVersion, listNewest, withVersion } from "./examination-drawer.ts";
import { editsOf, extendHistory, graphAt, type History } from "./graph-history.ts";
import { isClaimIn, isTermIn } from "./is-wanted.ts";
import { openNotes } from "./open-notes.ts";
import { pageOf, pick, sorted } from "./page-of.ts";
import { verifyHistory } from "./verify-history.ts";
import { walkBlocks } from "./walk-blocks.ts";
import { walkGraph } from "./walk-graph.ts";

/** What the store holds at one moment. Never changed: a write puts another in its place. */
interface State {
  readonly history: History;
  readonly drawer: Drawer;
  readonly cards: Cards;
  readonly ledger: readonly Written[];
}

/** A store in memory, for tests and for reading a dump: the obvious reference of the contract. Starts empty. */
export function openMemoryStore(): Store {
  let { history, drawer, cards, ledger }: State = {
    ...{ history: [], drawer: new Map(), cards: new Map(), ledger: [] },
  };
  /** Writes what goes along with a write and its line in the ledger, or says why not. */
  const note = (
    what: WriteNote,
    made: MadeByWrite,
    { cards: writes = [], deed }: Along = {},
  ): Written | Problem => {
    const carded = withCards(cards, frozenCopy(writes));
    if (isProblem(carded)) return carded;
    const line = linkWritten({ ...what, cards: carded.written, deed }, made, ledger.at(-1));
    cards = carded.cards;
    ledger = [...ledger, frozenCopy(line)];
    return ledger.at(-1) as Written;
  };

  const writeExamination = async (
    id: ExaminationId,
    write: ExaminationWrite,
    along?: Along,
  ): Promise<Examination | Problem> => {
    const next = nextVersion(id, (version) => findVersion(drawer, id, version), frozenCopy(write));
    if (isProblem(next)) return next;
    const examination = { id, version: next.version };
    const noted = note({ examination }, { examination: hashOfVersion(next) }, along);
    if (isProblem(noted)) return noted;
    drawer = withVersion(drawer, deepFreeze(next));
    return next;
  };

  const newestRevision: Store["newestRevision"] = async () => history.at(-1)?.revision;
  const changeAt: Store["changeAt"] = async (revision) => history[revision - 1]?.change;
  const slices: Pick<Store, "allTerms" | "allClaims"> = {
    allTerms: (filter, at) => inSlices(() => graphAt(history, at).terms, isTermIn(filter)),
    allClaims: (filter, at) => inSlices(() => graphAt(history, at).claims, isClaimIn(filter)),
  };

  return {
    name: "memory",

    newestRevision,
    revisions: async (page) =>
      pageOf(
        history.map(({ revision }) => revision).reverse(),
        page,
        ({ number }) => String(number),
        ({ number }, cursor) => number < Number(cursor),
      ),
    revision: async (number) => history[number - 1]?.revision,
    history: async (kind, id, page) =>
      pageOf(
        editsOf(history, kind, id).toReversed(),
        page,
        ({ revision }) => String(revision.number),
        ({ revision }, cursor) => revision.number < Number(cursor),
      ),
    changeAt,
    editCounts: async (revisions) =>
      new Map(
        revisions
          .toSorted((a, b) => a - b)
          .flatMap((number) => {
            const step = history[number - 1];
            return step === undefined ? [] : [[number, step.change.length] as const];
          }),
      ),
    commit: async (commit) => {
      const extended = extendHistory(history, frozenCopy(commit));
      if (isProblem(extended)) return extended;
      const { revision } = extended.at(-1) as History[number];
      const noted = note({ revision: revision.number }, { revision: revision.hash }, commit);
      if (isProblem(noted)) return noted;
      history = extended;
      return revision;
    },

    wouldRefuse: async (change) =>
      checkCommit(viewOfGraph(graphAt(history)), history.length, change, undefined),

    neighbourhood: async (ask) => walkGraph(graphAt(history, ask.at), ask.at ?? history.length, ask),
    walkBlocks: async function* (at) {
      yield* walkBlocks(graphAt(history, at));
    },
    terms: async (ids, at) => pick(graphAt(history, at).terms, ids),
    claims: async (ids, at) => pick(graphAt(history, at).claims, ids),
    sources: async (ids, at) => pick(graphAt(history, at).sources, ids),
    listTerms: async (filter, page, at) =>
      pageOf(sorted(graphAt(history, at).terms).filter(isTermIn(filter)), page, ({ id }) => id),
    listClaims: async (filter, page, at) =>
      pageOf(sorted(graphAt(history, at).claims).filter(isClaimIn(filter)), page, ({ id }) => id),
    listSources: async (page, at) => pageOf(sorted(graphAt(history, at).sources), page, ({ id }) => id),
    ...slices,
    search: searchGraph({ newestRevision, changeAt, ...slices }),

    createExamination: (id, piece, at, along) => writeExamination(id, { does: "create", piece, at }, along),
    changeExamination: (id, on, piece, at, along) =>
      writeExamination(id, { does: "change", on, piece, at }, along),
    undoExamination: (id, on, at, along) => writeExamination(id, { does: "undo", on, at }, along),
    deleteExamination: (id, on, at, along) => writeExamination(id, { does: "delete", on, at }, along),
    examination: async (id, version) => findVersion(drawer, id, version),
    listExaminations: async (page, leftOut) => listNewest(drawer, page, leavesOut(cards, leftOut)),

    writeCards: async (along) => note({}, {}, along),
    card: async (kind, id) => findCard(cards, kind, id),
    cards: async (kind, ids) => findCards(cards, kind, ids),
    listCards: async (filter, page, order = "up") => listCards(cards, filter, page, order),

    ...openNotes(),

    newestWrite: async () => ledger.length,
    writesAfter: async (sequence, first) => ledger.slice(sequence, sequence + checkCount(first)),

    dump: async function* () {
      yield* sealDump([...records({ history, drawer, cards, ledger })]);
    },
    restore: async (dump) => {
      const content = await collectDump(dump);
      if (isProblem(content)) return content;
      if (ledger.length > 0) return storeNotEmpty();
      const restored = restoredHistory(content.revisions);
      if (isProblem(restored)) return restored;
      history = restored;
      drawer = content.examinations.map(frozenCopy).reduce(withVersion, drawer);
      cards = cardsOf(frozenCopy(content.cards));
      ledger = frozenCopy(content.writes);
      return { records: content.records };
    },
    verify: async (progress) => {
      progress?.(() => "Making the changes again");
      const broken = findBrokenLedger({
        revisions: history.map(({ revision }) => revision.hash),
        versions: new Map(
          allVersions(drawer).map((version) => [keyOfVersion(version), hashOfVersion(version)]),
        ),
        ...{ cards: allCards(cards), writes: ledger },
      });
      return broken === undefined ? verifyHistory(history) : ledgerTampered(broken);
    },
    close: async () => {},
  };
}

async function* inSlices<Thing>(
  read: () => ReadonlyMap<string, Thing>,
  isWanted: (thing: Thing) => boolean,
): AsyncGenerator<readonly Thing[]> {
  const wanted = [...read().values()].filter(isWanted);
  for (let from = 0; from < wanted.length; from += ROWS_AT_ONCE) {
    if (from > 0) await nextTurn();
    yield wanted.slice(from, from + ROWS_AT_ONCE);
  }
}
const ROWS_AT_ONCE = 500;

const records = ({ history, drawer, cards, ledger }: State): readonly DumpedThing[] => [
  ...history.map(({ revision, change }): DumpedThing => ({ kind: "revision", revision, change })),
  ...allVersions(drawer).map((examination): DumpedThing => ({ kind: "examination", examination })),
  ...allCards(cards).map((card): DumpedThing => ({ kind: "card", card })),
  ...ledger.map((write): DumpedThing => ({ kind: "write", write })),
];

/** Makes every change of a dump anew. */
function restoredHistory(revisions: DumpContent["revisions"]): History | Problem {
  let history: History = [];
  for (const { revision, change } of revisions) {
    const extended = extendHistory(history, frozenCopy({ ...revision, change }));
    if (isProblem(extended)) return changeDoesNotFit(revision.number, extended);
    history = extended;
  }
  return history;
}
