import { id, type TermId } from "./ids.ts";
import { ancestors, type Broader } from "./region.ts";

/** Broader features that ask one question of a part: once a narrower one is seen, the others are answered. */
const QUESTIONS: readonly TermId[] = [
  id("feature.show-wood"),
  id("feature.hidden-wood"),
  id("feature.foot-form"),
  id("feature.leg-form"),
];

/** The question that a feature answers for its part; undefined where several of its kin can be on one part. */
export const questionOf = (feature: TermId, broader: Broader): TermId | undefined =>
  ancestors(feature, broader).find((above) => QUESTIONS.includes(above));

/** Whether two features are of one family: one is within the other, or both are right below one term. */
export function areKin(a: TermId, b: TermId, broader: Broader): boolean {
  const above = broader.get(a);
  return (
    ancestors(a, broader).includes(b) ||
    ancestors(b, broader).includes(a) ||
    (above !== undefined && above === broader.get(b))
  );
}
