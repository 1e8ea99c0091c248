import { sayDisagreement } from "../../use-cases/ask/say-disagreement.ts";
import type { Builder } from "../builder.ts";

/** Where claims cannot all be right, or all lean on one source: the rules, and what they find. */
export function addDisagreement(b: Builder) {
  b.objectType("DisagreementRule", {
    description: "One kind of disagreement that is looked for.",
    fields: (t) => ({
      id: t.exposeID("id"),
      title: t.exposeString("title"),
      means: t.exposeString("means", { description: "What it means that something was found." }),
      remedy: t.exposeString("remedy", { description: "What to do about it." }),
      count: t.exposeInt("count", { description: "How much it finds on the newest revision." }),
      claimCount: t.exposeInt("claimCount", {
        description: "Accepted claims among which it was looked for.",
      }),
      revision: t.exposeInt("revision", { description: "Number of the revision it was looked for on." }),
    }),
  });
  b.objectType("Disagreement", {
    description: "What a rule found.",
    fields: (t) => ({
      id: t.exposeID("id"),
      rule: t.id({ description: "Id of the rule.", resolve: (found) => found.rule }),
      says: t.string({
        description: "The finding as a sentence.",
        resolve: (found, _, { load }) => sayDisagreement((ids) => load.terms.many(ids, found.at), found),
      }),
      term: t.field({
        description: "What the claims are about: their subject, or a region.",
        type: "Term",
        nullable: true,
        resolve: (found, _, { load }) => load.terms.one(found.term, found.at),
      }),
      region: t.field({
        type: "Term",
        nullable: true,
        resolve: (found, _, { load }) => (found.region ? load.terms.one(found.region, found.at) : null),
      }),
      source: t.field({
        description: "The one source of a region.",
        type: "Source",
        nullable: true,
        resolve: (found, _, { load }) => (found.source ? load.sources.one(found.source, found.at) : null),
      }),
      years: t.int({
        description:
          "How far apart the claims are at the least; null where an end is open or no years are meant.",
        nullable: true,
        resolve: (found) => found.years,
      }),
      claims: t.field({
        description: "The first of the claims, in the order in which the argument runs.",
        type: ["Claim"],
        args: { first: t.arg.int({ required: true, defaultValue: 8, description: "1 to 200." }) },
        resolve: (found, { first }, { load }) => load.claims.many(found.claims.slice(0, first), found.at),
      }),
      claimCount: t.int({ resolve: (found) => found.claims.length }),
    }),
  });
}
