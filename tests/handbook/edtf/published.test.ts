import { describe, expect, it } from "vitest";
import { printDating, readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import { ourBounds } from "./libraries.ts";
import { LIBRARY_OF_CONGRESS } from "./library-of-congress.ts";
import type { Published } from "./published.ts";
import { PYTHON_EDTF, PYTHON_EDTF_BAD, PYTHON_EDTF_WIDENED } from "./python-edtf.ts";

// Outside check: the published examples of the Library of Congress and of python-edtf; sources beside the tables.

/** Where our profile differs from what is published, and why. A line that no longer differs fails. */
const KNOWN: readonly { covers: RegExp; ours: "refused" | "other years"; reason: string }[] = [
  { covers: /T\d\d:/, ours: "refused", reason: "Times of day are out of profile." },
  { covers: /^Y/, ours: "refused", reason: "Years of more than four digits are out of profile." },
  { covers: /^-\d|^0000/, ours: "refused", reason: "Years before 0001 are out of profile." },
  { covers: / /, ours: "refused", reason: "Blanks are refused and the text without them offered." },
  { covers: /^XXXX/, ours: "other years", reason: "We leave the year 0000 out." },
  {
    covers: /^\/2006$|\d\??\/$/,
    ours: "other years",
    reason: "python-edtf sets an unknown end at ten years; we set no bound.",
  },
  { covers: /^2010-24$/, ours: "other years", reason: "python-edtf ends winter with its year." },
];

/** Only python-edtf differs for reasons of its own. */
const knownDifference = (text: string, source: readonly Published[]) =>
  KNOWN.find(
    ({ covers, reason }) =>
      covers.test(text) && (source === PYTHON_EDTF || !reason.startsWith("python-edtf")),
  );

const bound = (year: number | "none", open: number): number => (year === "none" ? open : year);

function differenceOf([text, first, last]: Published): "none" | "refused" | "other years" {
  const ours = ourBounds(text);
  if (!ours) return "refused";
  const same =
    ours[0] === bound(first, Number.NEGATIVE_INFINITY) && ours[1] === bound(last, Number.POSITIVE_INFINITY);
  return same ? "none" : "other years";
}

describe.each([
  ["the Library of Congress", LIBRARY_OF_CONGRESS, 63],
  ["python-edtf", PYTHON_EDTF, 76],
] as const)("the examples of %s", (_, examples, count) => {
  it("are all here, each once", () => {
    expect(new Set(examples.map(([text]) => text)).size).toBe(count);
  });

  it.each(examples)("%s is read from %s to %s, or differs for a known reason", (...example) => {
    // Neither a difference that is not listed nor a listed one that is gone.
    expect(differenceOf(example)).toBe(knownDifference(example[0], examples)?.ours ?? "none");
  });

  const readable = examples.map(([text]) => text).filter((text) => ourBounds(text) !== undefined);
  it.each(readable)("[D19] %s is printed so that it can be read again", (text) => {
    const dating = readDating(text, "event");
    if (isProblem(dating)) throw new Error(dating.message);
    const printed = printDating(dating);
    expect(readDating(printed, "event")).toEqual({ ...dating, text: printed });
  });
});

describe("[D17] the bad strings of python-edtf", () => {
  it.each(PYTHON_EDTF_BAD)("“%s” is refused in either role", (text) => {
    for (const role of ["event", "period"] as const)
      expect(readDating(text, role)).toMatchObject({ problem: true, code: "UNREADABLE_DATING" });
  });
});

describe("[D10][D11] marks widen the same ends as the fuzzy years of python-edtf", () => {
  it.each(PYTHON_EDTF_WIDENED)("%s", (text, begin, end) => {
    const dating = readDating(text, "period");
    if (isProblem(dating)) throw new Error(dating.message);
    expect([dating.padBegin > 0, dating.padEnd > 0]).toEqual([begin, end]);
  });
});
