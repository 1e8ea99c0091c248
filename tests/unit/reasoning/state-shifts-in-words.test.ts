import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { stateShiftsInWords } from "#server/reasoning/explain/weighing/state-shifts-in-words.ts";

const odds = (original: number, later: number) => ({ original, later, reused: 0, reworked: 0 });
const [prior, parts] = [odds(0.6, 0.4), ["l", "r"].map((part) => id<"part">(part))];
const names: Readonly<Record<string, string>> = { l: "left leaf", r: "right leaf" };
const shift = { part: id<"part">("l"), from: undefined, to: undefined };

describe("what a part most probably is, on two states of the graph", () => {
  it("[K12] is told in the words of the weighing, of all parts that are together, with both sides for the picture", () => {
    const [before, now] = [odds(0.83, 0.17), odds(0.3, 0.7)];
    const sides = { before: [{ parts, prior, odds: before }], now: [{ parts, prior, odds: now }] };
    expect(stateShiftsInWords([shift], sides, (part) => names[part] as string)).toEqual([
      {
        ...{ kind: "state", says: "Left leaf and right leaf" },
        before: "probably of the first making: 0.83",
        now: "more likely than not later than the piece: 0.70",
        odds: { before, now },
      },
    ]);
  });

  it("[K12] says where nothing seen tells any more", () => {
    const sides = {
      ...{ before: [{ parts, prior, odds: odds(0.01, 0.99) }], now: [{ parts, prior, odds: prior }] },
    };
    expect(stateShiftsInWords([shift], sides, String)[0]).toMatchObject({
      before: "very probably later than the piece: 0.99",
      now: "nothing seen tells; 0.60 of the first making is assumed",
    });
  });
});
