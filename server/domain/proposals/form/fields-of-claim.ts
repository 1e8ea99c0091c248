import type { Claim } from "../../claim.ts";
import { citationField } from "./claim-fields.ts";
import { asList, type FormFields, stated } from "./form-fields.ts";

/** A claim as it stands in a form: `claimOfFields` makes the same of it again. */
export function fieldsOfClaim(claim: Claim): FormFields {
  return {
    ...{ relation: claim.relation, strength: claim.strength, status: claim.status },
    ...stated("note", claim.note),
    ...stated("row", claim.row),
    ...("subject" in claim ? { subject: claim.subject } : {}),
    ...("scope" in claim ? claim.scope : {}),
    ...("hardness" in claim ? { hardness: claim.hardness } : {}),
    ...("when" in claim ? stated("when", claim.when) : {}),
    ...ofRelation(claim),
    ...Object.assign(
      {},
      ...claim.citations.map((citation, nth) => ({
        [citationField("basis", nth)]: citation.basis,
        ...(citation.basis === "published"
          ? {
              [citationField("source", nth)]: citation.source,
              [citationField("locator", nth)]: citation.locator,
            }
          : {}),
        ...stated(citationField("citation-note", nth), citation.note),
      })),
    ),
  };
}

function ofRelation(claim: Claim): FormFields {
  switch (claim.relation) {
    case "requires":
      return { ways: asList(claim.ways.map((way) => way.join(" + "))), closed: claim.closed ? "yes" : "no" };
    case "typical of":
      return { object: claim.object };
    case "confined to":
      return { regions: asList(claim.regions) };
    case "spread to":
      return { from: claim.from, to: claim.to, years: claim.years.join("-") };
    case "indicates":
      return { states: asList(claim.states), ...stated("cause", claim.cause) };
    case "void when":
      return {
        ...{ of: claim.of, condition: claim.condition, anywhere: claim.anywhere ? "yes" : "no" },
        ...(claim.absenceOnly === undefined ? {} : { "absence-only": claim.absenceOnly ? "yes" : "no" }),
      };
    default:
      return {};
  }
}
