import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { RIVALS } from "#server/domain/weighing/rivals.ts";
import { storiesOf } from "#server/reasoning/rival-stories/stories.ts";

const CLAIMED = [1760, 1775] as const;
const SOUTH = [id<"term">("south")];
const kinds = (examined: number, regions = SOUTH, odds = ASSUMED_ODDS) =>
  storiesOf(CLAIMED, examined, regions, odds).map(({ kind }) => kind);
const total = (stories: ReturnType<typeof storiesOf>) => stories.reduce((sum, { prior }) => sum + prior, 0);

describe("[V1] the stories", () => {
  it("are seven, with years of their own", () => {
    expect(kinds(2026)).toEqual(RIVALS.filter((kind) => kind !== "to-look-old"));
    const years = Object.fromEntries(
      storiesOf(CLAIMED, 2026, SOUTH, ASSUMED_ODDS).map((story) => [story.kind, story.years]),
    );
    expect(years["as-claimed"]).toEqual([1760, 1775]);
    expect(years["provincial"]?.[0]).toBe(1776);
    expect(years["revival"]).toEqual([1825, 2026]);
    expect(years["made-up"]).toEqual([1760, 2026]);
    expect(years["assembled"]?.[0]).toBeGreaterThan(1775);
    for (const [first, last] of Object.values(years)) expect(first).toBeLessThanOrEqual(last);
  });

  it("leave out one whose years would lie after the examination", () => {
    expect(kinds(1790)).not.toContain("revival");
    expect(kinds(1770)).toEqual(["as-claimed", "later-parts", "another-region", "made-up"]);
    for (const { years } of storiesOf(CLAIMED, 1770, SOUTH, ASSUMED_ODDS))
      expect(years[1]).toBeLessThanOrEqual(1770);
  });
});

describe("[V2] their priors", () => {
  it.each([2026, 1850, 1790, 1770])(
    "add up to 1 over those that are told of a piece seen in %d",
    (examined) => {
      expect(total(storiesOf(CLAIMED, examined, SOUTH, ASSUMED_ODDS))).toBeCloseTo(1, 12);
      expect(total(storiesOf(CLAIMED, examined, [], ASSUMED_ODDS))).toBeCloseTo(1, 12);
    },
  );

  it("share what another region has among those suggested", () => {
    const shares = (regions: readonly string[]) =>
      storiesOf(
        CLAIMED,
        2026,
        regions.map((name) => id<"term">(name)),
        ASSUMED_ODDS,
      ).filter(({ kind }) => kind === "another-region");
    expect(shares([])).toEqual([]);
    const [one] = shares(["a"]);
    const two = shares(["a", "b"]);
    expect(two.map(({ region }) => region)).toEqual(["a", "b"]);
    for (const { prior } of two) expect(prior).toBeCloseTo((one?.prior as number) / 2, 12);
  });
});

describe('[V3] "made later to look old"', () => {
  const asked = { ...ASSUMED_ODDS, madeToDeceive: 0.02 };

  it("is told only if it was asked for, with the prior that was set", () => {
    expect(kinds(2026)).not.toContain("to-look-old");
    const stories = storiesOf(CLAIMED, 2026, SOUTH, asked);
    expect(stories.at(-1)).toMatchObject({ kind: "to-look-old", prior: 0.02 });
    expect(total(stories)).toBeCloseTo(1, 12);
  });

  it("takes nothing where its years would lie after the examination", () => {
    expect(kinds(1790, SOUTH, asked)).not.toContain("to-look-old");
    expect(total(storiesOf(CLAIMED, 1790, SOUTH, asked))).toBeCloseTo(1, 12);
  });

  it("takes from all the others alike", () => {
    const before = storiesOf(CLAIMED, 2026, SOUTH, ASSUMED_ODDS);
    const after = storiesOf(CLAIMED, 2026, SOUTH, asked);
    for (const [i, { prior }] of before.entries()) expect(after[i]?.prior).toBeCloseTo(prior * 0.98, 12);
  });
});
