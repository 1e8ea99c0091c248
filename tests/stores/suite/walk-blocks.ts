import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Graph } from "#server/domain/change.ts";
import type { Store } from "#server/ports/store.ts";
import { idsOf, type WalkBlock } from "#server/ports/walk-block.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";

/** The rows of blocks, a line each, sorted. */
async function linesOf(blocks: AsyncIterable<WalkBlock>): Promise<readonly string[]> {
  const lines: string[] = [];
  let hasOthers = false;
  for await (const { rows, ...columns } of blocks) {
    expect(rows !== "terms" || !hasOthers, "terms come first").toBe(true);
    hasOthers ||= rows !== "terms";
    const texts = Object.entries(columns).map(([name, column]) => [name, idsOf(column)] as const);
    const [first] = texts;
    for (const [, ids] of texts) expect(ids).toHaveLength(first?.[1].length ?? 0);
    for (const i of first?.[1].keys() ?? [])
      lines.push(
        [
          rows,
          ...texts.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([name, ids]) => `${name}=${ids[i]}`),
        ].join(" "),
      );
  }
  return lines.sort();
}

/** The same as rule S50 says it. */
function linesByDefinition({ terms, claims }: Graph): readonly string[] {
  const lines: string[] = [];
  for (const { id, broader = "" } of terms.values()) lines.push(`terms broader=${broader} id=${id}`);
  for (const claim of claims.values()) {
    if (claim.status !== "accepted") continue;
    if (claim.relation === "void when") lines.push(`exceptions claim=${claim.id} of=${claim.of}`);
    else lines.push(`statements claim=${claim.id} subject=${claim.subject}`);
    if (claim.relation !== "requires") continue;
    const { subject, scope } = claim;
    for (const target of terms.keys())
      if (claim.ways.some((way) => way.some((named) => named === target)))
        lines.push(`leads region=${scope.region ?? ""} subject=${subject} target=${target}`);
  }
  return lines.sort();
}

/** Rule S50: the rows that a walk runs over. */
export function walkBlockGroup(open: () => Promise<Store>, runs: number): void {
  describe("the rows a walk runs over", () => {
    it("[S50] are, at any revision, what the graph says", async () => {
      await fc.assert(
        fc.asyncProperty(anyHistory, async ({ changes, graphs }) => {
          const store = await open();
          for (const change of changes) answered(await store.commit(aCommit(change)));
          for (const [at, graph] of graphs.entries())
            expect(await linesOf(store.walkBlocks(at))).toEqual(linesByDefinition(graph));
          await store.close();
        }),
        { numRuns: runs },
      );
    });

    it("[S50] stay those of their revision while others are made", async () => {
      const store = await open();
      const [history] = fc.sample(
        anyHistory.filter(({ changes }) => changes.length > 1),
        { numRuns: 1, seed: 5 },
      );
      const [first, ...later] = history?.changes ?? [];
      answered(await store.commit(aCommit(first ?? [])));
      const whileWritten = async function* (): AsyncGenerator<WalkBlock> {
        for await (const block of store.walkBlocks(1)) {
          yield block;
          const next = later.shift();
          if (next !== undefined) answered(await store.commit(aCommit(next)));
        }
      };
      expect(await linesOf(whileWritten())).toEqual(linesByDefinition(history?.graphs[1] as Graph));
      expect((await store.newestRevision())?.number).toBeGreaterThan(1);
    });

    it("[S50] [S1] are refused of a revision that does not exist", async () => {
      const store = await open();
      await expect(linesOf(store.walkBlocks(1))).rejects.toThrow(RangeError);
    });
  });
}
