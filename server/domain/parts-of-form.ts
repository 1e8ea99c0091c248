import type { TermId } from "./ids.ts";
import { ancestors, type Broader } from "./region.ts";
import type { Term } from "./term.ts";

/** What every piece has, whatever its form; no form lists them. */
const ON_EVERY_PIECE = ["part.whole", "part.joint", "part.fastener", "part.label"] as TermId[];

/** Kinds of part that a form may name as a whole: then what is looked for on their parts is looked for on them. */
const WHOLES = ["part.drawer", "part.door", "part.foot", "part.joint", "part.upholstery"];

/** The kinds of part that a form is expected to have: its own list, else that of the nearest broader form with one. */
export function expectedParts(form: TermId, forms: ReadonlyMap<TermId, Term>): readonly TermId[] {
  const broader = new Map([...forms].flatMap(([id, term]) => (term.broader ? [[id, term.broader]] : [])));
  const listed = ancestors(form, broader).map((id) => forms.get(id)?.parts ?? []);
  return listed.find((parts) => parts.length > 0) ?? [];
}

/** Whether every piece has such a part, whatever its form. */
export const isOnEveryPiece = (part: TermId): boolean => ON_EVERY_PIECE.includes(part);

/** The expected parts and, of those that there are, the kinds that every piece has. */
export const partsToLookAt = (
  expected: readonly TermId[],
  exists: (part: TermId) => boolean,
): readonly TermId[] => [...new Set([...expected, ...ON_EVERY_PIECE.filter(exists)])];

/**
 * On which of a form's parts something is looked for that is looked for on `kind`: on that kind; where the form has not
 * got it, on the whole that the form names instead, or on the form's parts that are of that kind. None, if the form has
 * nothing of the sort.
 */
export function partsFor(kind: TermId, parts: readonly TermId[], broader: Broader): readonly TermId[] {
  if (parts.includes(kind)) return [kind];
  const whole = ancestors(kind, broader).find((above) => parts.includes(above));
  const isNamedAsWhole =
    whole !== undefined &&
    WHOLES.includes(whole) &&
    !parts.some((part) => part !== whole && ancestors(part, broader).includes(whole));
  if (isNamedAsWhole) return [whole];
  return parts.filter((part) => ancestors(part, broader).includes(kind));
}
