import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { findAllDisagreements } from "#server/reasoning/disagreements/find-all.ts";
import { foreseeDisagreements } from "#server/use-cases/ask/foresee-disagreements.ts";
import { anyAct, anyBeginning, changeOf } from "#tests/support/any-edits.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { graphOf, openActs } from "#tests/support/open-acts.ts";

/** Every disagreement of the whole graph, looked for anew. */
async function allFound(store: Store): Promise<ReadonlySet<string>> {
  const { terms, claims } = await graphOf(store);
  const found = findAllDisagreements([...terms.values()], [...claims.values()]);
  return new Set([...found.values()].flat().map(({ id }) => id));
}

describe("disagreements that a change would bring up or settle", () => {
  it("[J4] are what looking through the whole graph before and after it shows", async () => {
    let [moved, made] = [0, 0];
    await fc.assert(
      fc.asyncProperty(
        anyBeginning,
        fc.array(anyAct, { minLength: 1, maxLength: 12 }),
        async (beginning, acts) => {
          const { store, now } = await openActs(beginning);
          for (const act of acts) {
            const change = changeOf(act, await graphOf(store));
            const at = (await store.newestRevision())?.number ?? 0;
            const { created, settled, isWhole } = await foreseeDisagreements(store, change, at);
            const before = await allFound(store);
            if (isProblem(await store.commit(aCommit(change, { at: now() })))) continue;
            const after = await allFound(store);
            if (!isWhole) continue;
            made++;
            const ids = (found: readonly { readonly id: string }[]) => found.map(({ id }) => id).sort();
            expect(ids(created)).toEqual([...after].filter((id) => !before.has(id)).sort());
            expect(ids(settled)).toEqual([...before].filter((id) => !after.has(id)).sort());
            moved += created.length + settled.length;
          }
        },
      ),
      { numRuns: 150 },
    );
    expect([made > 100, moved > 10]).toEqual([true, true]);
  });
});
