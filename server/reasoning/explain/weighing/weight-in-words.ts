import type { WeightWord } from "../../../domain/weighing/weights.ts";

/** How much a weight is, as an adverb. */
export const HOW_WEIGHTY: Readonly<Record<WeightWord, string>> = {
  slight: "slightly",
  moderate: "moderately",
  strong: "strongly",
  "very strong": "very strongly",
  "beyond the model": "beyond anything the model can weigh",
};

/** "speaks strongly against it (log10 -1.1)"; to follow a subject in the singular. */
export function weightInWords(log10: number | null, word: WeightWord, it: string): string {
  if (log10 === null) return `weighs ${HOW_WEIGHTY[word]}`;
  if (Math.abs(log10) < 0.05) return `says next to nothing of ${it}`;
  return `speaks ${HOW_WEIGHTY[word]} ${log10 > 0 ? "for" : "against"} ${it} (${log10.toFixed(1)})`;
}

/** "strongly against", for a place where what it is against is said already. */
export function weightInBrief(log10: number | null, word: WeightWord): string {
  if (log10 === null) return HOW_WEIGHTY[word];
  if (Math.abs(log10) < 0.05) return "next to nothing";
  return `${HOW_WEIGHTY[word]} ${log10 > 0 ? "for" : "against"}`;
}
