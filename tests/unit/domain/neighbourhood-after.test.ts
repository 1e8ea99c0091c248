import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TermId } from "#server/domain/ids.ts";
import { type Known, neighbourhoodAfter } from "#server/domain/neighbourhood-after.ts";
import { isProblem } from "#server/domain/problem.ts";
import { anyAct, anyBeginning, changeOf } from "#tests/support/any-edits.ts";
import { anyAsk } from "#tests/support/any-history.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { graphOf, openActs } from "#tests/support/open-acts.ts";

const anyWorldAsk = anyAsk.map((ask) => ({
  ...ask,
  seeds: [...ask.seeds, "tool.later", "region.north"] as TermId[],
  regions: ask.regions.map((region) => region.replace(/region\.\d/, "region.north-east")) as TermId[],
}));

describe("a neighbourhood after a change", () => {
  it("[K10] is that of the graph with the change made, where all is known of the graph before", async () => {
    await fc.assert(
      fc.asyncProperty(
        anyBeginning,
        fc.array(anyAct, { maxLength: 4 }),
        anyWorldAsk,
        async (beginning, acts, ask) => {
          const { store } = await openActs(beginning);
          for (const act of acts) {
            const graph = await graphOf(store);
            const claims = [...graph.claims.values()].filter(({ status }) => status === "accepted");
            const terms = [...graph.terms.values()];
            const known: Known = {
              terms: new Map(terms.map((term) => [term.id, term])),
              claims: new Map(claims.map((claim) => [claim.id, claim])),
              whole: new Set(terms.map(({ id }) => id)),
            };
            const change = changeOf(act, graph);
            if (isProblem(await store.commit(aCommit(change)))) continue;
            const fresh = await store.neighbourhood(ask);
            expect(neighbourhoodAfter(known, change, ask, fresh.revision)).toEqual(fresh);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});
