import type { Change } from "#server/domain/change.ts";
import type { Citations, Claim, Dated, Requires, Strength } from "#server/domain/claim.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { randomSource } from "#server/generator/random-source.ts";

export interface LayeredGraph {
  readonly change: Change;
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
  /** Terms that can be seen on a piece, by family. */
  readonly features: readonly (readonly TermId[])[];
  /** Regions without narrower ones. */
  readonly leafRegions: readonly TermId[];
}

/** Claims of one family: a graph twice as large has twice as many families, so that a piece of one reaches as much. */
const CLAIMS_A_FAMILY = 10_000;
const CLAIMS_A_TERM = 6;
/** From what is seen to what it rests on, with each layer's share of the terms. */
const LAYERS: readonly { readonly kind: TermKind; readonly share: number }[] = [
  { kind: "feature", share: 0.45 },
  { kind: "practice", share: 0.3 },
  { kind: "tool", share: 0.2 },
  { kind: "material", share: 0.05 },
];
const DATED: readonly Pick<Dated, "relation" | "hardness">[] = [
  { relation: "introduced", hardness: "physical" },
  { relation: "discontinued", hardness: "practice" },
  { relation: "common from", hardness: "practice" },
  { relation: "common until", hardness: "practice" },
];
const STRENGTHS: readonly Strength[] = ["certain", "firm", "usual", "tentative"];
const CITED: Citations = [
  { basis: "common practice", note: "made for measuring; says nothing of real work" },
];

/**
 * A made-up graph of about `claims` claims for measuring: four layers of terms, few hubs named often, 45 % of the
 * claims above the bottom layer `requires`, the rest dated and scoped to 249 regions in a tree. The same arguments give
 * the same graph. Its cycles, rejected claims and exceptions are few, so that walks are as long as in real graphs.
 */
export function layeredGraph(claims: number, seed = 1): LayeredGraph {
  const random = randomSource(seed);
  const regions = regionTree();
  const leafRegions = regions.filter(({ id }) => id.split("-").length === 3).map(({ id }) => id);
  const terms: Term[] = [...regions];
  const made: Claim[] = [];
  const features: TermId[][] = [];

  for (let family = 0; made.length < claims; family++) {
    const size = Math.min(CLAIMS_A_FAMILY, claims - made.length);
    const layers = LAYERS.map(({ kind, share }) =>
      Array.from(
        { length: Math.max(2, Math.round((size / CLAIMS_A_TERM) * share)) },
        (_, n): Term => ({
          id: id(`${kind}.f${family}-${n}`),
          kind,
          label: `${kind} ${n} of family ${family}`,
          note: "A made-up term for measuring. It stands for nothing that can be seen on a piece of furniture.",
        }),
      ),
    );
    terms.push(...layers.flat());
    features.push((layers[0] ?? []).map((term) => term.id));
    const subjects = layers.flatMap((layer, depth) => layer.map((term) => ({ term, depth })));
    for (let n = 0; n < size; n++) made.push(aClaim(made.length));

    function aClaim(number: number): Claim {
      const { term, depth } = random.pick(subjects);
      const base = {
        id: id<"claim">(`claim.L${String(number).padStart(6, "0")}`),
        subject: term.id,
        strength: random.pick(STRENGTHS),
        status: random.chance(0.95) ? ("accepted" as const) : ("rejected" as const),
        scope: random.chance(0.75) ? {} : { region: random.pick(regions).id },
        citations: CITED,
      };
      const below = layers.slice(depth + 1).flat();
      if (below.length > 0 && random.chance(0.45)) return { ...base, ...needs(below) };
      if (random.chance(0.02) && number > 0)
        return {
          id: base.id,
          relation: "void when",
          of: id(`claim.L${String(random.below(number)).padStart(6, "0")}`),
          condition: random.pick(features[family] ?? []),
          anywhere: false,
          strength: base.strength,
          status: base.status,
          citations: CITED,
        };
      return { ...base, ...random.pick(DATED), when: String(1600 + random.below(300)) };
    }
    function needs(below: readonly Term[]): Pick<Requires, "relation" | "hardness" | "ways" | "closed"> {
      const target = (): TermId => (below[random.skewed(below.length)] as Term).id;
      return { relation: "requires", hardness: "physical", ways: [[target()]], closed: true };
    }
  }
  const change: Change = [
    ...terms.map((after) => ({ kind: "term" as const, after })),
    ...made.map((after) => ({ kind: "claim" as const, after })),
  ];
  return { change, terms, claims: made, features, leafRegions };
}

/** 1 + 8 + 240 regions in three levels. */
function regionTree(): readonly Term[] {
  const region = (slug: string, broader?: string): Term => ({
    id: id(`region.${slug}`),
    kind: "region",
    label: `region ${slug}`,
    ...(broader === undefined ? {} : { broader: id<"term">(`region.${broader}`) }),
  });
  const areas = Array.from({ length: 8 }, (_, a) => `world-${a}`);
  return [
    region("world"),
    ...areas.map((area) => region(area, "world")),
    ...areas.flatMap((area) => Array.from({ length: 30 }, (_, n) => region(`${area}-${n}`, area))),
  ];
}
