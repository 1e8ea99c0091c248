import { canonicalJson } from "../../../domain/canonical-json.ts";
import type { Term } from "../../../domain/term.ts";
import { each, type FacetTable, one } from "./facets.ts";

/** What a term says, field by field. */
export const TERM_FACETS: FacetTable<Term> = {
  label: (label) => one("name", label),
  kind: (kind) => one("kind", kind),
  otherLabels: (labels) => each("other name", labels, (key) => ({ key })),
  withArticle: (has) => one("in a sentence", String(has), has ? "with the article" : "without an article"),
  note: (note) => one("note", note),
  looking: ({ how, move, aids = [], mistakenFor = [], innocent, basis }, { labelOf }) => [
    ...one("how to look", how),
    ...one("what is moved to see it", move),
    ...each("what is held in the hand", aids, (key) => ({ key })),
    ...each("what it is mistaken for", mistakenFor, (alike) => ({
      key: canonicalJson(alike),
      text: `${alike.what}${alike.term === undefined ? "" : ` (${labelOf(alike.term)})`}: ${alike.apart}`,
      pair: alike.what,
    })),
    ...(innocent === undefined ? [] : one("innocent cause", innocent)),
    ...one("basis of the notes on looking", basis),
  ],
  merged: () => one("one with", "its broader term, which stands for both"),
  broader: (broader, { labelOf }) => one("broader term", broader, labelOf(broader)),
  parts: (parts, { labelOf }, { kind }) =>
    each(kind === "form" ? "part it is expected to have" : "part it is looked for on", parts, (part) => ({
      key: part,
      text: labelOf(part),
    })),
  aat: (aat) =>
    one(
      "match in the Art & Architecture Thesaurus",
      canonicalJson(aat),
      `${aat.label}, ${aat.id}, ${aat.checked ? `checked by ${aat.checked.by} on ${aat.checked.on}` : "unchecked"}`,
    ),
};
