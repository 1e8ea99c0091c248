import type { LookAlike, Looking } from "../../domain/looking.ts";
import { ancestorsOf } from "../../use-cases/ask/ancestors-of.ts";
import { type FeaturesOnPart, featuresOnPart } from "../../use-cases/ask/features-on-part.ts";
import { listClaims } from "../../use-cases/ask/list-claims.ts";
import { listTerms } from "../../use-cases/ask/list-terms.ts";
import { type AsOf, asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { FEATURES_WEIGHT } from "../limits/operation-cost.ts";
import { readPageOn } from "../read-page.ts";

/** Rows that one term is counted to have; the longest table of the seed has about as many. */
const USUAL_ROWS = 60;

/** A node of the graph with what leads to and from it. */
export function addTerm(b: Builder) {
  b.objectType("AatMatch", {
    description: "A match in the Getty Art & Architecture Thesaurus.",
    fields: (t) => ({
      id: t.exposeString("id"),
      label: t.exposeString("label"),
      checked: t.boolean({
        description: "A person has looked it up.",
        resolve: (match) => match.checked !== false,
      }),
    }),
  });
  const lookAlike = b.objectRef<AsOf<LookAlike>>("LookAlike").implement({
    description: "Something that looks like a feature and is not.",
    fields: (t) => ({
      what: t.exposeString("what"),
      term: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ term, at }, _, { load }) => (term ? load.terms.one(term, at) : null),
      }),
      apart: t.exposeString("apart", { description: "How the two are told apart." }),
    }),
  });
  const looking = b.objectRef<AsOf<Looking>>("Looking").implement({
    description: "How a feature is looked for, what it is mistaken for, what brings it about in all honesty.",
    fields: (t) => ({
      how: t.exposeString("how"),
      move: t.expose("move", { type: b.enums.move }),
      aids: t.field({ type: [b.enums.aid], resolve: ({ aids }) => aids ?? [] }),
      mistakenFor: t.field({
        type: [lookAlike],
        resolve: ({ mistakenFor = [], at }) => mistakenFor.map((each) => asOf(each, at)),
      }),
      innocent: t.exposeString("innocent", { nullable: true }),
      basis: t.expose("basis", { type: b.enums.basis }),
    }),
  });
  const onPart = b.objectRef<AsOf<FeaturesOnPart>>("FeaturesOnPart").implement({
    fields: (t) => ({
      part: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ part, at }, _, { load }) => load.terms.one(part, at),
      }),
      features: t.field({
        extensions: { entries: 40 },
        type: ["Term"],
        resolve: ({ features, at }) => features.map((feature) => asOf(feature, at)),
      }),
      isCut: t.exposeBoolean("isCut", {
        description:
          "At the kind asked for: more features are looked for on all these kinds, too many to list.",
      }),
    }),
  });
  b.objectType("Term", {
    description: "Something that can be seen on a part, done in a shop, bought, or named.",
    interfaces: ["Node"],
    fields: (t) => ({
      id: t.exposeID("id"),
      kind: t.expose("kind", { type: b.enums.termKind }),
      label: t.exposeString("label"),
      otherLabels: t.stringList({ resolve: (term) => term.otherLabels ?? [] }),
      note: t.exposeString("note", { nullable: true }),
      looking: t.field({
        type: looking,
        nullable: true,
        resolve: ({ looking: notes, at }) => (notes ? asOf(notes, at) : null),
      }),
      broader: t.field({
        type: "Term",
        nullable: true,
        resolve: (term, _, { load }) => (term.broader ? load.terms.one(term.broader, term.at) : null),
      }),
      mergedInto: t.field({
        description: "The term that it is one with, and that stands for both; null for all others.",
        type: "Term",
        nullable: true,
        resolve: (term, _, { load }) =>
          term.merged && term.broader ? load.terms.one(term.broader, term.at) : null,
      }),
      broaderTerms: t.field({
        description: "From the nearest broader term to the top.",
        type: ["Term"],
        resolve: (term, _, { load }) => ancestorsOf((id) => load.terms.one(id, term.at), term),
      }),
      narrower: t.field({
        type: b.connections.terms,
        args: b.pageOf(50),
        resolve: (term, args, context) =>
          readPageOn(term.at, args, (page, at) => listTerms(context, { broader: term.id }, page, at)),
      }),
      parts: t.field({
        description:
          "Of a feature: the kinds of part it is looked for on. Of a form: the parts it is expected to have.",
        type: ["Term"],
        resolve: (term, _, { load }) => load.terms.many(term.parts ?? [], term.at),
      }),
      featuresOnPart: t.field({
        description:
          "Of a kind of part: what is looked for on it, on kinds within it and on those around it; else none.",
        extensions: { weight: FEATURES_WEIGHT, entries: 10 },
        type: [onPart],
        resolve: async (term, _, context) =>
          (term.kind === "part" ? await featuresOnPart(context, term.id, term.at) : []).map((each) =>
            asOf(each, term.at),
          ),
      }),
      aat: t.field({ type: "AatMatch", nullable: true, resolve: (term) => term.aat }),
      referenceRows: t.field({
        description: "What is measured or counted of this term; rows that disagree stand side by side.",
        extensions: { entries: USUAL_ROWS },
        type: ["ReferenceRow"],
        resolve: (term, _, { tables }) => tables.rowsAbout(term.id).map((row) => asOf(row, term.at)),
      }),
      claims: t.field({
        description: "Claims about this term.",
        type: b.connections.claims,
        args: b.pageOf(50),
        resolve: (term, args, context) =>
          readPageOn(term.at, args, (page, at) => listClaims(context, { subject: term.id }, page, at)),
      }),
      namedIn: t.field({
        description: "Claims about other terms that name this one.",
        type: b.connections.claims,
        args: b.pageOf(50),
        resolve: (term, args, context) =>
          readPageOn(term.at, args, (page, at) =>
            listClaims(context, { naming: term.id, notAbout: term.id }, page, at),
          ),
      }),
    }),
  });
}
