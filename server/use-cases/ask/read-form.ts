import { ASSUMED } from "../../domain/assumptions.ts";
import { compareIds } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import { expectedParts, partsFor, partsToLookAt } from "../../domain/parts-of-form.ts";
import { ancestors, broaderTerms } from "../../domain/region.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { openTurns } from "../../ports/open-turns.ts";
import type { Store } from "../../ports/store.ts";
import { readFeaturesOn } from "./read-features-on.ts";
import { readParts } from "./read-parts.ts";

/** What bears on looking at a piece of one form. */
export interface FormRead {
  /** The form and what it lies within, every kind of part, the features looked for on its parts, and what claims name. By id. */
  readonly terms: readonly Term[];
  readonly around: Neighbourhood;
  /** More features are looked for on its parts, too many to read. */
  readonly isCut: boolean;
}

/** Features that are read for one form. */
const MOST_FEATURES = 2_000;

/** Reads what is looked for on a form's parts and what the graph knows of it, at one region or at any, with a `turn` for others in between. */
export async function readForm(
  store: Store,
  { form, region }: { readonly form: TermId; readonly region?: TermId },
  at: RevisionNumber,
  turn = openTurns(),
): Promise<FormRead> {
  const parts = await readParts(store, at);
  // The form with what it lies within comes in one.
  const ofForm = await store.neighbourhood({ seeds: [form], regions: [], maxDepth: 0, at });
  const line = ancestors(form, broaderTerms(ofForm.terms));
  const forms = ofForm.terms.filter(({ id }) => line.includes(id));
  const broader = broaderTerms(parts);
  const kinds = new Set(parts.map(({ id }) => id));
  const expected = expectedParts(form, new Map(forms.map((term) => [term.id, term])));
  const looked = partsToLookAt(expected, (part) => kinds.has(part));
  const tellsOf = new Map([...kinds].map((kind) => [kind, partsFor(kind, looked, broader)]));
  const lists = looked.map((part) => [...kinds].filter((kind) => tellsOf.get(kind)?.includes(part)));
  const telling = new Set(lists.flat());
  const { features, isCut } = await readFeaturesOn(store, lists, MOST_FEATURES, at, turn);
  await turn();
  const regions = region === undefined ? [] : [region];
  const around = await store.neighbourhood({
    seeds: [...forms, ...features].map(({ id }) => id).concat(looked, [...telling], regions),
    ...{ regions, maxDepth: ASSUMED.maxDepth, at },
  });
  const read = new Map([...forms, ...parts, ...features].map((term) => [term.id, term]));
  // What was left out is not looked at because some claim names it.
  const isLeftOut = ({ kind, parts: on = [] }: Term): boolean =>
    kind === "feature" && on.some((part) => telling.has(part));
  for (const term of around.terms) if (!read.has(term.id) && !isLeftOut(term)) read.set(term.id, term);
  return { terms: [...read.values()].sort(compareIds), around, isCut };
}
