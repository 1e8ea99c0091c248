import { describe, expect, it } from "vitest";
import { compareDates } from "#server/use-cases/ask/compare-dates.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";

const on = (id: string, relation: ClaimSketch["relation"], when: string, rest: Partial<ClaimSketch> = {}) =>
  aClaim({ id, relation, subject: "feature.a", when, ...rest });
const pairs = (...args: Parameters<typeof compareDates>) =>
  compareDates(...args).map(({ here, there, lag }) => [here.id, there.id, ...lag]);

describe("dates of two places", () => {
  it("[R4] are compared within one turn: a beginning with a beginning, an end with an end", () => {
    const here = [
      on("h1", "introduced", "1750"),
      on("h2", "discontinued", "1850"),
      on("h3", "common from", "1760"),
    ];
    const there = [on("t1", "introduced", "1740"), on("t2", "common until", "1820")];
    expect(pairs(here, [there])).toEqual([
      ["h2", "t2", 30, 30],
      ["h1", "t1", 10, 10],
    ]);
  });

  it("[R4] are compared on the same form and kind of part only", () => {
    const here = [on("h1", "introduced", "1750", { part: "part.leg" })];
    expect(pairs(here, [[on("t1", "introduced", "1740")]])).toEqual([]);
    expect(pairs(here, [[on("t1", "introduced", "1740", { part: "part.leg" })]])).toHaveLength(1);
  });

  it("[R4] take two dates of one relation before two of different ones, and of several the first or the last", () => {
    const here = [on("h1", "attested", "1735"), on("h2", "current", "1740/1760")];
    const there = [
      on("t1", "introduced", "1700"),
      on("t2", "current", "1720/1730"),
      on("t3", "current", "1710/1730"),
    ];
    expect(pairs(here, [there])).toEqual([["h2", "t3", 30, 30]]);
    const ends = [on("e1", "common until", "1800"), on("e2", "common until", "1830")];
    expect(pairs(ends, [[on("f1", "common until", "1810")]])).toEqual([["e2", "f1", 20, 20]]);
  });

  it("[R5] are taken from the nearest place that has one", () => {
    const here = [on("h1", "introduced", "1750")];
    const near = [on("n1", "introduced", "1745")];
    const far = [on("f1", "introduced", "1700")];
    expect(pairs(here, [[], near, far])).toEqual([["h1", "n1", 5, 5]]);
  });

  it("[R6] differ by all that their readings allow, and by nobody knows where an end is open", () => {
    expect(pairs([on("h1", "introduced", "175X")], [[on("t1", "introduced", "1740~")]])).toEqual([
      ["h1", "t1", 5, 24],
    ]);
    expect(pairs([on("h1", "introduced", "1750")], [[on("t1", "introduced", "../1740")]])).toEqual([
      ["h1", "t1", 10, null],
    ]);
  });
});
