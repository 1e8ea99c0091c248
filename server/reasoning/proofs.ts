import { BUDGET } from "../domain/assumptions.ts";
import type { Hardness } from "../domain/claim.ts";
import { isAllYears, isWithin, join, NO_YEARS, type Years } from "../domain/years.ts";
import { compareHoldings, type Holding, heldClaims, holdingBoth, isHeldIn, NOTHING_HELD } from "./atoms.ts";
import type { Algebra } from "./fold.ts";

/** An irredundant proof that a term is of certain years: leave out anything it holds, and it bounds less. */
export interface Proof {
  /** Outer years. */
  readonly years: Years;
  readonly held: Holding;
  /** physical if everything it rests on is. */
  readonly hardness: Hardness;
}

/** All proofs of a term at one place; together they give its years, unless some were `cut` at the budget. */
export interface Proofs {
  readonly proofs: readonly Proof[];
  readonly cut: boolean;
}

const NONE: Proofs = { proofs: [], cut: false };
const soft = (...all: readonly Hardness[]): Hardness => (all.includes("practice") ? "practice" : "physical");

/**
 * Proofs as the value of a fold. A bound is a proof; all of several terms gives the proofs of each; a closed list gives, for each
 * choice of one proof of every way, the union of their years, and no proof if some way has none.
 */
export const proofsAlgebra: Algebra<Proofs> = {
  all: NONE,
  bound: ({ outer, held, hardness }) =>
    isAllYears(outer) ? NONE : { proofs: [{ years: outer, held, hardness }], cut: false },
  allOf: (parts) =>
    parts.length === 1
      ? (parts[0] as Proofs)
      : kept(
          parts.flatMap(({ proofs }) => proofs),
          parts.some(({ cut }) => cut),
        ),
  anyWay: ({ claim, hardness }, ways) =>
    eitherOf(ways, { years: NO_YEARS, held: [heldClaims([claim.id])], hardness }),
};

/** Proofs of what holds whichever of several cases is the true one: ways of a list, or places. */
export function eitherOf(
  cases: readonly Proofs[],
  start: Proof = { years: NO_YEARS, held: NOTHING_HELD, hardness: "physical" },
): Proofs {
  const [only] = cases;
  if (cases.length === 1 && only !== undefined && start.held.length === 0) return only;
  return cases.reduce(withCase, { proofs: [start], cut: false });
}

/** Proofs of what holds whichever of the cases so far is the true one, or one more. */
export const withCase = (found: Proofs, { proofs, cut }: Proofs): Proofs =>
  kept(
    found.proofs.flatMap((one) => proofs.map((other) => either(one, other))),
    found.cut || cut,
  );

const either = (a: Proof, b: Proof): Proof => ({
  years: join(a.years, b.years),
  held: holdingBoth(a.held, b.held),
  hardness: soft(a.hardness, b.hardness),
});

/** Whether one proof says all that another does, on no more, and no softer: what is usual never stands for what is possible. */
const makesRedundant = (one: Proof, other: Proof): boolean =>
  (one.hardness === "physical" || other.hardness === "practice") &&
  isHeldIn(one.held, other.held) &&
  isWithin(one.years, other.years);

/** Drops what bounds nothing and what another proof makes redundant, and keeps to the budget: the best supported first. */
function kept(proofs: readonly Proof[], cut: boolean): Proofs {
  const bounding = proofs.filter(({ years }) => !isAllYears(years));
  if (bounding.length < 2) return { proofs: bounding, cut };
  const best: Proof[] = [];
  const sorted = [...bounding].sort(
    (a, b) => a.held.length - b.held.length || compareHoldings(a.held, b.held),
  );
  for (const proof of sorted) {
    if (best.length > BUDGET.proofs) break;
    if (!best.some((other) => makesRedundant(other, proof))) best.push(proof);
  }
  if (best.length <= BUDGET.proofs) return { proofs: best, cut };
  return { proofs: best.slice(0, BUDGET.proofs), cut: true };
}
