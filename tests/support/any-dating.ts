import fc from "fast-check";

const mark = fc.oneof(
  { weight: 3, arbitrary: fc.constant("") },
  { weight: 1, arbitrary: fc.constantFrom("?", "~", "%") },
);
const digit = fc.constantFrom(..."0123456789");
const digitOrUnknown = fc.oneof({ weight: 3, arbitrary: digit }, { weight: 1, arbitrary: fc.constant("X") });
const two = (n: number): string => String(n).padStart(2, "0");

/** Four digits, 0001 to 9999, most of them near the years of furniture. */
export const anyFullYear: fc.Arbitrary<string> = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: 1600, max: 1950 }).map(String) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 9999 }).map((year) => String(year).padStart(4, "0")) },
);

/** A year with any of its digits unknown; never 0000. */
export const anyMaskedYear: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: anyFullYear },
  { weight: 2, arbitrary: anyFullYear.map((year) => `${year.slice(0, 3)}X`) },
  { weight: 1, arbitrary: anyFullYear.map((year) => `${year.slice(0, 2)}XX`) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(digitOrUnknown, digitOrUnknown, digitOrUnknown, digitOrUnknown)
      .map((digits) => digits.join(""))
      .map((year) => (year === "0000" ? "0001" : year)),
  },
);

/** A month or day with at most one mark, on its left or its right. */
const marked = (component: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc.tuple(component, mark, fc.boolean()).map(([text, sign, left]) => (left ? sign + text : text + sign));
const month = marked(fc.oneof(fc.integer({ min: 1, max: 12 }).map(two), fc.constantFrom("XX", "0X", "1X")));
const day = marked(fc.oneof(fc.integer({ min: 1, max: 28 }).map(two), fc.constantFrom("XX", "1X", "2X")));
const monthAndDay = fc.oneof(
  month.map((text) => `-${text}`),
  fc.tuple(month, day).map(([ofYear, ofMonth]) => `-${ofYear}-${ofMonth}`),
);

/** One date: a masked year with marks, with or without month and day. */
export const anyDate: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: fc.tuple(anyMaskedYear, mark).map((parts) => parts.join("")) },
  { weight: 1, arbitrary: fc.tuple(mark, anyMaskedYear).map((parts) => parts.join("")) },
  { weight: 2, arbitrary: fc.tuple(anyMaskedYear, mark, monthAndDay).map((parts) => parts.join("")) },
);

/** A part of a known year: seasons of both halves of the earth, quarters, thirds and halves. */
export const anySeason: fc.Arbitrary<string> = fc
  .tuple(anyFullYear, fc.integer({ min: 21, max: 41 }), mark)
  .map(([year, code, end]) => `${year}-${code}${end}`);

const anyEstimate = fc
  .tuple(anyFullYear, fc.integer({ min: 1, max: 4 }))
  .map(([year, digits]) => `${year}S${digits}`);

const anyEnd = fc.oneof(
  { weight: 4, arbitrary: anyDate },
  { weight: 1, arbitrary: fc.constantFrom("..", "") },
);

/** Two ends with a stroke: in order or not, open or unknown, both ends unstated included. */
export const anyInterval: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: fc.tuple(anyDate, anyDate).map((ends) => ends.toSorted().join("/")) },
  { weight: 1, arbitrary: fc.tuple(anyEnd, anyEnd).map((ends) => ends.join("/")) },
);

const yearMark = fc.tuple(anyFullYear, mark).map((parts) => parts.join(""));
const range = fc.tuple(yearMark, yearMark).map((ends) => ends.toSorted().join(".."));

const listOf = (member: fc.Arbitrary<string>, open: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc
    .record({
      before: fc.option(open, { freq: 5 }),
      members: fc.array(fc.oneof({ weight: 3, arbitrary: member }, { weight: 1, arbitrary: range }), {
        minLength: 1,
        maxLength: 4,
      }),
      after: fc.option(open, { freq: 5 }),
    })
    .map(({ before, members, after }) =>
      [before ? `..${before}` : [], members, after ? `${after}..` : []].flat().join(","),
    );

/** One of: years, months, spans, with or without an open end. */
export const anyOneOf: fc.Arbitrary<string> = listOf(anyDate, anyDate).map((list) => `[${list}]`);

/** All of: each in one known year. */
export const anyAllOf: fc.Arbitrary<string> = listOf(yearMark, yearMark).map((list) => `{${list}}`);

/** Any string of our profile, some of them to be refused for their order. */
export const anyDatingText: fc.Arbitrary<string> = fc.oneof(
  { weight: 5, arbitrary: anyDate },
  { weight: 1, arbitrary: anySeason },
  { weight: 1, arbitrary: anyEstimate },
  { weight: 4, arbitrary: anyInterval },
  { weight: 3, arbitrary: anyOneOf },
  { weight: 1, arbitrary: anyAllOf },
);
