import { randomUUID } from "node:crypto";
import { mkdirSync, readdirSync } from "node:fs";
import { changeText, keepInOrder } from "../../../chain/change-text.ts";
import { linkRevision } from "../../../chain/link-revision.ts";
import { deepFreeze } from "../../../domain/deep-freeze.ts";
import { isProblem, type Problem, problem } from "../../../domain/problem.ts";
import type { Revision } from "../../../domain/revision.ts";
import type { Tally } from "../../../domain/tally.ts";
import { type FillTarget, NOTHING_STANDS } from "../../../ports/import-target.ts";
import type { Store } from "../../../ports/store.ts";
import { NO_CARDS } from "../cards.ts";
import { contentOf } from "../content.ts";
import { readDump } from "../restore-records.ts";
import { lineAfter, type StoreState } from "../store-state.ts";
import type { Ending } from "../write-planned.ts";
import { openBulkFiles } from "./bulk-files.ts";
import { leaveMark } from "./filled-mark.ts";
import { layGraph } from "./lay-graph.ts";

/** Files that fill a new database in bulk, while they are written: a store that is empty and takes an import or a dump. */
export interface Fill extends FillTarget, Pick<Store, "restore"> {}

/** How far the store has come that the files make. */
type Reached = Pick<StoreState, "revision" | "sequence" | "head">;

/** Begins the files for the store of a name in a folder that is empty or not there. */
export function openFill(folder: string, store: string): Fill | Problem {
  const refusal = makeEmpty(folder);
  if (refusal !== undefined) return refusal;
  const files = openBulkFiles(folder);
  const graph = layGraph(files, store);
  let newest: Revision | undefined;
  let tally: Tally = {};
  let state: Reached = { revision: 0, sequence: 0, head: null };
  let before: Reached | undefined;
  const end = (ending: Omit<Ending<unknown>, "answer">): void => {
    graph.end(ending, randomUUID());
    before = state;
    const last = ending.lines.at(-1);
    state = { revision: ending.revision, sequence: last?.sequence ?? 0, head: last?.hash ?? null };
  };

  return {
    ...NOTHING_STANDS,
    newestRevision: async () => newest,
    commit: async ({ change: given, ...authorship }) => {
      const change = keepInOrder(given);
      const revision = deepFreeze(linkRevision(changeText(change), authorship, newest));
      const content = contentOf([{ revision, change }], tally);
      graph.add(content);
      const line = lineAfter(state, { revision: revision.number }, { revision: revision.hash });
      end({ revision: revision.number, lines: [line], cards: NO_CARDS, examinations: [] });
      tally = content.revisions.at(-1)?.tally ?? tally;
      newest = revision;
      return revision;
    },
    restore: async (records) => {
      // One revision after the other, so that no more than one is in memory.
      const read = readDump(records, 0);
      for await (const content of read.contents) {
        if (isProblem(content)) return content;
        graph.add(content);
      }
      end(read.ending());
      return read.done();
    },
    end: async () => {
      files.node("Store", { name: store }, storeNode(state, before));
      leaveMark(files);
      files.end();
      return undefined;
    },
    drop: async () => files.drop(),
  };
}

/** The properties of the node of a store that came so far, and before its last write to there. */
const storeNode = ({ revision, sequence, head }: Reached, before: Reached | undefined): object => ({
  ...{ revision, sequence },
  ...(head === null ? {} : { head }),
  ...(before && { revisionBefore: before.revision, sequenceBefore: before.sequence }),
});

/** Makes a folder that nobody else may read, because the files hold everything. */
function makeEmpty(folder: string): Problem | undefined {
  // The importer takes signs of other kinds for patterns, and a comma for the end of a name.
  if (!/^[\w./-]+$/.test(folder))
    return problem(
      "WRONG_FORMAT",
      `The bulk import cannot be told of files in ${folder}; choose a folder whose path has letters, digits, dots, dashes and slashes alone.`,
    );
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  if (readdirSync(folder).length === 0) return undefined;
  return problem(
    "STORE_NOT_EMPTY",
    `${folder} holds files already, perhaps of a run that was broken off; empty it, or choose another folder.`,
  );
}
