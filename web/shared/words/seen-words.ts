import type { Observation, Seen, Sureness } from "#server/domain/examination.ts";

export const SEEN_CHOICES: readonly { readonly id: Seen; readonly label: string }[] = [
  { id: "present", label: "seen" },
  { id: "absent", label: "looked for, absent" },
  { id: "unseen", label: "could not be seen" },
];

export const SURENESS_CHOICES: readonly { readonly id: Sureness; readonly label: string }[] = [
  { id: "sure", label: "sure" },
  { id: "probable", label: "probable" },
  { id: "possible", label: "possible" },
];

/** How a thing was found: "seen", "looked for, absent". */
export const foundWords = (seen: Seen): string =>
  SEEN_CHOICES.find((choice) => choice.id === seen)?.label ?? seen;

/** How a thing was seen, in a few words: "seen, probable". Sure goes without saying. */
export function seenWords({ seen, sureness }: Pick<Observation, "seen" | "sureness">): string {
  const how = foundWords(seen);
  return seen === "unseen" || sureness === "sure" ? how : `${how}, ${sureness}`;
}
