import type { Piece } from "#server/domain/examination.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import { foundWords } from "#web/shared/words/seen-words.ts";

/** One thing in which two records of a piece differ, in words; `null` where one side does not have it. */
export interface Difference {
  readonly of: string;
  /** What stood before both, where that is known. */
  readonly before?: string | null;
  readonly mine: string | null;
  readonly theirs: string | null;
}

const ASSUMED: Readonly<Record<Exclude<keyof ChosenOdds, "parts">, string>> = {
  datePrior: "years beforehand:",
  wrongClaims: "claims wrong, times as often:",
  leak: "outside all known years:",
  madeToDeceive: "prior of “made later to look old”:",
};

type LabelOf = (term: string) => string;

/** Every statement of a piece by a key that both sides share, with the words to show for it. */
function statements(piece: Piece, labelOf: LabelOf): Map<string, { of: string; says: string }> {
  const said = new Map<string, { of: string; says: string }>();
  const partLabel = (part: string) => piece.parts.find((each) => each.id === part)?.label ?? part;
  said.set("title", { of: "Title", says: piece.title });
  if (piece.note !== undefined) said.set("note", { of: "Note", says: piece.note });
  said.set("examined", { of: "Year of the examination", says: String(piece.examined) });
  said.set("date", { of: "Claimed date", says: piece.attribution.date });
  for (const key of ["region", "form", "style", "maker"] as const) {
    const term = piece.attribution[key];
    if (term !== undefined) said.set(key, { of: `Claimed ${key}`, says: labelOf(term) });
  }
  for (const part of piece.parts) {
    const kind = part.kind === undefined ? "" : ` (${labelOf(part.kind)})`;
    const within = part.within === undefined ? "" : `, within ${partLabel(part.within)}`;
    said.set(`part ${part.id}`, { of: `Part ${part.label}`, says: `${part.label}${kind}${within}` });
  }
  for (const seen of piece.observations) {
    const note = seen.note === undefined ? "" : `; ${seen.note}`;
    said.set(`observation ${seen.id}`, {
      of: `${labelOf(seen.feature)} on ${partLabel(seen.part)}`,
      says: `${foundWords(seen.seen)}, ${seen.sureness}${note}`,
    });
  }
  for (const group of piece.together)
    said.set(`together ${[...group].sort().join()}`, {
      of: "Of one origin",
      says: group.map(partLabel).join(", "),
    });
  for (const pair of piece.separate)
    said.set(`separate ${[...pair].sort().join()}`, {
      of: "Not of one origin",
      says: pair.map(partLabel).join(", "),
    });
  const { odds } = piece;
  if (odds !== undefined) {
    const { parts = [], ...rest } = odds;
    for (const { part, original, later, reused } of parts)
      said.set(`odds ${part}`, {
        of: `Assumed of ${partLabel(part)}`,
        says: `original ${original}, later ${later}, from an earlier piece ${reused}`,
      });
    const says = Object.entries(rest).map(([key, value]) => `${ASSUMED[key as keyof typeof rest]} ${value}`);
    if (says.length > 0) said.set("odds", { of: "Assumed of the whole", says: says.join("; ") });
  }
  return said;
}

/** What two records of one piece say differently, in the order of the first; then what only the second has. */
export function differences(
  mine: Piece,
  theirs: Piece,
  labelOf: LabelOf,
  before?: Piece,
): readonly Difference[] {
  const ours = statements(mine, labelOf);
  const old = before && statements(before, labelOf);
  const others = statements(theirs, labelOf);
  return [...new Set([...ours.keys(), ...others.keys()])].flatMap((key) => {
    const a = ours.get(key);
    const b = others.get(key);
    if (a?.says === b?.says) return [];
    const stood = old === undefined ? {} : { before: old.get(key)?.says ?? null };
    return [{ of: (a ?? b)?.of ?? key, ...stood, mine: a?.says ?? null, theirs: b?.says ?? null }];
  });
}
