import { describe, expect, it } from "vitest";
import { printDating, type Role, readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";

describe("[D19] the canonical string", () => {
  const rows: readonly [text: string, role: Role, canonical: string][] = [
    ["1750", "event", "1750"],
    ["1750-05-12", "event", "1750"],
    ["1750-05~", "event", "1750~"],
    ["~1750", "event", "1750~"],
    ["1750/1759", "event", "175X"],
    ["1700~/1799~", "event", "1700~/1799~"],
    ["17XX~", "event", "17XX~"],
    ["175X/1760", "event", "1750/1760"],
    ["17XX~/1805", "event", "17XX~/1805"],
    ["1650/16XX~", "event", "1650/16XX~"],
    ["1750~/1760", "event", "1750~/1760~"],
    ["[1668,1667,1670..1672]", "event", "[1667..1668,1670..1672]"],
    ["[1750..1760]", "event", "1750/1760"],
    ["../1750", "event", "[..1750]"],
    ["/1750", "event", "/1750"],
    ["1750-24", "event", "1750/1751"],
    ["1750-24", "period", "1750-24"],
    ["1750/175X", "period", "1750/175X"],
    ["1755/175X", "period", "1755/175X"],
    ["17XX/17XX", "period", "17XX"],
    ["1750/1750", "period", "1750"],
    ["1750~/1760?", "period", "1750%/1760?"],
    ["17X5", "period", "17X5"],
    ["17X5", "event", "17X5"],
    ["{1750,1760}", "event", "{1750,1760}"],
    ["{1750}", "event", "1750"],
    ["1750S2", "event", "1750S2"],
    ["[17XX~,1805]", "event", "[17XX~,1700..1799,1805]"],
    ["[..17XX~]", "event", "[..1799,17XX~]"],
  ];
  it.each(rows)("of %s as %s is %s", (text, role, canonical) => {
    const dating = readDating(text, role);
    if (isProblem(dating)) throw new Error(dating.message);
    expect(printDating(dating)).toBe(canonical);
  });
});
