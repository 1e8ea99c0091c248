import type { RandomSource } from "#server/generator/random-source.ts";
import type { ClaimSketch } from "./build-claim.ts";
import type { PieceSketch } from "./build-piece.ts";

/** Regions of the sketched pieces, all within `world`. */
export const QUARTERS = ["east", "north", "west"] as const;

/** A small piece and the claims on what was seen on it. No claim overrides another, and no begin is assumed. */
export interface AnySketch {
  readonly claims: readonly ClaimSketch[];
  readonly piece: Omit<PieceSketch, "date" | "observations" | "parts"> & {
    readonly date: string;
    readonly observations: readonly {
      readonly id: string;
      readonly part: string;
      readonly feature: string;
    }[];
    readonly parts: readonly { readonly id: string; readonly region?: string }[];
  };
}

/**
 * Three to five things seen on up to three parts. Windows with and without gaps, scoped to one region or confined to two of three (so
 * that three of them overlap in pairs only), habits among them; the region claimed or left free; a part from anywhere; parts
 * together or separate.
 */
export function anySketch(random: RandomSource): AnySketch {
  const spansOf = (): readonly string[] => {
    const eras = [1700, 1710, 1720];
    const one = random.pick(eras);
    const kept = random.chance(0.8) ? eras.filter((era) => era !== one) : [one];
    return kept.map((era) => `${era + random.below(2)}/${era + 6 + random.below(2)}`);
  };
  const claimsOn = (subject: string): ClaimSketch[] => {
    const region = random.chance(0.2) ? { region: random.pick(QUARTERS) } : {};
    const relation = random.chance(0.25) ? "current" : "active";
    const dated = random.chance(0.85)
      ? spansOf().map(
          (when, i): ClaimSketch => ({
            ...{ id: `${subject}-${i}`, relation, subject, when, ...region },
          }),
        )
      : [];
    const left = random.pick(QUARTERS);
    const confined: ClaimSketch = {
      ...{ id: `${subject}-c`, relation: "confined to", subject, hardness: "physical" },
      regions: QUARTERS.filter((quarter) => quarter !== left),
    };
    return random.chance(dated.length === 0 ? 1 : 0.3) ? [...dated, confined] : dated;
  };
  const anywhere = random.chance(0.5);
  const parts = ["p0", "p1", "p2"].map((id) =>
    id === "p0" && anywhere ? { id, region: random.chance(0.7) ? "world" : random.pick(QUARTERS) } : { id },
  );
  const observations = Array.from({ length: 3 + random.below(3) }, (_, i) => ({
    ...{ id: `o${i}`, feature: `F${i}` },
    part: anywhere && random.chance(0.6) ? "p0" : random.pick(parts).id,
  }));
  const first = random.pick([1700, 1702, 1710, 1718]);
  return {
    claims: observations.flatMap(({ feature }) => claimsOn(feature)),
    piece: {
      ...{ date: `${first}/${first + random.pick([4, 9, 18, 30])}`, parts, observations },
      ...(random.chance(0.5) ? { region: random.pick(QUARTERS) } : {}),
      ...(random.chance(0.2) ? { together: [["p0", "p1"]] } : {}),
      ...(random.chance(0.2) ? { separate: [["p1", "p2"]] as const } : {}),
    },
  };
}
