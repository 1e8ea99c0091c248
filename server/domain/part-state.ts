/** What a part can be to the piece: of its first making, put in since, taken from an earlier piece, or worked over. */
export const PART_STATES = ["original", "later", "reused", "reworked"] as const;
export type PartState = (typeof PART_STATES)[number];

/** The one state that is not among these, where all others are. */
export function onlyStateLeft(states: readonly PartState[]): PartState | undefined {
  const left = PART_STATES.filter((state) => !states.includes(state));
  return left.length === 1 ? left[0] : undefined;
}

/** What is said of some states; what speaks for all but one speaks against that one, and the other way round. */
export function spokenOf(
  speaks: "for" | "against",
  states: readonly PartState[],
): { readonly speaks: "for" | "against"; readonly states: readonly PartState[] } {
  const left = onlyStateLeft(states);
  return left === undefined
    ? { speaks, states }
    : { speaks: speaks === "for" ? "against" : "for", states: [left] };
}
