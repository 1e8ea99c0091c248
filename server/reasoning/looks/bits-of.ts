import type { StateOdds } from "../../domain/weighing/odds.ts";
import type { Foresight } from "./foresee.ts";
import { expectedBits } from "./information.ts";

/** Bits expected of one look, on two questions. */
export interface Bits {
  /** Whether the claimed years hold. */
  readonly bits: number;
  /** The state of the part. */
  readonly bitsOfState: number;
}

/** What a look is expected to tell: `before` is what is known without it, `withSeen` the joint probability with "it is seen". */
export const bitsOf = (before: Foresight, withSeen: Foresight, access: number): Bits => ({
  bits: expectedBits(byClaim(before), byClaim(withSeen), access),
  bitsOfState: expectedBits(values(before.byState), values(withSeen.byState), access),
});

const byClaim = ({ seen, claimed }: Foresight): readonly number[] => [claimed, Math.max(0, seen - claimed)];

const values = ({ original, later, reused, reworked }: StateOdds): readonly number[] => [
  ...[original, later],
  ...[reused, reworked],
];
