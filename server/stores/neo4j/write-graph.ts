import { randomUUID } from "node:crypto";
import { checkCommit } from "../../chain/check-commit.ts";
import { collectDump, type DumpContent } from "../../chain/collect-dump.ts";
import { linkRevision } from "../../chain/link-revision.ts";
import { changeDoesNotFit, storeNotEmpty } from "../../chain/refusals.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { DumpRecord } from "../../domain/dump.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Commit } from "../../ports/store.ts";
import { contentOf } from "./content.ts";
import type { Database } from "./database.ts";
import { findRevision, newestRevision } from "./revisions.ts";
import { standingGraph } from "./standing-graph.ts";
import { checkOnStanding } from "./view-of-change.ts";
import { writePlanned } from "./write-planned.ts";
import { newestWrite } from "./writes.ts";

/** Makes one revision of a change, or says why not. */
export function commitChange(database: Database, commit: Commit): Promise<Revision | Problem> {
  const { change, expected } = commit;
  return writePlanned<Revision>(
    database,
    randomUUID(),
    async (run, state) => {
      const newest = state.revision === 0 ? undefined : await newestRevision(run);
      const check = (view: Parameters<typeof checkCommit>[0]): Problem | undefined =>
        checkCommit(view, state.revision, change, expected);
      const refusal =
        state.revision === 0 ? check(standingGraph().view) : await checkOnStanding(run, change, check);
      if (refusal !== undefined) return refusal;
      const revision = deepFreeze(linkRevision(change, commit, newest));
      return {
        content: contentOf([{ revision, change }]),
        revision: revision.number,
        note: { revision: revision.number },
        answer: revision,
      };
    },
    async (run, { revision = 0 }) => {
      const written = await findRevision(run, revision);
      if (written === undefined) throw new Error(`Revision ${revision} was written and is gone`);
      return written;
    },
  );
}

/** Makes every change of a dump anew, then puts its examinations in; into an empty store only. */
export async function restoreRecords(
  database: Database,
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
): Promise<{ readonly records: number } | Problem> {
  const content = await collectDump(records);
  if (isProblem(content)) return content;
  const done = { records: content.records };
  if (content.revisions.length + content.examinations.length === 0)
    return (await newestWrite(database)) === 0 ? done : storeNotEmpty();
  return writePlanned(
    database,
    randomUUID(),
    async (_, state) => {
      if (state.sequence > 0) return storeNotEmpty();
      const refusal = findUnfit(content);
      if (refusal !== undefined) return refusal;
      const revision = content.revisions.length;
      return {
        content: { ...contentOf(content.revisions), examinations: content.examinations },
        ...{ revision, answer: done },
        note: { ...(revision === 0 ? {} : { revision }), restored: true },
      };
    },
    async () => done,
  );
}

/** The first change of a dump that a commit would refuse. */
function findUnfit({ revisions }: DumpContent): Problem | undefined {
  const graph = standingGraph();
  for (const { revision, change } of revisions) {
    const refusal = checkCommit(graph.view, revision.number - 1, change, undefined);
    if (refusal !== undefined) return changeDoesNotFit(revision.number, refusal);
    graph.apply(change);
  }
  return undefined;
}
