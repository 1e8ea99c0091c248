import type { Scope } from "../domain/claim.ts";
import type { ClaimId } from "../domain/ids.ts";
import type { Broader } from "../domain/region.ts";
import { isNarrower } from "../domain/scope.ts";

interface Scoped {
  readonly id: ClaimId;
  readonly scope: Scope;
}

/** The claims that none of the others overrides, and for each overridden one the first that overrides it (E5). */
export function nearest<Claim extends Scoped>(
  claims: readonly Claim[],
  broader: Broader,
): { readonly nearest: readonly Claim[]; readonly overridden: ReadonlyMap<ClaimId, ClaimId> } {
  const overridden = new Map<ClaimId, ClaimId>();
  if (claims.length < 2) return { nearest: claims, overridden };
  for (const claim of claims) {
    const nearer = claims.find((other) => isNarrower(other.scope, claim.scope, broader));
    if (nearer) overridden.set(claim.id, nearer.id);
  }
  return { nearest: claims.filter(({ id }) => !overridden.has(id)), overridden };
}
