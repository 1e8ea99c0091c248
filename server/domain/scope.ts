import type { Scope } from "./claim.ts";
import type { TermId } from "./ids.ts";
import { type Broader, isWithin } from "./region.ts";

const DIMENSIONS = ["region", "form", "part"] as const;

/** Where something is asked of the graph. What is not known of the piece is undefined, and meets no scope that names it. */
export interface Whereabouts {
  readonly region: TermId | undefined;
  readonly form: TermId | undefined;
  readonly part: TermId | undefined;
}

/** Whether a claim of this scope applies there: each dimension it names holds, by itself or by something broader. */
export function applies(scope: Scope, where: Whereabouts, broader: Broader): boolean {
  return DIMENSIONS.every((dimension) => {
    const wanted = scope[dimension];
    if (wanted === undefined) return true;
    const found = where[dimension];
    return found !== undefined && isWithin(found, wanted, broader);
  });
}

/** Whether `a` is the nearer scope: each dimension the same or narrower, and one of them narrower; none is the widest. */
export function isNarrower(a: Scope, b: Scope, broader: Broader): boolean {
  let narrower = false;
  for (const dimension of DIMENSIONS) {
    const [near, wide] = [a[dimension], b[dimension]];
    if (near === wide) continue;
    if (near === undefined) return false;
    if (wide !== undefined && !isWithin(near, wide, broader)) return false;
    narrower = true;
  }
  return narrower;
}

/** One text for one scope, to tell whether two are identical. */
export const scopeKey = (scope: Scope): string =>
  `${scope.region ?? "*"} ${scope.form ?? "*"} ${scope.part ?? "*"}`;
