import type { Claim } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import { GRID, type SlowContext, slowYears } from "./slow-years.ts";

/**
 * Minimal rule-outs by trying every subset of atoms, smallest first. A set of atoms holds together if some year does for all
 * (Reiter 1987; the consistency test of a piece with one date for its original parts). For small pieces without scopes,
 * rivals and fall-back only: the number of subsets doubles with every atom.
 */
export type SlowAtom = `attr:date` | `original:${string}` | `observation:${string}` | `claim:${string}`;

interface Question {
  readonly piece: Piece;
  readonly claims: readonly Claim[];
  readonly terms: ReadonlyMap<TermId, Term>;
  readonly hardness: SlowContext["hardness"];
  readonly claimed: readonly [number, number];
}

const every = (): boolean[] => GRID.map(() => true);
const meet = (a: readonly boolean[], b: readonly boolean[]): boolean[] =>
  a.map((can, i) => can && b[i] === true);

function windowsOf({
  claims,
  terms,
  hardness,
}: Question): (held: ReadonlySet<string>) => Map<TermId, boolean[]> {
  const cache = new Map<string, Map<TermId, boolean[]>>();
  return (held) => {
    const kept = claims.filter((claim) => held.has(`claim:${claim.id}`));
    const key = kept.map((claim) => claim.id).join(" ");
    const found =
      cache.get(key) ?? slowYears({ claims: kept, terms, reading: "outer", hardness, withFallback: false });
    cache.set(key, found);
    return found;
  };
}

function holdsTogether(
  held: ReadonlySet<string>,
  question: Question,
  windows: Map<TermId, boolean[]>,
): boolean {
  const [first, last] = question.claimed;
  let whole = held.has("attr:date") ? GRID.map((year) => first <= year && year <= last) : every();
  for (const part of question.piece.parts) {
    const seen = question.piece.observations.filter(
      (o) => o.part === part.id && held.has(`observation:${o.id}`),
    );
    const made = seen.reduce((years, o) => meet(years, windows.get(o.feature) ?? every()), every());
    if (!made.some(Boolean)) return false;
    if (held.has(`original:${part.id}`)) whole = meet(whole, made);
  }
  return whole.some(Boolean);
}

/** All minimal sets of atoms that cannot hold together, each sorted, as sorted strings joined by spaces. */
export function slowRuleOuts(question: Question): string[] {
  const { piece, claims } = question;
  const atoms: SlowAtom[] = [
    "attr:date",
    ...piece.parts.map((part) => `original:${part.id}` as const),
    ...piece.observations.map((observation) => `observation:${observation.id}` as const),
    ...claims.map((claim) => `claim:${claim.id}` as const),
  ];
  const windows = windowsOf(question);
  const found: number[] = [];
  const bits = (set: number): number => set.toString(2).replaceAll("0", "").length;
  const subsets = Array.from({ length: 2 ** atoms.length }, (_, set) => set).sort(
    (a, b) => bits(a) - bits(b),
  );
  for (const set of subsets) {
    if (found.some((smaller) => (set & smaller) === smaller)) continue;
    const held = new Set<string>(atoms.filter((_, i) => set & (1 << i)));
    if (!holdsTogether(held, question, windows(held))) found.push(set);
  }
  return found
    .map((set) =>
      atoms
        .filter((_, i) => set & (1 << i))
        .sort()
        .join(" "),
    )
    .sort();
}
