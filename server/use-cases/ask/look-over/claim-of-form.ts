import type { Change, Edit } from "../../../domain/change.ts";
import type { Claim } from "../../../domain/claim.ts";
import { isSame } from "../../../domain/is-same.ts";
import { type Problem, problem } from "../../../domain/problem.ts";
import { citationField, MOST_CITATIONS, placedField } from "../../../domain/proposals/form/claim-fields.ts";
import { claimOfFields } from "../../../domain/proposals/form/claim-of-fields.ts";
import { type FormFields, saidIn } from "../../../domain/proposals/form/form-fields.ts";
import { FIELDS_OF_SOURCE, sourceOfFields } from "../../../domain/proposals/form/source-of-fields.ts";
import type { Source } from "../../../domain/source.ts";
import type { Store } from "../../../ports/store.ts";
import { freeSourceId } from "./free-id.ts";

export const nothingDiffers = problem(
  "EMPTY_LIST",
  "Nothing differs yet from what stands; change what is wrong.",
  [],
);

/** A source of a citation that is described in the form, at the place of the citation. */
interface Described {
  readonly nth: number;
  readonly fields: FormFields;
}

/**
 * The claim of a form, new or in the place of one that stands, with a new source for each citation that describes one. `sources` are
 * new ones of the same change, by what they are called: one that two citations describe in the same words is one.
 */
export async function claimOfForm(
  store: Store,
  fields: FormFields,
  claimId: string,
  sources: Map<string, Source>,
  before?: Claim,
): Promise<Change | readonly Problem[]> {
  const own = withoutSources(fields);
  const made: Edit[] = [];
  const known = new Map(sources);
  const wrong: Problem[] = [];
  const named: Record<string, string> = {};
  for (const described of describedIn(fields)) {
    const called = ["title", "year", "author"].map((name) => saidIn(described.fields, name)).join("|");
    const standing = known.get(called);
    const taken = new Set([...known.values()].map((source): string => source.id));
    const source = standing ?? (await newSource(store, described.fields, taken));
    if ("id" in source) {
      named[citationField("source", described.nth)] = source.id;
      if (standing === undefined) made.push({ kind: "source", after: source });
      known.set(called, source);
    } else {
      named[citationField("source", described.nth)] = "source.unnamed";
      wrong.push(
        ...source.map((one) => ({ ...one, path: one.path.map((at) => inPlace(at, described.nth)) })),
      );
    }
  }
  const claim = claimOfFields({ ...own, ...named }, claimId);
  if (!("id" in claim)) return [...wrong, ...claim];
  if (wrong.length > 0) return wrong;
  for (const [called, source] of known) sources.set(called, source);
  if (before === undefined) return [...made, { kind: "claim", after: claim }];
  return isSame(claim, before) ? [nothingDiffers] : [...made, { kind: "claim", before, after: claim }];
}

const inPlace = (at: string | number, nth: number) => (typeof at === "string" ? placedField(at, nth) : at);

/** The citations that are printed somewhere that is not chosen but described. */
function describedIn(fields: FormFields): readonly Described[] {
  return Array.from({ length: MOST_CITATIONS }, (_, nth) => nth).flatMap((nth) => {
    if (saidIn(fields, citationField("basis", nth)) !== "published") return [];
    if (saidIn(fields, citationField("source", nth)) !== undefined) return [];
    const said = FIELDS_OF_SOURCE.flatMap((name): readonly (readonly [string, string])[] => {
      const text = saidIn(fields, placedField(name, nth));
      return text === undefined ? [] : [[name, text]];
    });
    return said.length === 0 ? [] : [{ nth, fields: Object.fromEntries(said) }];
  });
}

function withoutSources(fields: FormFields): FormFields {
  const names = new Set(
    Array.from({ length: MOST_CITATIONS }, (_, nth) =>
      FIELDS_OF_SOURCE.map((name) => placedField(name, nth)),
    ).flat(),
  );
  return Object.fromEntries(Object.entries(fields).filter(([name]) => !names.has(name)));
}

/** A new source of a form, under an id that is free. */
export async function newSource(
  store: Store,
  fields: FormFields,
  taken: ReadonlySet<string>,
): Promise<Source | readonly Problem[]> {
  const draft = sourceOfFields(fields, "source.unnamed");
  if (!("id" in draft)) return draft;
  return sourceOfFields(fields, await freeSourceId(store, draft.csl, taken));
}
