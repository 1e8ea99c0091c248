import { compareText } from "../domain/compare.ts";
import type { ClaimId } from "../domain/ids.ts";
import type { Atom, Support } from "../domain/report.ts";

/** An atom with the text that names it. Keys sort by kind: attribution, original, observation, separate, assumption, claims. */
export interface Held {
  readonly key: string;
  readonly atom: Atom;
}
/** A set of atoms: sorted by key, each once. */
export type Holding = readonly Held[];

export const NOTHING_HELD: Holding = [];

/** Names an atom. */
export function held(atom: Atom): Held {
  return { key: keyOf(atom), atom };
}

function keyOf(atom: Atom): string {
  switch (atom.kind) {
    case "attr":
      return `1 attr ${atom.of}`;
    case "original":
      return `2 original ${atom.part}`;
    case "observation":
      return `3 observation ${atom.observation}`;
    case "separate":
      return `4 separate ${atom.parts.join(" ")}`;
    case "assumption":
      return `5 assumption ${atom.assumption}`;
    case "claim":
      return `6 claim ${atom.claim}`;
    case "rivals":
      return `7 rivals ${atom.claims.join(" ")}`;
  }
}

/** One claim, or a group of rivals, as one atom. */
export function heldClaims(claims: readonly ClaimId[]): Held {
  const [only, ...others] = claims;
  if (only !== undefined && others.length === 0) return held({ kind: "claim", claim: only });
  return held({ kind: "rivals", claims: [...claims].sort() });
}

/** Atoms in either set. */
export function holdingBoth(a: Holding, b: Holding): Holding {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both: Held[] = [];
  for (let i = 0, j = 0; i < a.length || j < b.length; ) {
    const [x, y] = [a[i], b[j]];
    if (x !== undefined && (y === undefined || x.key <= y.key)) {
      both.push(x);
      i++;
      if (y !== undefined && x.key === y.key) j++;
    } else if (y !== undefined) {
      both.push(y);
      j++;
    }
  }
  return both;
}

/** Any atoms as a set. */
export const holdingOf = (...atoms: readonly Held[]): Holding =>
  atoms.reduce<Holding>((all, atom) => holdingBoth(all, [atom]), NOTHING_HELD);

/** Whether all of `a` is in `b`. */
export function isHeldIn(a: Holding, b: Holding): boolean {
  if (a.length > b.length) return false;
  let j = 0;
  for (const { key } of a) {
    while (j < b.length && (b[j] as Held).key < key) j++;
    if (b[j]?.key !== key) return false;
    j++;
  }
  return true;
}

/** The claims a set of atoms rests on, sorted. */
export const claimsHeld = (holding: Holding): readonly ClaimId[] =>
  [
    ...new Set(
      holding.flatMap(({ atom }) =>
        atom.kind === "claim" ? [atom.claim] : atom.kind === "rivals" ? atom.claims : [],
      ),
    ),
  ].sort();

/** The claims and assumptions of a set of atoms. */
export const supportOf = (holding: Holding): Support => ({
  claims: claimsHeld(holding),
  assumptions: holding.flatMap(({ atom }) => (atom.kind === "assumption" ? [atom.assumption] : [])),
});

/** What sets are compared by before their keys; worked out once a set, as the same ones are compared again and again. */
interface Measure {
  readonly assumptions: number;
  readonly claims: number;
}
const measures = new WeakMap<Holding, Measure>();

function measureOf(holding: Holding): Measure {
  const known = measures.get(holding);
  if (known !== undefined) return known;
  let [assumptions, claims, rivals] = [0, 0, 0];
  for (const { atom } of holding)
    if (atom.kind === "assumption") assumptions++;
    else if (atom.kind === "claim") claims++;
    else if (atom.kind === "rivals") rivals++;
  // Only a group of rivals can name a claim that another atom names too.
  const measure = { assumptions, claims: rivals === 0 ? claims : claimsHeld(holding).length };
  measures.set(holding, measure);
  return measure;
}

function compareKeys(a: Holding, b: Holding): number {
  const most = Math.min(a.length, b.length);
  for (let i = 0; i < most; i++) {
    const [x, y] = [(a[i] as Held).key, (b[i] as Held).key];
    if (x !== y) return compareText(x, y);
  }
  return a.length - b.length;
}

/** Which of two sets is the better support: fewer assumptions, fewer claims, then ids (E19). */
export function compareHoldings(a: Holding, b: Holding): number {
  const [x, y] = [measureOf(a), measureOf(b)];
  return x.assumptions - y.assumptions || x.claims - y.claims || compareKeys(a, b);
}
