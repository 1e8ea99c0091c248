import { ASSUMED } from "../domain/assumptions.ts";
import type { Claim } from "../domain/claim.ts";
import type { Span } from "../domain/years.ts";
import { yearsOfClaim } from "./claim-years.ts";

/** The first and the last year that a claim leaves, both taken loosely; nothing of a claim that bounds none. */
export function boundOfClaim(claim: Claim): Span | undefined {
  if (!("when" in claim) || claim.when === undefined) return undefined;
  if (claim.relation === "attested" || claim.relation === "not found in") return undefined;
  const { outer } = yearsOfClaim(claim, ASSUMED);
  const [first, last] = [outer[0], outer.at(-1)];
  return first === undefined || last === undefined ? undefined : [first[0], last[1]];
}
