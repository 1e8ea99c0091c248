/** Entropy of a distribution in bits. Terms of probability 0 add nothing. */
export const entropy = (odds: readonly number[]): number =>
  odds.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);

/** Bits that are taken as none. */
const LEAST = 1e-9;

/**
 * Bits that a look is expected to give on a question (Lindley 1956), over three outcomes: seen, looked for and absent, and cannot be
 * seen, which gives none. `before` has the answers' probabilities, `withSeen` the joint ones with "seen". Never below 0.
 */
export function expectedBits(before: readonly number[], withSeen: readonly number[], access: number): number {
  const seen = withSeen.reduce((sum, p) => sum + p, 0);
  const absent = before.map((p, i) => Math.max(0, p - (withSeen[i] as number)));
  const rest = absent.reduce((sum, p) => sum + p, 0);
  const given = (joint: readonly number[], total: number): number =>
    total > 0 ? total * entropy(joint.map((p) => p / total)) : 0;
  const bits = access * (entropy(before) - given(withSeen, seen) - given(absent, rest));
  // What is left of rounding tells nothing.
  return bits < LEAST ? 0 : bits;
}
