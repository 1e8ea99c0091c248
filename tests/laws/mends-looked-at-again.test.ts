import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Claim } from "#server/domain/claim.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { groundOf } from "#server/reasoning/mends/ground.ts";
import { pricesOf } from "#server/reasoning/mends/prices.ts";
import { mendsOf } from "#server/reasoning/mends/read-mends.ts";
import { windowsAt } from "#server/reasoning/rule-outs/windows.ts";
import { wholeWorld } from "#tests/support/any-graph.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { WITHOUT_LIMIT, wordsOf } from "#tests/support/mend-instance.ts";

const FEATURES = ["feature.a", "feature.b"];
const SCOPES = [undefined, "region.north", "region.north-east", "region.south"];

/** Introductions of two features, later than the piece or not, one of a feature and scope: the narrower override the wider. */
const introductions: fc.Arbitrary<readonly Claim[]> = fc
  .uniqueArray(
    fc.record({
      subject: fc.constantFrom(...FEATURES),
      region: fc.constantFrom(...SCOPES),
      when: fc.constantFrom("1690", "1740", "1750", "1760"),
    }),
    { minLength: 2, maxLength: 6, selector: ({ subject, region }) => `${subject} ${region}` },
  )
  .map((sketches) =>
    sketches.map(({ region, ...rest }, n) =>
      aClaim({ id: `c${n}`, relation: "introduced", ...rest, ...(region === undefined ? {} : { region }) }),
    ),
  );

const PIECE = aPiece({
  ...{ date: "1700/1710", region: "region.north-east", examined: 1800 },
  observations: [
    { id: "o0", part: "top", feature: "feature.a" },
    { id: "o1", part: "top", feature: "feature.b" },
  ],
});
const YEARS = Array.from({ length: 16 }, (_, n) => 1650 + 10 * n);

/**
 * Every set that stands while no part of it does, by trying all: each on the graph without the claims it gives up, read from nothing.
 */
function standingSets(claims: readonly Claim[]): ReadonlySet<string> {
  const assumptions = FEATURES.map((feature) => `earliestAnywhere(${feature})`);
  const things = [
    ...claims.map(({ id }) => id as string),
    ...assumptions,
    ...["later(top)", "reused(top)", "altered(o0)", "altered(o1)", "misread(o0)", "misread(o1)"],
  ];
  const windows = new Map<
    string,
    readonly { check: string; years: (year: number) => boolean; assumed: readonly string[] }[]
  >();
  const windowsOf = (left: readonly Claim[]) => {
    const key = left.map(({ id }) => id).join();
    const subject = readSubject(PIECE, knowGraph(wholeWorld(left), ASSUMED), ASSUMED);
    const found =
      windows.get(key) ??
      windowsAt(0, subject).windows.map(({ check, years, held }) => ({
        check: check.id,
        years: (year: number) => years.some(([first, last]) => first <= year && year <= last),
        assumed: held.flatMap(({ atom }) => (atom.kind === "assumption" ? [atom.assumption] : [])),
      }));
    windows.set(key, found);
    return found;
  };
  const stands = (set: ReadonlySet<string>): boolean => {
    const counting = windowsOf(claims.filter(({ id }) => !set.has(id))).filter(
      ({ assumed }) => !assumed.some((one) => set.has(one)),
    );
    const fits = (check: string, year: number) =>
      counting.every((window) => window.check !== check || window.years(year));
    const holdsIn = (own: number): boolean =>
      ["o0", "o1"].every(
        (check) =>
          set.has(`misread(${check})`) ||
          fits(check, own) ||
          (set.has(`altered(${check})`) && YEARS.some((year) => year >= own && fits(check, year))),
      );
    return [1700, 1710].some((t) =>
      YEARS.some(
        (own) =>
          (own === t || (own > t && set.has("later(top)")) || (own < t && set.has("reused(top)"))) &&
          holdsIn(own),
      ),
    );
  };
  const standing = Array.from({ length: 2 ** things.length }, (_, set) => set).filter((set) =>
    stands(new Set(things.filter((_, i) => set & (1 << i)))),
  );
  const minimal: number[] = [];
  const bits = (set: number): number => set.toString(2).replaceAll("0", "").length;
  for (const set of standing.sort((a, b) => bits(a) - bits(b)))
    if (!minimal.some((smaller) => (set & smaller) === smaller)) minimal.push(set);
  return new Set(
    minimal.map((set) =>
      things
        .filter((_, i) => set & (1 << i))
        .sort()
        .join(" + "),
    ),
  );
}

describe("mends that are looked at again on the graph without what they give up", () => {
  it("[M8] are exactly the sets that stand, with what each brings back", () => {
    let [compared, several] = [0, 0];
    fc.assert(
      fc.property(introductions, (claims) => {
        const subject = readSubject(PIECE, knowGraph(wholeWorld(claims), ASSUMED), ASSUMED);
        const ground = groundOf(subject, "physical", pricesOf(subject, ASSUMED_ODDS));
        const { listed, more } = mendsOf(ground, "physical", subject, WITHOUT_LIMIT);
        const found = new Set(listed.map(({ givenUp }) => wordsOf(givenUp)));
        expect(more).toBe(false);
        expect([...found].sort()).toEqual([...standingSets(claims)].sort());
        compared += found.size;
        several += [...found].filter((words) => (words.match(/\bc\d/g) ?? []).length > 1).length;
      }),
      { numRuns: 30 },
    );
    expect(compared).toBeGreaterThan(100);
    expect(several).toBeGreaterThan(20);
  });
});
