import type { Span } from "#server/domain/years.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import type { ClaimSketch } from "./build-claim.ts";
import type { PieceSketch } from "./build-piece.ts";

/** Parts with the years and regions that each can be from, and which are kept apart or together. */
export interface AnyOrigins {
  readonly parts: readonly {
    readonly id: string;
    readonly spans: readonly Span[];
    readonly regions: readonly string[];
  }[];
  readonly regions: readonly string[];
  readonly separate: readonly (readonly [string, string])[];
  readonly together: readonly (readonly string[])[];
}

export interface OriginsLike {
  readonly parts: number;
  readonly regions: number;
  /** Chance that a part's years have a gap, that it is confined to some of the regions, and that two are recorded as separate. */
  readonly gapped: number;
  readonly confined: number;
  readonly separate: number;
  readonly together: number;
}

export function anyOrigins(random: RandomSource, like: OriginsLike): AnyOrigins {
  const regions = Array.from({ length: like.regions }, (_, n) => `r${n}`);
  const span = (from: number): Span => {
    const first = from + random.below(60);
    return [first, first + random.below(45)];
  };
  const parts = Array.from({ length: like.parts }, (_, n) => {
    const [early, late] = [span(1700), span(1740)];
    const isGapped = random.chance(like.gapped) && early[1] + 1 < late[0];
    const some = regions.filter(() => random.chance(0.4));
    return {
      id: `p${String(n).padStart(2, "0")}`,
      spans: isGapped ? [early, late] : [random.pick([early, late])],
      regions: random.chance(like.confined) && some.length > 0 ? some : regions,
    };
  });
  const pairs = parts.flatMap((a, i) => parts.slice(i + 1).map((b) => [a.id, b.id] as const));
  const together = random.chance(like.together) ? [[parts[0]?.id ?? "", parts[2]?.id ?? ""]] : [];
  return {
    ...{ parts, regions, together },
    separate: pairs.filter(
      ([a, b]) =>
        random.chance(like.separate) && !together.some((group) => group.includes(a) && group.includes(b)),
    ),
  };
}

/** The same as a piece and claims: a feature on each part, dated and confined as the part is. */
export function originsAsPiece({ parts, regions, separate, together }: AnyOrigins): {
  readonly piece: PieceSketch;
  readonly claims: readonly ClaimSketch[];
} {
  const claims = parts.flatMap(({ id, spans, regions: some }): ClaimSketch[] => [
    ...spans.map(
      ([first, last], n): ClaimSketch => ({
        ...{ id: `${id}-${n}`, relation: "active", subject: `F-${id}`, when: `${first}/${last}` },
      }),
    ),
    ...(some.length < regions.length
      ? [
          {
            ...{ id: `${id}-in`, relation: "confined to", subject: `F-${id}`, hardness: "physical" },
            regions: some,
          } satisfies ClaimSketch,
        ]
      : []),
  ]);
  const observations = parts.map(({ id }) => ({ id: `o-${id}`, part: id, feature: `F-${id}` }));
  return { piece: { observations, separate, together }, claims };
}
