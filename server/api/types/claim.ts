import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { sayClaim } from "../../use-cases/ask/say-claim.ts";
import { asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { datedYears } from "../dated-years.ts";

/** What a claim leads to besides its subject, its scope and its ways. */
function objectsOf(claim: Claim): readonly TermId[] {
  if (claim.relation === "typical of") return [claim.object];
  if (claim.relation === "confined to") return claim.regions;
  if (claim.relation === "spread to") return [claim.from, claim.to];
  if (claim.relation === "void when") return [claim.condition];
  return [];
}

const scopeOf = (claim: Claim) => ("scope" in claim ? claim.scope : {});

/** An edge of the graph with its citations. */
export function addClaim(b: Builder) {
  b.objectType("Way", {
    description: "One way of a `requires`: all its terms are needed.",
    fields: (t) => ({ terms: t.field({ type: ["Term"], resolve: (way) => way.terms }) }),
  });
  b.objectType("DatedYears", {
    description: "Years a date can mean, as two spans; null where nothing bounds an end.",
    fields: (t) => ({
      begin: t.intList({ nullable: { list: false, items: true }, resolve: (years) => years.begin }),
      end: t.intList({ nullable: { list: false, items: true }, resolve: (years) => years.end }),
      padBegin: t.exposeInt("padBegin"),
      padEnd: t.exposeInt("padEnd"),
      doubtful: t.exposeBoolean("doubtful"),
    }),
  });
  b.objectType("Citation", {
    fields: (t) => ({
      basis: t.expose("basis", { type: b.enums.basis }),
      source: t.field({
        type: "Source",
        nullable: true,
        resolve: (cited, _, { load }) =>
          cited.basis === "published" ? load.sources.one(cited.source, cited.at) : null,
      }),
      locator: t.string({
        nullable: true,
        resolve: (cited) => (cited.basis === "published" ? cited.locator : null),
      }),
      note: t.exposeString("note", { nullable: true }),
    }),
  });
  b.objectType("Claim", {
    description: "A statement about a term, with at least one citation.",
    interfaces: ["Node"],
    fields: (t) => {
      const scoped = (dimension: "region" | "form" | "part") =>
        t.field({
          type: "Term",
          nullable: true,
          resolve: (claim, _, { load }) => {
            const term = scopeOf(claim)[dimension];
            return term ? load.terms.one(term, claim.at) : null;
          },
        });
      return {
        id: t.exposeID("id"),
        relation: t.expose("relation", { type: b.enums.relation }),
        says: t.string({
          description: "The claim as a sentence.",
          resolve: (claim, _, { load }) => sayClaim((ids) => load.terms.many(ids, claim.at), claim),
        }),
        subject: t.field({
          description: "None for an exception: its subject is the claim in `of`.",
          type: "Term",
          nullable: true,
          resolve: (claim, _, { load }) =>
            "subject" in claim ? load.terms.one(claim.subject, claim.at) : null,
        }),
        region: scoped("region"),
        form: scoped("form"),
        part: scoped("part"),
        when: t.string({
          description: "EDTF; its role (event or period) follows from the relation.",
          nullable: true,
          resolve: (claim) => ("when" in claim ? claim.when : null),
        }),
        years: t.field({
          type: "DatedYears",
          nullable: true,
          resolve: (claim) => ("when" in claim ? datedYears(claim) : null),
        }),
        hardness: t.field({
          type: b.enums.hardness,
          nullable: true,
          resolve: (claim) => ("hardness" in claim ? claim.hardness : null),
        }),
        strength: t.expose("strength", { type: b.enums.strength }),
        status: t.expose("status", { type: b.enums.claimStatus }),
        note: t.exposeString("note", { nullable: true }),
        row: t.exposeString("row", {
          description: "Row of the fact register it was modelled from.",
          nullable: true,
        }),
        ways: t.field({
          description: "Ways of a `requires`; any one of them will do.",
          type: ["Way"],
          resolve: async (claim, _, { load }) => {
            const ways = claim.relation === "requires" ? claim.ways : [];
            return Promise.all(ways.map(async (way) => ({ terms: await load.terms.many(way, claim.at) })));
          },
        }),
        closed: t.boolean({
          description: "Of a `requires`: no other way is known. An open list bounds nothing.",
          nullable: true,
          resolve: (claim) => (claim.relation === "requires" ? claim.closed : null),
        }),
        objects: t.field({
          description:
            "Object of `typical of`; regions of `confined to`; ends of `spread to`; condition of `void when`.",
          type: ["Term"],
          resolve: (claim, _, { load }) => load.terms.many(objectsOf(claim), claim.at),
        }),
        states: t.field({
          description: "Of an `indicates`: states of the part that it speaks for.",
          type: [b.enums.partState],
          resolve: (claim) => (claim.relation === "indicates" ? claim.states : []),
        }),
        spreadYears: t.intList({
          description: "Of a `spread to`: fewest and most years that it took.",
          nullable: true,
          resolve: (claim) => (claim.relation === "spread to" ? claim.years : null),
        }),
        of: t.field({
          description: "Of a `void when`: the claim that it is an exception of.",
          type: "Claim",
          nullable: true,
          resolve: (claim, _, { load }) =>
            claim.relation === "void when" ? load.claims.one(claim.of, claim.at) : null,
        }),
        exceptions: t.field({
          description: "The `void when` claims of this claim.",
          type: ["Claim"],
          resolve: async (claim, _, { load }) => (await load.exceptions.one(claim.id, claim.at)) ?? [],
        }),
        citations: t.field({
          type: ["Citation"],
          resolve: (claim) => claim.citations.map((citation) => asOf(citation, claim.at)),
        }),
      };
    },
  });
}
