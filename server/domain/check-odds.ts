import type { Piece } from "./examination.ts";
import { type Problem, problem } from "./problem.ts";

/** How far from 1 odds may add up to, for numbers that were rounded. */
const NEAR = 1e-6;

/** What cannot be chosen for a piece: odds that are none, or are of a part that is not there. Rule [G33]. */
export function checkOdds({ odds, parts }: Piece): readonly Problem[] {
  if (odds === undefined) return [];
  const labelOf = new Map(parts.map((part) => [part.id, part.label]));
  const seen = new Set<string>();
  const ofParts = (odds.parts ?? []).flatMap(({ part, original, later, reused }, i): Problem[] => {
    const path = ["odds", "parts", i];
    const label = labelOf.get(part);
    if (label === undefined)
      return [
        problem("UNKNOWN_PART", `Odds are chosen for the part ${part}, which the piece has not.`, [
          ...path,
          "part",
        ]),
      ];
    if (seen.has(part))
      return [problem("DUPLICATE_ID", `Odds are chosen twice for the part “${label}”; keep one.`, path)];
    seen.add(part);
    const each = [original, later, reused];
    if (each.every((value) => value > 0 && value < 1) && Math.abs(original + later + reused - 1) < NEAR)
      return [];
    return [
      impossible(
        `The odds of the part “${label}” must each lie between 0 and 1 and add up to 1: original, later and reused; they are ${each.join(", ")}.`,
        path,
      ),
    ];
  });
  return [
    ...ofParts,
    ...within(odds.wrongClaims, 0.1, 10, "How much more often claims are wrong", "wrongClaims"),
    ...within(odds.leak, 0.0001, 0.2, "The probability outside all known years", "leak"),
    ...within(odds.madeToDeceive, 0.001, 0.5, "The prior of “made later to look old”", "madeToDeceive"),
  ];
}

function within(
  value: number | undefined,
  least: number,
  most: number,
  what: string,
  field: string,
): readonly Problem[] {
  if (value === undefined || (value >= least && value <= most)) return [];
  return [impossible(`${what} must lie between ${least} and ${most}; it is ${value}.`, ["odds", field])];
}

const impossible = (message: string, path: Problem["path"]): Problem =>
  problem("IMPOSSIBLE_ODDS", message, path);
