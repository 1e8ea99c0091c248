import { describe, expect, it } from "vitest";
import { type Dating, type Role, readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Span, Years } from "#server/domain/years.ts";

const [NEVER, EVER] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

function read(text: string, role: Role): Dating {
  const dating = readDating(text, role);
  if (isProblem(dating)) throw new Error(dating.message);
  return dating;
}

describe("[D3] each form in its role", () => {
  const rows: readonly [text: string, role: Role, begin: Span, end: Span][] = [
    ["1750", "event", [1750, 1750], [1750, 1750]],
    ["175X", "event", [1750, 1759], [1750, 1759]],
    ["17XX", "event", [1700, 1799], [1700, 1799]],
    ["17X5", "event", [1705, 1795], [1705, 1795]],
    ["175X~", "event", [1750, 1759], [1750, 1759]],
    ["1750/1760", "event", [1750, 1760], [1750, 1760]],
    ["1750/1760", "period", [1750, 1750], [1760, 1760]],
    ["175X/176X", "period", [1750, 1759], [1760, 1769]],
    ["1755/175X", "period", [1755, 1755], [1755, 1759]],
    ["175X/1755", "period", [1750, 1755], [1755, 1755]],
    ["1750~/1760?", "period", [1750, 1750], [1760, 1760]],
    ["../1750", "period", [NEVER, NEVER], [1750, 1750]],
    ["/1750", "period", [NEVER, 1750], [1750, 1750]],
    ["/175X", "period", [NEVER, 1759], [1750, 1759]],
    ["1750/..", "period", [1750, 1750], [EVER, EVER]],
    ["1750/", "period", [1750, 1750], [1750, EVER]],
    ["[1750,1760]", "event", [1750, 1760], [1750, 1760]],
    ["[1667,1668,1670..1672]", "event", [1667, 1672], [1667, 1672]],
    ["{1750,1760}", "event", [1750, 1750], [1760, 1760]],
    ["[..1750]", "event", [NEVER, 1750], [NEVER, 1750]],
    ["[1750..]", "event", [1750, EVER], [1750, EVER]],
    ["../1750", "event", [NEVER, 1750], [NEVER, 1750]],
    ["1750/..", "event", [1750, EVER], [1750, EVER]],
    ["1750S2", "event", [1700, 1799], [1700, 1799]],
    ["1750-24", "event", [1750, 1751], [1750, 1751]],
    ["1750-30", "event", [1750, 1751], [1750, 1751]],
    ["1750-23", "event", [1750, 1750], [1750, 1750]],
    ["1750", "period", [1750, 1750], [1750, 1750]],
    ["175X", "period", [1750, 1759], [1750, 1759]],
  ];
  it.each(rows)("%s as %s", (text, role, begin, end) => {
    const dating = read(text, role);
    expect({ begin: dating.begin, end: dating.end }).toEqual({ begin, end });
    expect(dating).toMatchObject({ role, text });
  });
});

describe("members", () => {
  const rows: readonly [text: string, role: Role, members: Years][] = [
    [
      "[1750,1760]",
      "event",
      [
        [1750, 1750],
        [1760, 1760],
      ],
    ],
    [
      "[1667,1668,1670..1672]",
      "event",
      [
        [1667, 1668],
        [1670, 1672],
      ],
    ],
    [
      "{1750,1760}",
      "event",
      [
        [1750, 1750],
        [1760, 1760],
      ],
    ],
    [
      "1X50",
      "event",
      [1050, 1150, 1250, 1350, 1450, 1550, 1650, 1750, 1850, 1950].map((year): Span => [year, year]),
    ],
    ["17X5", "period", [[1705, 1795]]],
    [
      "[..1750,1760..]",
      "event",
      [
        [NEVER, 1750],
        [1760, EVER],
      ],
    ],
    ["00XX", "event", [[1, 99]]],
    ["XX00", "event", Array.from({ length: 99 }, (_, i): Span => [100 * (i + 1), 100 * (i + 1)])],
  ];
  it.each(rows)("[D4][D8][D9] of %s as %s keep their gaps", (text, role, members) => {
    expect(read(text, role).members).toEqual(members);
  });
});

describe("marks and pads", () => {
  const rows: readonly [text: string, role: Role, padBegin: number, padEnd: number, doubtful: boolean][] = [
    ["1750", "event", 0, 0, false],
    ["1750~", "event", 5, 5, false],
    ["175X~", "event", 5, 5, false],
    ["17XX~", "event", 25, 25, false],
    ["1X5X%", "event", 25, 25, true],
    ["1750?", "event", 0, 0, true],
    ["1750-05~", "event", 5, 5, false],
    ["1750-~05", "event", 0, 0, false],
    ["~1750-05", "event", 5, 5, false],
    ["1750~-05", "event", 5, 5, false],
    ["1750-05?-12", "event", 0, 0, true],
    ["1750-05-?12", "event", 0, 0, false],
    ["1750-24~", "event", 5, 5, false],
    ["1750~/1760?", "period", 5, 0, true],
    ["1750/17XX~", "period", 0, 25, false],
    ["1750~/1760", "event", 5, 5, false],
    ["[1750,1760~]", "event", 5, 5, false],
    ["{1750?,1760}", "event", 0, 0, true],
    ["/1750~", "period", 5, 5, false],
    ["../1750~", "period", 0, 5, false],
    ["17XX~/", "period", 25, 25, false],
    ["17XX~/..", "period", 25, 0, false],
  ];
  it.each(rows)("[D10][D11][D12] of %s as %s", (text, role, padBegin, padEnd, doubtful) => {
    expect(read(text, role)).toMatchObject({ padBegin, padEnd, doubtful });
  });
});

describe("ends", () => {
  it.each([
    ["../1750", "open", "stated"],
    ["/1750", "unknown", "stated"],
    ["1750/..", "stated", "open"],
    ["1750/", "stated", "unknown"],
    ["1750/1760", "stated", "stated"],
  ] as const)("[D7] of %s are %s and %s in either role", (text, beginIs, endIs) => {
    for (const role of ["event", "period"] as const)
      expect(read(text, role)).toMatchObject({ beginIs, endIs });
  });
});

it("[D13] significant digits keep the estimate", () => {
  expect(read("1750S2", "event").estimate).toBe(1750);
  expect(read("1750S4", "event")).toMatchObject({ estimate: 1750, begin: [1750, 1750] });
  expect(read("1750", "event").estimate).toBeUndefined();
});

it("[D14] a day counts if it exists in some year that is meant", () => {
  for (const text of ["1752-02-29", "2000-02-29", "175X-02-29", "1750-XX-31", "1750-1X-31"])
    expect(isProblem(readDating(text, "event")), text).toBe(false);
  for (const text of [
    "1750-02-29",
    "1750-02-30",
    "175X-02-30",
    "1700-02-29",
    "1750-06-31",
    "1750-00",
    "1750-13",
  ])
    expect(isProblem(readDating(text, "event")), text).toBe(true);
});

describe("[D17] refusals, with what is offered instead", () => {
  const rows: readonly [text: string, role: Role, why: RegExp, instead: string | undefined][] = [
    ["[1750,1760]", "period", /list/, "1750/1760"],
    ["{1750,1760}", "period", /list/, "1750/1760"],
    ["[..1750]", "period", /list/, "../1750"],
    ["[1750..]", "period", /list/, "1750/.."],
    ["1760/1750", "event", /ends before it begins/, "1750/1760"],
    ["1760/1750", "period", /ends before it begins/, "1750/1760"],
    ["1750-06/1750-05", "event", /ends before it begins/, "1750-05/1750-06"],
    ["1750-23/1750-21", "event", /ends before it begins/, "1750-21/1750-23"],
    ["/", "period", /says nothing/, undefined],
    ["../..", "period", /says nothing/, undefined],
    ["[..1760,1750..]", "event", /says nothing/, undefined],
    ["1750-02-30", "event", /no such day/, undefined],
    ["[1760..1750]", "event", /ends before it begins/, "[1750..1760]"],
    ["[1750..,1760]", "event", /only the last range/, undefined],
    ["[1750,..1760]", "event", /only the first range/, undefined],
    ["175u", "event", /four digits/, "175X"],
    ["17--", "event", /four digits/, "17XX"],
    ["175x", "event", /four digits/, "175X"],
    ["1750-1760", "event", /four digits/, "1750/1760"],
    ["1750–1760", "event", /four digits/, "1750/1760"],
    ["1760-80", "event", /no month or season 80/, "1760/1780"],
    ["1750/60", "period", /four digits/, "1750/1760"],
    ["1750/1", "event", /four digits/, "1750/1751"],
    ["c.1750", "event", /marked with ~/, "1750~"],
    ["c. 1750", "event", /marked with ~/, "1750~"],
    ["circa 1750", "event", /marked with ~/, "1750~"],
    ["ca. 1750", "event", /marked with ~/, "1750~"],
    ["about 1750", "period", /marked with ~/, "1750~"],
    ["c. 1770", "event", /marked with ~/, "1770~"],
    ["ca 1770/1780", "event", /marked with ~/, "1770~/1780~"],
    ["c1770", "event", /four digits/, "1770~"],
    ["c.1750-60", "event", /marked with ~/, "1750~/1760~"],
    ["c.1750s", "event", /marked with ~/, "175X~"],
    ["1750s", "event", /four digits/, "175X"],
    ["1700s", "event", /four digits/, "17XX"],
    ["18th century", "event", /words/, "17XX"],
    ["the eighteenth century", "event", /words/, "17XX"],
    ["last quarter of the 18th century", "event", /words/, "1775/1799"],
    ["first half of the 19th century", "event", /words/, "1800/1849"],
    ["second third of the 18th century", "event", /words/, "1733/1765"],
    ["early 18th century", "event", /different years to different people/, undefined],
    ["before 1750", "event", /words/, "[..1750]"],
    ["before 1750", "period", /words/, "../1750"],
    ["after 1750", "event", /words/, "[1750..]"],
    ["1750..", "event", /four digits/, "[1750..]"],
    ["1750 onwards", "period", /words/, "1750/.."],
    ["between 1750 and 1760", "event", /words/, "1750/1760"],
    ["perhaps 1760", "event", /words/, "1760?"],
    ["1750?~", "event", /one mark/, "1750%"],
    ["1750/open", "period", /words/, "1750/.."],
    ["unknown/1750", "period", /words/, "/1750"],
    ["18", "event", /four digits/, "18XX"],
    ["175", "event", /four digits/, "175X"],
    ["1750 ", "event", /blank/, "1750"],
    ["[1667, 1668]", "event", /blank/, "[1667,1668]"],
    ["1750-05-12T10:00", "event", /time of day/, "1750-05-12"],
    ["12 May 1750", "event", /words/, "1750-05-12"],
    ["Y17500", "event", /more than four digits/, undefined],
    ["Y1750", "event", /more than four digits/, "1750"],
    ["-0044", "event", /before the common era/, undefined],
    ["0000", "event", /before the common era/, undefined],
    ["0000S2", "event", /before the common era/, undefined],
    ["9999-24", "event", /more than four digits/, "9999"],
    ["1750S2/1800", "event", /by itself/, undefined],
    ["[1750S2]", "event", /by itself/, undefined],
    ["1750S5", "event", /significant digits/, undefined],
    ["{175X,1760}", "event", /one known year/, "[175X,1760]"],
    ["{..175X}", "event", /one known year/, "[..175X]"],
    ["[175X..1765]", "event", /one known year/, "[1750..1765]"],
    ["175X-24", "event", /season/, "175X"],
    ["1750-24-01", "event", /season has no day/, undefined],
    ["1750/1760/1770", "event", /one stroke/, undefined],
    ["[1750", "event", /opens and closes/, undefined],
    ["[]", "event", /missing/, undefined],
    ["", "event", /missing/, undefined],
  ];
  it.each(rows)("[D18] %s as %s", (text, role, why, instead) => {
    const refused = readDating(text, role);
    if (!isProblem(refused)) throw new Error(`${text} was read`);
    expect(refused.code).toBe("UNREADABLE_DATING");
    expect(refused.message).toMatch(why);
    expect(refused.message).toContain(`The date "${text}" cannot be read`);
    expect(refused.instead).toBe(instead);
  });
});
