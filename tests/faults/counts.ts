/** What some rounds of a fault came to. Everything is well where there are no findings. */
export interface Counts {
  /** How often it struck. */
  readonly faults: number;
  readonly sent: number;
  readonly kept: number;
  readonly refused: number;
  readonly unanswered: number;
  /** Of the unanswered ones, those that stand. */
  readonly stood: number;
  /** Longest time until an answer, in milliseconds. */
  readonly slowest: number;
  /** What else is worth counting, by name. */
  readonly also: Readonly<Record<string, number>>;
  /** What must not be, a sentence each. */
  readonly findings: readonly string[];
}

export const NOTHING_COUNTED: Counts = {
  ...{ faults: 0, sent: 0, kept: 0, refused: 0, unanswered: 0, stood: 0, slowest: 0 },
  also: {},
  findings: [],
};

/** Sums; the slowest of all. */
export function addCounts(one: Counts, other: Partial<Counts>): Counts {
  const also: Record<string, number> = { ...one.also };
  for (const [name, count] of Object.entries(other.also ?? {})) also[name] = (also[name] ?? 0) + count;
  const sum = (of: "faults" | "sent" | "kept" | "refused" | "unanswered" | "stood"): number =>
    one[of] + (other[of] ?? 0);
  return {
    ...{ faults: sum("faults"), sent: sum("sent"), kept: sum("kept"), refused: sum("refused") },
    ...{ unanswered: sum("unanswered"), stood: sum("stood") },
    slowest: Math.max(one.slowest, other.slowest ?? 0),
    also,
    findings: [...one.findings, ...(other.findings ?? [])],
  };
}
