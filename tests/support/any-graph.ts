import fc from "fast-check";
import type { Citation, Claim, Hardness, Scope } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import type { Neighbourhood } from "#server/domain/neighbourhood.ts";
import type { Term, TermKind } from "#server/domain/term.ts";

const term = (name: string, kind: TermKind, broader?: string): Term => ({
  id: id(name),
  kind,
  label: name,
  ...(broader === undefined ? {} : { broader: id(broader) }),
});

export const FEATURES: readonly TermId[] = ["feature.a", "feature.b", "feature.c"].map((name) => id(name));
const THINGS: readonly TermId[] = ["tool.a", "tool.b", "tool.c", "material.a"].map((name) => id(name));
const REGIONS: readonly TermId[] = [
  "region.north",
  "region.north-east",
  "region.north-west",
  "region.south",
].map((name) => id(name));

/** A small fixed world: a tree of regions three deep, two forms, two kinds of part, three features, four things. */
export const WORLD: readonly Term[] = [
  ...FEATURES.map((name) => term(name, "feature")),
  ...THINGS.map((name) => term(name, name.startsWith("tool") ? "tool" : "material")),
  term("region.world", "region"),
  term("region.north", "region", "region.world"),
  term("region.north-east", "region", "region.north"),
  term("region.north-west", "region", "region.north"),
  term("region.south", "region", "region.world"),
  term("form.case", "form"),
  term("form.chest", "form", "form.case"),
  term("part.drawer", "part"),
  term("part.drawer-bottom", "part", "part.drawer"),
];

const CITED: readonly [Citation] = [{ basis: "common practice" }];
const year = fc.integer({ min: 1700, max: 1760 });
const event = fc.oneof(
  year.map(String),
  year.map((y) => `${y}~`),
  year.map((y) => `${Math.floor(y / 10)}X`),
  fc.tuple(year, fc.integer({ min: 1, max: 12 })).map(([y, length]) => `${y}/${y + length}`),
);
const period = fc.oneof(
  fc.tuple(year, fc.integer({ min: 0, max: 40 })).map(([y, length]) => `${y}/${y + length}`),
  fc.tuple(year, fc.integer({ min: 12, max: 40 })).map(([y, length]) => `${y}~/${y + length}~`),
);
const scope: fc.Arbitrary<Scope> = fc.oneof(
  { weight: 3, arbitrary: fc.constant({}) },
  { weight: 4, arbitrary: fc.constantFrom(...REGIONS).map((region) => ({ region })) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(id<"term">("form.chest"), id<"term">("form.case")).map((form) => ({ form })),
  },
  { weight: 1, arbitrary: fc.constant({ part: id<"term">("part.drawer") }) },
);
const subject = fc.constantFrom(...FEATURES, ...THINGS);
const base = (index: number) => ({
  id: id<"claim">(`claim.${String(index).padStart(2, "0")}`),
  strength: "usual" as const,
  status: "accepted" as const,
  citations: CITED,
});

type Unnumbered = (index: number) => Claim;
const numbered = <Rest extends object>(rest: fc.Arbitrary<Rest>): fc.Arbitrary<Unnumbered> =>
  rest.map((fields) => (index) => ({ ...base(index), ...fields }) as unknown as Claim);
const hardness = fc.constantFrom<Hardness>("physical", "practice");

const introduced = numbered(
  fc.record({
    relation: fc.constant("introduced"),
    subject,
    scope,
    hardness: fc.constant("physical"),
    when: event,
  }),
);
const softly = numbered(
  fc.record({
    relation: fc.constantFrom("common from", "common until", "discontinued"),
    subject,
    scope,
    hardness: fc.constant("practice"),
    when: event,
  }),
);
const current = numbered(
  fc.record({
    relation: fc.constant("current"),
    subject,
    scope,
    hardness: fc.constant("practice"),
    when: period,
  }),
);
const attested = numbered(
  fc.record({
    relation: fc.constant("attested"),
    subject,
    scope,
    hardness: fc.constant("physical"),
    when: event,
  }),
);
const absent = numbered(
  fc.record({
    relation: fc.constant("not found in"),
    subject,
    scope,
    hardness: fc.constant("practice"),
    when: period,
  }),
);
const confined = numbered(
  fc.record({
    relation: fc.constant("confined to"),
    subject,
    scope: fc.constant({}),
    hardness,
    regions: fc.uniqueArray(fc.constantFrom(...REGIONS), { minLength: 1, maxLength: 2 }),
  }),
);
const way = fc.uniqueArray(fc.constantFrom(...THINGS, ...FEATURES), { minLength: 1, maxLength: 2 });
const requires = numbered(
  fc.record({
    relation: fc.constant("requires"),
    subject,
    scope,
    hardness,
    ways: fc.array(way, { minLength: 1, maxLength: 3 }),
    closed: fc.boolean(),
  }),
);

/** Up to fourteen claims of every relation that bounds, cycles included; ids claim.00, claim.01 ... */
export const anyClaims: fc.Arbitrary<readonly Claim[]> = fc
  .array(
    fc.oneof(
      { weight: 5, arbitrary: introduced },
      { weight: 3, arbitrary: softly },
      { weight: 2, arbitrary: current },
      { weight: 1, arbitrary: attested },
      { weight: 1, arbitrary: absent },
      { weight: 1, arbitrary: confined },
      { weight: 5, arbitrary: requires },
    ),
    { maxLength: 14 },
  )
  .map((claims) => claims.map((claim, index) => claim(index)));

const PARTS = ["p1", "p2", "p3"] as const;

/** A piece of one to three parts with one to five present observations. */
export const anyPiece: fc.Arbitrary<Piece> = fc
  .record({
    date: fc
      .tuple(year, fc.integer({ min: 0, max: 15 }))
      .map(([y, length]) => (length === 0 ? `${y}` : `${y}/${y + length}`)),
    region: fc.option(fc.constantFrom(...REGIONS), { nil: undefined, freq: 6 }),
    form: fc.option(fc.constant(id<"term">("form.chest")), { nil: undefined, freq: 3 }),
    kinds: fc.array(fc.option(fc.constant(id<"term">("part.drawer-bottom")), { nil: undefined }), {
      minLength: 3,
      maxLength: 3,
    }),
    observations: fc.array(
      fc.record({
        part: fc.constantFrom(...PARTS),
        feature: fc.constantFrom(...FEATURES),
        sureness: fc.constantFrom("sure", "probable", "possible"),
      }),
      { minLength: 1, maxLength: 5 },
    ),
  })
  .map(({ date, region, form, kinds, observations }) => ({
    title: "A piece",
    invented: true,
    examined: 2026,
    attribution: {
      date,
      ...(region === undefined ? {} : { region }),
      ...(form === undefined ? {} : { form }),
    },
    parts: PARTS.map((part, index) => {
      const kind = kinds[index];
      return { id: id<"part">(part), label: part, ...(kind === undefined ? {} : { kind }) };
    }),
    observations: observations.map(({ part, feature, sureness }, index) => ({
      id: id<"observation">(`o${index}`),
      part: id<"part">(part),
      feature,
      seen: "present" as const,
      sureness: sureness as "sure" | "probable" | "possible",
    })),
    together: [],
    separate: [],
  }));

/** The whole small world as the neighbourhood of any piece in it. */
export const wholeWorld = (claims: readonly Claim[]): Neighbourhood => ({
  revision: 1,
  terms: [...WORLD].sort((a, b) => (a.id < b.id ? -1 : 1)),
  claims: [...claims].sort((a, b) => (a.id < b.id ? -1 : 1)),
  depths: new Map([...FEATURES, ...THINGS].map((name) => [name, FEATURES.includes(name) ? 0 : 1])),
  cutAt: [],
});
