import { describe, expect, it } from "vitest";
import { type Role, readDating } from "#server/domain/dating.ts";
import { datingInWords } from "#server/domain/dating-in-words.ts";
import { isProblem } from "#server/domain/problem.ts";

describe("[D20] in words", () => {
  const rows: readonly [text: string, role: Role, words: string][] = [
    ["1750", "event", "1750"],
    ["1750~", "event", "about 1750"],
    ["1760?", "event", "perhaps 1760"],
    ["1760%", "event", "perhaps about 1760"],
    ["175X", "event", "1750s"],
    ["170X", "event", "1700 to 1709"],
    ["1765/1775", "event", "1765 to 1775"],
    ["17XX~", "event", "about 1700 to 1799"],
    ["[..1750]", "event", "1750 or before"],
    ["[1750..]", "event", "1750 or after"],
    ["/1750", "event", "1750 or before, from when is not known"],
    ["1750/", "event", "1750 or after, until when is not known"],
    ["[1667,1668,1670..1672]", "event", "1667 to 1668 or 1670 to 1672"],
    ["{1750,1760}", "event", "1750 and 1760"],
    ["17X5", "event", "1705, 1715, 1725, … or 1795"],
    ["1750S2", "event", "1700 to 1799, probably near 1750"],
    ["1805-12", "event", "December 1805"],
    ["1805-12-03~", "event", "about 3 December 1805"],
    ["1750-24", "event", "winter 1750"],
    ["1750-34", "event", "1750"],
    ["1750/1760", "period", "1750 to 1760"],
    ["175X/176X", "period", "1750s to 1760s"],
    ["1755/175X", "period", "1755 to 1755–1759"],
    ["1750~/1760", "period", "about 1750 to 1760"],
    ["../1750", "period", "until 1750"],
    ["1750/..", "period", "from 1750 on"],
    ["/1750", "period", "until 1750, from when is not known"],
    ["1750/", "period", "from 1750, until when is not known"],
    ["175X", "period", "1750s"],
  ];
  it.each(rows)("%s as %s: %s", (text, role, words) => {
    const dating = readDating(text, role);
    if (isProblem(dating)) throw new Error(dating.message);
    expect(datingInWords(dating)).toBe(words);
  });
});
