import type { Hardness, Requires } from "../domain/claim.ts";
import type { ClaimId } from "../domain/ids.ts";
import type { Years } from "../domain/years.ts";
import type { Holding } from "./atoms.ts";
import type { Allowed } from "./claim-years.ts";

/** One of the alternatives of a group of rivals: what it says, and who says so. */
export interface Alternative extends Allowed {
  readonly claims: readonly ClaimId[];
}

/** Years that hold for a term at one place, with what they rest on. Everything that bounds a term directly is one of these. */
export interface Bound {
  readonly kind: "bound";
  readonly by: "claim" | "rivals" | "diffusion" | "fallback";
  readonly hardness: Hardness;
  readonly outer: Years;
  readonly inner: Years;
  readonly held: Holding;
  /** Claims to cite, the dated one first. */
  readonly claims: readonly ClaimId[];
  /** Of rivals alone. */
  readonly alternatives: readonly Alternative[];
  /** Of the fall-back alone. */
  readonly assumption?: string;
}

/** A closed list of ways in force at one place. */
export interface ClosedList {
  readonly kind: "list";
  readonly hardness: Hardness;
  readonly claim: Requires;
}

/** Whether what is so hard counts for possible years (`physical`), or for usual years (`practice`), which everything counts for. */
export const countsFor = (hardness: Hardness, level: Hardness): boolean =>
  level === "practice" || hardness === "physical";
