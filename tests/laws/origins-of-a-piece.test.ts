import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { OriginCount } from "#server/domain/weighing/origins.ts";
import type { Span } from "#server/domain/years.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { readOrigins } from "#server/reasoning/origins/read-origins.ts";
import { originsByClingo } from "#tests/oracles/clingo-origins.ts";
import { type AnyOrigins, anyOrigins, originsAsPiece } from "#tests/support/any-origins.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aTerm, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";

function originsOf(drawn: AnyOrigins): OriginCount {
  const { piece, claims } = originsAsPiece(drawn);
  const terms = [
    aTerm("world", "region"),
    ...drawn.regions.map((region) => aTerm(region, "region", "world")),
  ];
  const graph = knowGraph(neighbourhoodOf(terms, claims.map(aClaim)), ASSUMED);
  return readOrigins(readSubject(aPiece(piece), graph, ASSUMED)).possible;
}

/** Whether parts can be of one piece, by definition: some region and year of all, and no two recorded as separate. */
function canBeOne(ids: readonly string[], { parts, regions, separate }: AnyOrigins): boolean {
  const members = parts.filter(({ id }) => ids.includes(id));
  if (separate.some(([a, b]) => ids.includes(a) && ids.includes(b))) return false;
  const years = members.flatMap(({ spans }) => spans.map(([, last]) => last));
  return regions.some((region) =>
    years.some((year) =>
      members.every(
        (part) =>
          part.regions.includes(region) && part.spans.some(([first, last]) => first <= year && year <= last),
      ),
    ),
  );
}

/** All ways to divide some things into sets. */
function* divisionsOf(ids: readonly string[]): Generator<string[][]> {
  const [first, ...others] = ids;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const division of divisionsOf(others)) {
    yield [[first], ...division];
    for (const [i, set] of division.entries()) yield division.with(i, [first, ...set]);
  }
}

const pairsOf = (ids: readonly string[]): (readonly [string, string])[] =>
  ids.flatMap((a, i) => ids.slice(i + 1).map((b) => [a, b] as const));

describe("origins, against trying every division", () => {
  it("[O2][O3][O4][O5] are as few as can be, with the pairs that every such division has together or apart", () => {
    const random = randomSource(5);
    const counts = new Map<number, number>();
    let forced = 0;
    for (let n = 0; n < 120; n++) {
      const drawn = anyOrigins(random, {
        ...{ parts: 4 + random.below(4), regions: 1 + random.below(3) },
        ...{ gapped: 0.5, confined: 0.5, separate: 0.12, together: 0.3 },
      });
      const found = originsOf(drawn);
      const merged = found.impossible.flat();
      const ids = drawn.parts.map(({ id }) => id).filter((id) => !merged.includes(id as never));
      for (const set of found.impossible) expect(canBeOne(set, drawn)).toBe(false);
      const allowed = [...divisionsOf(ids)].filter(
        (division) =>
          division.every((set) => canBeOne(set, drawn)) &&
          drawn.together.every(
            (group) =>
              merged.includes(group[0] as never) ||
              division.some((set) => group.every((part) => set.includes(part))),
          ),
      );
      const fewest = Math.min(...allowed.map(({ length }) => length));
      const best = allowed.filter(({ length }) => length === fewest);
      expect(found.atLeast).toBe(fewest);
      expect(best.map(asText)).toContain(asText(found.groups));
      expect(found.cut).toBe(false);
      if (fewest === 1) continue;
      const isTogether =
        ([a, b]: readonly [string, string]) =>
        (division: readonly (readonly string[])[]) =>
          division.some((set) => set.includes(a) && set.includes(b));
      const known = pairsOf(ids).filter(
        (pair) => !drawn.together.some((group) => pair.every((part) => group.includes(part))),
      );
      expect(found.alwaysTogether).toEqual(known.filter((pair) => best.every(isTogether(pair))));
      expect(found.alwaysApart).toEqual(known.filter((pair) => !best.some(isTogether(pair))));
      for (const witness of found.witnesses)
        for (const pair of pairsOf(witness)) expect(found.alwaysApart).toContainEqual(pair);
      counts.set(fewest, (counts.get(fewest) ?? 0) + 1);
      forced += found.alwaysTogether.length;
    }
    expect([...counts.keys()].length).toBeGreaterThan(2);
    expect(forced).toBeGreaterThan(20);
  });
});

const asText = (division: readonly (readonly string[])[]): string =>
  division
    .map((set) => [...set].sort().join("+"))
    .sort()
    .join(" ");

describe("origins, against clingo", () => {
  it("[O3] are as few, with gaps, regions and parts recorded as separate", async () => {
    const random = randomSource(60);
    const counts = new Set<number>();
    for (let n = 0; n < 64; n++) {
      const drawn = anyOrigins(random, {
        ...{ parts: 7 + random.below(3), regions: 1 + random.below(3) },
        ...{ gapped: 0.5, confined: 0.4, separate: 0.15, together: 0 },
      });
      const { atLeast, impossible } = originsOf(drawn);
      expect(impossible).toEqual([]);
      expect(atLeast).toBe(await originsByClingo(drawn));
      counts.add(atLeast);
    }
    expect(counts.size).toBeGreaterThan(2);
  });
});

/** The fewest years that hit every span: always the next end not hit yet. */
function fewestByEnds(spans: readonly Span[]): number {
  let [count, hit] = [0, Number.NEGATIVE_INFINITY];
  for (const [first, last] of [...spans].sort((a, b) => a[1] - b[1]))
    if (first > hit) [count, hit] = [count + 1, last];
  return count;
}

describe("origins, where no part has a gap, a region or another it is separate from", () => {
  it("[O3][O4] are as many as ends of spans that hit them all, and as many parts show it", () => {
    const random = randomSource(500);
    for (let n = 0; n < 500; n++) {
      const drawn = anyOrigins(random, {
        ...{ parts: 2 + random.below(11), regions: 1 },
        ...{ gapped: 0, confined: 0, separate: 0, together: 0 },
      });
      const { atLeast, witnesses } = originsOf(drawn);
      expect(atLeast).toBe(fewestByEnds(drawn.parts.flatMap(({ spans }) => spans)));
      if (atLeast > 1) for (const witness of witnesses) expect(witness).toHaveLength(atLeast);
    }
  });
});
