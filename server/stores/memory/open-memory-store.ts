import { collectDump, type DumpContent } from "../../chain/collect-dump.ts";
import { changeDoesNotFit, storeNotEmpty } from "../../chain/refusals.ts";
import { sealDump } from "../../chain/seal-dump.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { DumpRecord } from "../../domain/dump.ts";
import type { Examination } from "../../domain/examination.ts";
import { frozenCopy } from "../../domain/frozen-copy.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { type ExaminationWrite, nextVersion } from "../../domain/next-version.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { checkCount } from "../../ports/check-count.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { Store, Written } from "../../ports/store.ts";
import { searchGraph } from "../../search/search-graph.ts";
import { type Drawer, findVersion, listNewest, withVersion } from "./examination-drawer.ts";
import { editsOf, extendHistory, graphAt, type History } from "./graph-history.ts";
import { isClaimIn, isTermIn } from "./is-wanted.ts";
import { pageOf, pick, sorted } from "./page-of.ts";
import { verifyHistory } from "./verify-history.ts";
import { walkGraph } from "./walk-graph.ts";

/** What the store holds at one moment. Never changed: a write puts another in its place. */
interface State {
  readonly history: History;
  readonly drawer: Drawer;
}

/** A store in memory, for tests and for reading a dump: the obvious reference of the contract. Starts empty. */
export function openMemoryStore(): Store {
  let { history, drawer }: State = { history: [], drawer: new Map() };
  const writes: Written[] = [];
  const note = (written: Omit<Written, "sequence">): void => {
    writes.push(deepFreeze({ sequence: writes.length + 1, ...written }));
  };

  const writeExamination = async (
    id: ExaminationId,
    write: ExaminationWrite,
  ): Promise<Examination | Problem> => {
    const next = nextVersion(id, (version) => findVersion(drawer, id, version), frozenCopy(write));
    if (isProblem(next)) return next;
    drawer = withVersion(drawer, deepFreeze(next));
    note({ examination: { id, version: next.version } });
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
    commit: async (commit) => {
      const extended = extendHistory(history, frozenCopy(commit));
      if (isProblem(extended)) return extended;
      history = extended;
      note({ revision: history.length });
      return (history.at(-1) as History[number]).revision;
    },

    neighbourhood: async (ask) => walkGraph(graphAt(history, ask.at), ask.at ?? history.length, ask),
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

    createExamination: (id, piece, at) => writeExamination(id, { does: "create", piece, at }),
    changeExamination: (id, on, piece, at) => writeExamination(id, { does: "change", on, piece, at }),
    undoExamination: (id, on, at) => writeExamination(id, { does: "undo", on, at }),
    deleteExamination: (id, on, at) => writeExamination(id, { does: "delete", on, at }),
    examination: async (id, version) => findVersion(drawer, id, version),
    listExaminations: async (page) => listNewest(drawer, page),

    newestWrite: async () => writes.length,
    writesAfter: async (sequence, first) => writes.slice(sequence, sequence + checkCount(first)),

    dump: async function* () {
      yield* sealDump([...records({ history, drawer })]);
    },
    restore: async (dump) => {
      const content = await collectDump(dump);
      if (isProblem(content)) return content;
      if (history.length > 0 || drawer.size > 0) return storeNotEmpty();
      const restored = restoredHistory(content.revisions);
      if (isProblem(restored)) return restored;
      history = restored;
      drawer = content.examinations.map(frozenCopy).reduce(withVersion, drawer);
      const revision = history.length;
      if (content.revisions.length + content.examinations.length > 0)
        note({ ...(revision === 0 ? {} : { revision }), restored: true });
      return { records: content.records };
    },
    verify: async () => verifyHistory(history),
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

type Kept = Extract<DumpRecord, { kind: "revision" | "examination" }>;
const records = ({ history, drawer }: State): readonly Kept[] => [
  ...history.map(({ revision, change }): Kept => ({ kind: "revision", revision, change })),
  ...[...drawer.keys()]
    .sort()
    .flatMap((id) => drawer.get(id) ?? [])
    .map((examination): Kept => ({ kind: "examination", examination })),
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
