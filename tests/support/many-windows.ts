import type { Claim } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { Neighbourhood } from "#server/domain/neighbourhood.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import { aClaim, type ClaimSketch } from "./build-claim.ts";
import { neighbourhoodOf } from "./build-neighbourhood.ts";
import { aPiece } from "./build-piece.ts";

export interface ManyWindows {
  readonly parts: number;
  readonly windows: number;
  readonly claims: number;
  /** Shares of windows that miss the claimed years, and that have a gap. */
  readonly violating: number;
  readonly gapped: number;
}

const CLAIMED = [1760, 1775] as const;

/**
 * A large piece: things seen spread over its parts, each of a tool that is dated (tools are shared, so that claims are). Windows that
 * violate begin up to 80 years after the claimed ones, or end up to 80 before them; the rest hold them. One with a gap leaves out
 * eight years soon after them.
 */
export function manyWindows(
  random: RandomSource,
  { parts, windows, claims, violating, gapped }: ManyWindows,
): { readonly piece: Piece; readonly neighbourhood: Neighbourhood } {
  const tools = Array.from({ length: claims }, (_, n) => {
    const id = `t${n}`;
    const [from, to] = CLAIMED;
    if (random.chance(violating)) {
      const late = { relation: "introduced", when: `${to + 1 + random.below(80)}` } as const;
      const early = { relation: "discontinued", when: `${from - 1 - random.below(80)}` } as const;
      return dated(id, random.chance(0.6) ? late : early);
    }
    const [first, last] = [from - 10 - random.below(80), to + 10 + random.below(80)];
    if (!random.chance(gapped)) return dated(id, { relation: "active", when: `${first}/${last}` });
    const gap = to + 1 + random.below(10);
    return [
      ...dated(id, { relation: "active", when: `${first}/${gap}` }),
      ...dated(id, { relation: "active", when: `${gap + 8}/${last + 20}` }, "-too"),
    ];
  });
  const observations = Array.from({ length: windows }, (_, n) => ({
    ...{ id: `o${n}`, part: `p${n % parts}`, feature: `f${n}` },
  }));
  const needs = observations.map(
    ({ feature }): ClaimSketch => ({
      ...{
        id: `${feature}-needs`,
        relation: "requires",
        subject: feature,
        ways: [[`t${random.below(claims)}`]],
      },
    }),
  );
  const all: Claim[] = [...needs, ...tools.flat()].map(aClaim);
  return {
    piece: aPiece({
      date: CLAIMED.join("/"),
      parts: Array.from({ length: parts }, (_, n) => `p${n}`),
      observations,
    }),
    neighbourhood: neighbourhoodOf([], all),
  };
}

const dated = (
  subject: string,
  bound: Pick<ClaimSketch, "relation" | "when">,
  suffix = "",
): readonly ClaimSketch[] => [{ id: `${subject}-dated${suffix}`, subject, hardness: "physical", ...bound }];
