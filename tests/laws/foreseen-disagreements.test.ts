import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { findAllDisagreements } from "#server/reasoning/disagreements/find-all.ts";
import { foreseeDisagreements } from "#server/use-cases/ask/foresee-disagreements.ts";
import { type Act, anyAct, anyBeginning, changeOf } from "#tests/support/any-edits.ts";
import { WORLD } from "#tests/support/any-graph.ts";
import { aCommit, adding } from "#tests/support/build-change.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { graphOf, openActs } from "#tests/support/open-acts.ts";

/** Every disagreement of the whole graph, looked for anew. */
async function allFound(store: Store): Promise<ReadonlySet<string>> {
  const { terms, claims } = await graphOf(store);
  const found = findAllDisagreements([...terms.values()], [...claims.values()]);
  return new Set([...found.values()].flat().map(({ id }) => id));
}

/** Claims about one thing, each in a region of its own choice, that disagree or not by how the regions lie. */
const anyQuarrel: fc.Arbitrary<Change> = fc
  .array(
    fc.record({
      relation: fc.constantFrom("introduced", "introduced", "attested", "common from", "spread to"),
      region: fc.constantFrom("region.north", "region.north-east", "region.south", "region.world"),
      to: fc.constantFrom("region.north-west", "region.north", "region.south"),
      form: fc.constantFrom(undefined, undefined, "form.chest", "form.case"),
      year: fc.integer({ min: 1700, max: 1760 }),
    }),
    { minLength: 2, maxLength: 6 },
  )
  .map((sketches) =>
    adding(
      ...WORLD,
      ...sketches.map(({ relation, region, to, form, year }, n) =>
        aClaim({
          ...{ id: `claim.${n}`, relation, subject: "tool.a" },
          ...(relation === "spread to"
            ? { from: region, to, years: [1, 5] as const }
            : { region, when: `${year}`, ...(form === undefined ? {} : { form }) }),
        } as ClaimSketch),
      ),
    ),
  );
const anyMove: fc.Arbitrary<Act> = anyAct.map(({ number, at, claim }) => ({
  what: "move",
  number,
  at,
  claim,
}));

/** Holds what is foreseen of each act against the whole graph before and after it; how many changes were made, and disagreements moved. */
async function holdAgainstAll(beginning: Change, acts: readonly Act[]): Promise<readonly [number, number]> {
  const { store, now } = await openActs(beginning);
  let [made, moved] = [0, 0];
  for (const act of acts) {
    const change = changeOf(act, await graphOf(store));
    const at = (await store.newestRevision())?.number ?? 0;
    const { created, settled } = await foreseeDisagreements(store, change, at);
    const before = await allFound(store);
    if (isProblem(await store.commit(aCommit(change, { at: now() })))) continue;
    const after = await allFound(store);
    const ids = (found: readonly { readonly id: string }[]) => found.map(({ id }) => id).sort();
    expect(ids(created)).toEqual([...after].filter((id) => !before.has(id)).sort());
    expect(ids(settled)).toEqual([...before].filter((id) => !after.has(id)).sort());
    made++;
    moved += created.length + settled.length;
  }
  return [made, moved];
}

describe("disagreements that a change would bring up or settle", () => {
  it.each([
    ["", anyBeginning, anyAct, 10],
    [", also where a term is moved below another", anyQuarrel, anyMove, 20],
  ] as const)(
    "[J4] are what looking through the whole graph before and after it shows%s",
    async (_, begin, act, least) => {
      let [made, moved] = [0, 0];
      await fc.assert(
        fc.asyncProperty(begin, fc.array(act, { minLength: 1, maxLength: 12 }), async (beginning, acts) => {
          const [ofThese, movedByThese] = await holdAgainstAll(beginning, acts);
          made += ofThese;
          moved += movedByThese;
        }),
        { numRuns: 150 },
      );
      expect([made > 100, moved > least]).toEqual([true, true]);
    },
  );
});
