import { canonicalJson } from "../../../domain/canonical-json.ts";
import type { Citation, Claim } from "../../../domain/claim.ts";
import { roleOfRelation } from "../../../domain/role-of-relation.ts";
import { STATE_IN_WORDS, whenInWords } from "../claim-in-words.ts";
import { listInWords } from "../list-in-words.ts";
import { each, type FacetTable, type NamesThen, one } from "./facets.ts";

/** What a claim says, field by field. */
export const CLAIM_FACETS: FacetTable<Claim> = {
  status: (status) => one("standing", status),
  relation: (relation) => one("relation", relation),
  subject: (subject, { labelOf }) => one("what it is about", subject, labelOf(subject)),
  when: (when, _, claim) => {
    const words = whenInWords(when, roleOfRelation(claim.relation));
    return one("date", when, words === when ? words : `${words} (written ${when})`);
  },
  years: ([least, most]) =>
    one("years it took", `${least} ${most}`, least === most ? `${least}` : `${least} to ${most}`),
  from: (from, { labelOf }) => one("where it set out", from, labelOf(from)),
  to: (to, { labelOf }) => one("where it came", to, labelOf(to)),
  object: (object, { labelOf }) => one("what it is usual for", object, labelOf(object)),
  regions: (regions, { labelOf }) =>
    each("where alone it was made", regions, (region) => ({ key: region, text: labelOf(region) })),
  ways: (ways, { labelOf }) =>
    each("way", ways, (way) => ({
      key: way.join(" "),
      text: listInWords(way.map(labelOf), "together with"),
    })),
  closed: (closed) =>
    one("list of ways", String(closed), closed ? "no other way is known" : "there are other ways"),
  states: (states) => each("what it speaks for", states, (key) => ({ key, text: STATE_IN_WORDS[key] })),
  cause: (cause) => one("cause it shares with other signs", cause),
  of: (of) => one("claim it sets aside", of),
  condition: (condition, { labelOf }) => one("what sets it aside", condition, labelOf(condition)),
  anywhere: (anywhere) =>
    one("where that is seen", String(anywhere), anywhere ? "anywhere on the piece" : "on the same part"),
  absenceOnly: (only) =>
    one("what it excuses", String(only), only ? "only that the sign is absent" : "the sign and its absence"),
  scope: ({ region, form, part }, { labelOf }) => [
    ...(region === undefined ? [] : one("region", region, labelOf(region))),
    ...(form === undefined ? [] : one("form", form, labelOf(form))),
    ...(part === undefined ? [] : one("kind of part", part, labelOf(part))),
  ],
  hardness: (hardness) => one("hardness", hardness),
  strength: (strength) => one("strength", strength),
  citations: (citations, names) =>
    each("citation", citations, (citation) => ({
      key: canonicalJson(citation),
      text: citationInWords(citation, names),
      pair: citation.basis === "published" ? citation.source : citation.basis,
    })),
  note: (note) => one("note", note),
  row: (row) => one("row of the register", row),
};

function citationInWords(citation: Citation, { citeOf }: NamesThen): string {
  const note = citation.note === undefined ? "" : `; ${citation.note}`;
  if (citation.basis !== "published") return `${citation.basis}${note}`;
  return `${citeOf(citation.source)}, ${citation.locator} (${citation.basis})${note}`;
}
