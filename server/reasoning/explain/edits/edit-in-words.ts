import type { Edit } from "../../../domain/change.ts";
import { citeSource } from "../../../domain/cite-source.ts";
import type { EditInWords, SidesInWords } from "../../../domain/edit-words.ts";
import { claimInWords } from "../claim-in-words.ts";
import { CLAIM_FACETS } from "./claim-facets.ts";
import { compareFacets, differencesOf, facetsOf, type NamesThen, type PlacedFacet } from "./facets.ts";
import { SOURCE_FACETS } from "./source-facets.ts";
import { TERM_FACETS } from "./term-facets.ts";

/** Names on both sides of an edit: what a thing was called is what it was called then. */
export interface NamesOfEdit {
  readonly before: NamesThen;
  readonly after: NamesThen;
}

/** What an edit did, field by field. Only what the thing itself says counts, not what the things it names are called. */
export function editInWords(edit: Edit, names: NamesOfEdit): EditInWords {
  const [before, after] = [sideOf(edit, "before", names.before), sideOf(edit, "after", names.after)];
  const says = (after ?? before)?.says ?? "";
  if (before === undefined) return { does: "added", says, differences: [] };
  if (after === undefined) return { does: "withdrawn", says, differences: [] };
  return { does: "changed", says, differences: differencesOf(before.facets, after.facets) };
}

/** All that both sides of an edit say, one beside the other. */
export function sidesInWords(edit: Edit, names: NamesOfEdit): SidesInWords {
  const [before, after] = [sideOf(edit, "before", names.before), sideOf(edit, "after", names.after)];
  return {
    ...(before === undefined ? {} : { before: before.says }),
    ...(after === undefined ? {} : { after: after.says }),
    rows: compareFacets(before?.facets ?? [], after?.facets ?? []),
  };
}

interface Side {
  readonly says: string;
  readonly facets: readonly PlacedFacet[];
}

function sideOf(edit: Edit, side: "before" | "after", names: NamesThen): Side | undefined {
  if (edit.kind === "claim") {
    const claim = edit[side];
    return (
      claim && { says: claimInWords(claim, names.labelOf), facets: facetsOf(claim, CLAIM_FACETS, names) }
    );
  }
  if (edit.kind === "term") {
    const term = edit[side];
    return term && { says: term.label, facets: facetsOf(term, TERM_FACETS, names) };
  }
  const source = edit[side];
  return source && { says: citeSource(source), facets: facetsOf(source, SOURCE_FACETS, names) };
}
