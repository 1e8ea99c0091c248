import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Dating, printDating, type Role, readDating } from "#server/domain/dating.ts";
import { datingInWords } from "#server/domain/dating-in-words.ts";
import { isProblem, type Problem } from "#server/domain/problem.ts";
import { hasYear, isWithin, sameYears, yearsBetween } from "#server/domain/years.ts";
import { anyDate, anyDatingText, anyFullYear, anyInterval } from "#tests/support/any-dating.ts";

const ROLES: readonly Role[] = ["event", "period"];

function read(text: string, role: Role): Dating | undefined {
  const dating = readDating(text, role);
  return isProblem(dating) ? undefined : dating;
}

/** Holds a law of every dating that the strings of our profile give, and makes sure that there were many. */
function holdsOfDatings(law: (dating: Dating) => void, texts = anyDatingText): void {
  let datings = 0;
  fc.assert(
    fc.property(texts, fc.constantFrom(...ROLES), (text, role) => {
      const dating = read(text, role);
      if (!dating) return;
      datings++;
      law(dating);
    }),
    { numRuns: 2000 },
  );
  expect(datings).toBeGreaterThan(500);
}

describe("[D19] printing", () => {
  it("is read again as the same dating", () => {
    holdsOfDatings((dating) => {
      const printed = printDating(dating);
      expect(readDating(printed, dating.role)).toEqual({ ...dating, text: printed });
    });
  });

  it("gives one string for one dating", () => {
    holdsOfDatings((dating) => {
      const again = read(printDating(dating), dating.role);
      expect(again && printDating(again)).toBe(again?.text);
    });
  });
});

describe("[D3] the four bounds", () => {
  it("are in order, and an event is as unsure of its end as of its begin", () => {
    holdsOfDatings(({ role, begin, end, text }) => {
      expect(begin[0]).toBeLessThanOrEqual(begin[1]);
      expect(end[0]).toBeLessThanOrEqual(end[1]);
      expect(begin[0]).toBeLessThanOrEqual(end[0]);
      expect(begin[1]).toBeLessThanOrEqual(end[1]);
      if (role === "event" && !text.startsWith("{")) expect(begin).toEqual(end);
    });
  });

  it("[D1] hold the members, which begin and end with them", () => {
    holdsOfDatings(({ begin, end, members }) => {
      expect(isWithin(members, yearsBetween(begin[0], end[1]))).toBe(true);
      expect([members[0]?.[0], members.at(-1)?.[1]]).toEqual([begin[0], end[1]]);
    });
  });

  it("[D7] are infinite exactly where an end is not stated", () => {
    holdsOfDatings(({ begin, end, beginIs, endIs }) => {
      expect(Number.isFinite(begin[0])).toBe(beginIs === "stated");
      expect(Number.isFinite(end[1])).toBe(endIs === "stated");
    });
  });
});

describe("marks", () => {
  it("[D12] `?` moves no bound, and `~` moves none but its pad", () => {
    fc.assert(
      fc.property(anyFullYear, fc.constantFrom(...ROLES), (year, role) => {
        const [bare, doubtful, about, both] = ["", "?", "~", "%"].map((mark) => read(year + mark, role));
        expect(doubtful).toEqual({ ...bare, text: `${year}?`, doubtful: true });
        expect(about).toEqual({ ...bare, text: `${year}~`, padBegin: 5, padEnd: 5 });
        expect(both).toEqual({ ...about, text: `${year}%`, doubtful: true });
      }),
    );
  });

  it("[D11] an event has one pad", () => {
    holdsOfDatings((dating) => {
      if (dating.role === "event") expect(dating.padBegin).toBe(dating.padEnd);
      expect([0, 5, 25]).toContain(dating.padBegin);
      expect([0, 5, 25]).toContain(dating.padEnd);
    });
  });
});

describe("the roles", () => {
  it("[D5] a span holds the same years as an event and as a period", () => {
    holdsOfDatings((dating) => {
      const other = read(dating.text, dating.role === "event" ? "period" : "event");
      expect(other && sameYears(other.members, dating.members)).toBe(true);
    }, anyInterval);
  });

  it("[D6] a period of two dates is cut to begins and ends that can follow each other", () => {
    const full = fc.integer({ min: 1000, max: 9999 });
    fc.assert(
      fc.property(full, full, fc.nat(3), fc.nat(3), (a, b, unknownA, unknownB) => {
        const mask = (year: number, unknown: number): string =>
          String(year).slice(0, 4 - unknown) + "X".repeat(unknown);
        const [from, to] = [mask(a, unknownA), mask(b, unknownB)];
        const [first, last] = [read(from, "period"), read(to, "period")];
        const period = read(`${from}/${to}`, "period");
        if (!first || !last || first.begin[0] > last.end[1]) {
          expect(period).toBeUndefined();
          return;
        }
        expect(period?.begin).toEqual([first.begin[0], Math.min(first.begin[1], last.end[1])]);
        expect(period?.end).toEqual([Math.max(last.end[0], first.begin[0]), last.end[1]]);
      }),
    );
  });

  it("[D16] a single date as a period is a begin and an end within it", () => {
    fc.assert(
      fc.property(anyDate, (text) => {
        const [event, period] = [read(text, "event"), read(text, "period")];
        expect(period?.begin).toEqual(event?.begin);
        expect(period?.end).toEqual(event?.begin);
      }),
    );
  });

  it("[D4] an unknown digit stands for every digit", () => {
    fc.assert(
      fc.property(
        anyFullYear,
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 0, max: 9 }),
        (year, at, digit) => {
          const with1 = (sign: string | number): string => `${year.slice(0, at)}${sign}${year.slice(at + 1)}`;
          const masked = read(with1("X"), "event");
          const meant = Number(with1(digit));
          expect(masked && hasYear(masked.members, meant)).toBe(meant > 0);
          const outside = Number(with1(digit)) + 10 ** (4 - at);
          if (String(outside).length <= 4) expect(masked && hasYear(masked.members, outside)).toBe(false);
        },
      ),
    );
  });
});

describe("[D18] a refusal", () => {
  const anyText = fc.oneof(
    fc.string({ maxLength: 40 }),
    fc.string({ unit: fc.constantFrom(..."0123456789X?~%./-[]{},STYuc "), maxLength: 24 }),
    anyDatingText.map((text) => text.replaceAll("-", "/")),
  );

  it("of any text whatever is a problem in words, and what it offers can be read in the same role", () => {
    let offers = 0;
    fc.assert(
      fc.property(anyText, fc.constantFrom(...ROLES), (text, role) => {
        const refused = readDating(text, role);
        if (!isProblem(refused)) return;
        expect(refused).toMatchObject({ code: "UNREADABLE_DATING", path: [] } satisfies Partial<Problem>);
        expect(refused.message).toMatch(/^The date "[\s\S]*" cannot be read: .+\. Write .+\.$/);
        if (refused.instead === undefined) return;
        offers++;
        expect(refused.message).toContain(refused.instead);
        expect(isProblem(readDating(refused.instead, role))).toBe(false);
      }),
      { numRuns: 3000 },
    );
    expect(offers).toBeGreaterThan(30);
  });

  it("of a very long text is quick and short", () => {
    for (const text of [
      "9".repeat(10_000_000),
      "[".repeat(50_000),
      `[${"1750,".repeat(10_000)}`,
      `[${Array(9_000).fill("XXX5~").join(",")}]`,
    ]) {
      const refused = readDating(text, "event");
      expect(isProblem(refused) && refused.message.length).toBeLessThan(400);
    }
  });
});

describe("[D20] words", () => {
  it("of any dating name a year of it, and no infinity", () => {
    holdsOfDatings((dating) => {
      const words = datingInWords(dating);
      expect(words).not.toMatch(/Infinity|undefined|NaN/);
      const stated = [dating.begin, dating.end, ...dating.members].flat().filter(Number.isFinite).map(String);
      expect(stated.some((year) => words.includes(year))).toBe(true);
    });
  });
});
