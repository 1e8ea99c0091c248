import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import { namedTerms } from "#server/domain/named-terms.ts";
import { ancestors, broaderTerms } from "#server/domain/region.ts";
import type { Term } from "#server/domain/term.ts";
import { findAllDisagreements } from "#server/reasoning/disagreements/find-all.ts";
import { RULE_IDS } from "#server/reasoning/disagreements/rule.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { surveyDisagreements } from "#server/use-cases/ask/surveys/disagreement-survey.ts";
import { openSurveys } from "#server/use-cases/ask/surveys/open-surveys.ts";
import { anyClaims, WORLD } from "#tests/support/any-graph.ts";
import { aCommit, adding, aSource, replacing } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { largeGraph } from "#tests/support/large-graph.ts";

const SOURCES = [aSource("source.one"), aSource("source.two")];
const NORTH_EAST = WORLD.find((term) => term.id === "region.north-east") as Term;

/** Claims of which some cite a source, some are only proposed. */
const anyState = fc.tuple(anyClaims, fc.infiniteStream(fc.nat(5))).map(([claims, numbers]) =>
  claims.map((claim): Claim => {
    const number = numbers.next().value;
    const source = SOURCES[number]?.id;
    return {
      ...claim,
      ...(number === 5 ? { status: "proposed" as const } : {}),
      ...(source === undefined
        ? {}
        : { citations: [{ basis: "published" as const, source, locator: "p. 1" }] as const }),
    };
  }),
);

/** From one set of claims to the next; exceptions go before what they belong to is withdrawn, and come after it. */
function changeTo(before: readonly Claim[], after: readonly Claim[]): Change {
  const was = new Map(before.map((claim) => [claim.id, claim]));
  const is = new Map(after.map((claim) => [claim.id, claim]));
  return [
    ...after.flatMap((claim) => {
      const old = was.get(claim.id);
      return old === undefined ? adding(claim) : replacing(old, claim);
    }),
    ...before
      .filter(({ id: name }) => !is.has(name))
      .map((claim) => ({ kind: "claim" as const, before: claim })),
  ];
}

function countsByDefinition(terms: readonly Term[], claims: readonly Claim[]) {
  const regions = terms.filter(({ kind }) => kind === "region");
  const broader = broaderTerms(regions);
  const accepted = claims.filter(({ status }) => status === "accepted");
  const names = (claim: Claim, region: TermId) => namedTerms(claim).includes(region);
  const isWithin = (claim: Claim, region: TermId) =>
    namedTerms(claim).some((name) => ancestors(name, broader).includes(region));
  return regions
    .map(({ id: region }) => ({
      region,
      own: accepted.filter((claim) => names(claim, region)).length,
      within: accepted.filter((claim) => isWithin(claim, region)).length,
      kinds: [
        ...new Set(
          accepted
            .filter((claim) => isWithin(claim, region))
            .flatMap((claim) =>
              "subject" in claim ? (terms.find((term) => term.id === claim.subject)?.kind ?? []) : [],
            ),
        ),
      ].sort(),
    }))
    .sort((a, b) => (a.region < b.region ? -1 : 1));
}

describe("what is made of a whole graph", () => {
  it("[S66] says after any changes what is true of the graph as it stands, and of which revision", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(anyState, fc.boolean()), { minLength: 1, maxLength: 4 }),
        async (states) => {
          const store = openMemoryStore();
          const surveys = openSurveys(store);
          answered(await store.commit(aCommit(adding(...WORLD, ...SOURCES))));
          let standing: readonly Claim[] = [];
          let northEast = NORTH_EAST;
          const past: { at: number; counts: ReturnType<typeof countsByDefinition> }[] = [];
          for (const [next, moves] of states) {
            const moved = { ...NORTH_EAST, broader: id<"term">(moves ? "region.south" : "region.north") };
            const change = changeTo(standing, next);
            const edits = [
              ...change,
              ...(moved.broader === northEast.broader ? [] : replacing(northEast, moved)),
            ];
            if (edits.length === 0) continue;
            const { number } = answered(await store.commit(aCommit(edits)));
            [standing, northEast] = [next, moved];
            const terms = [...WORLD.filter(({ id: name }) => name !== northEast.id), northEast];

            const disagreements = await surveys.disagreements();
            expect(disagreements.at).toBe(number);
            const all = findAllDisagreements(terms, standing);
            for (const rule of RULE_IDS) expect(disagreements.what.found(rule)).toEqual(all.get(rule));
            expect(disagreements.what.claimCount()).toBe(
              standing.filter(({ status }) => status === "accepted").length,
            );

            const regions = await surveys.regions();
            expect(regions.at).toBe(number);
            const counts = countsByDefinition(terms, standing);
            const counted = (survey: typeof regions.what) =>
              survey
                .counts()
                .map((count) => ({ ...count, kinds: [...survey.kindsWithin(count.region)].sort() }));
            expect(counted(regions.what)).toEqual(counts);
            past.push({ at: number, counts });
            const [first] = past as [(typeof past)[0]];
            expect(counted((await surveys.regions(first.at)).what)).toEqual(first.counts);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it("[S66] is made anew by the next who asks where it failed, and is of the revision it was made of until then", async () => {
    const store = openMemoryStore();
    answered(await store.commit(aCommit(adding(...WORLD))));
    const surveys = openSurveys(store);
    const { allClaims } = store;
    store.allClaims = () => {
      throw new Error("broken");
    };
    await expect(surveys.regions()).rejects.toThrow("broken");
    await expect(surveys.disagreements()).rejects.toThrow("broken");
    store.allClaims = allClaims;
    expect((await surveys.regions()).at).toBe(1);
    expect((await surveys.disagreements()).at).toBe(1);
  });

  it("[S66] of a large graph is made in many slices, with others answered between them, and says the same as in one go", async () => {
    const graph = largeGraph(4_000);
    const store = openMemoryStore();
    answered(await store.commit(aCommit(graph.change)));
    const told: number[] = [];
    let isMade = false;
    let answers = 0;
    const askOn = async (): Promise<void> => {
      while (!isMade) {
        await store.neighbourhood({ seeds: [], regions: [], maxDepth: 0, at: 1 });
        if (!isMade) answers++;
        await new Promise((resolve) => setImmediate(resolve));
      }
    };
    const asking = askOn();
    let turns = 0;
    const survey = await surveyDisagreements(store, 1, {
      turn: () => {
        turns++;
        return new Promise((resolve) => setImmediate(resolve));
      },
      onProgress: (share) => told.push(share),
    });
    isMade = true;
    await asking;
    expect(turns).toBeGreaterThan(30);
    expect(answers).toBeGreaterThan(30);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.every((share) => share >= 0 && share <= 1)).toBe(true);
    expect(new Set(told).size).toBeGreaterThan(20);
    const all = findAllDisagreements(graph.terms, graph.claims);
    for (const rule of RULE_IDS) expect(survey.found(rule)).toEqual(all.get(rule));
    expect(survey.found("rivals").length).toBeGreaterThan(0);
  });
});
