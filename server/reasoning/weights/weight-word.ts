import type { WeightWord } from "../../domain/weighing/weights.ts";

/** The word for a weight, log10 of a Bayes factor in either direction (docs/method.md). */
export function weightWord(log10: number): WeightWord {
  const size = Math.abs(log10);
  if (!Number.isFinite(size)) return "beyond the model";
  if (size < 0.5) return "slight";
  if (size < 1) return "moderate";
  return size < 2 ? "strong" : "very strong";
}
