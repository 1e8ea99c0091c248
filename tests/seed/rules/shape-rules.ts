import { checkGraph } from "#server/domain/check-graph.ts";
import { makeClaim } from "#server/domain/make-claim.ts";
import { TERM_KINDS } from "#server/domain/term.ts";
import { asGraph, withClaim, without, withSource, withTerm } from "../seed-graph.ts";
import type { Rule } from "./rule.ts";

const TERM_FIELDS = [
  ...["id", "kind", "label", "otherLabels", "withArticle", "note"],
  ...["looking", "broader", "parts", "aat"],
];
const SOURCE_FIELDS = ["id", "kind", "csl", "reading", "note", "piece"];

const strange = (thing: object, known: readonly string[]): readonly string[] =>
  Object.keys(thing).filter((field) => !known.includes(field));

const isWords = (value: unknown): boolean =>
  typeof value === "string" && value.trim() === value && value !== "";

export const shapeRules: readonly Rule[] = [
  {
    says: "a term has the fields of a term, a label and texts without loose blanks",
    find: ({ terms }) =>
      terms.flatMap((term) => [
        ...strange(term, TERM_FIELDS).map((field) => `${term.id} has a field ${field}`),
        ...[term.label, ...(term.otherLabels ?? []), ...(term.note === undefined ? [] : [term.note])]
          .filter((text) => !isWords(text))
          .map((text) => `${term.id} has the text “${text}”`),
      ]),
    brokenBy: {
      "a misspelt field": (seed) =>
        withTerm(seed, "tool.band-saw", (term) => ({ ...term, brooder: "tool.saw" })),
      "an empty note": (seed) => withTerm(seed, "tool.band-saw", (term) => ({ ...term, note: "" })),
    },
  },
  {
    says: "a source has the fields of a source, and its bibliographic item carries its id and a type",
    find: ({ sources }) =>
      sources.flatMap((source) => [
        ...strange(source, SOURCE_FIELDS).map((field) => `${source.id} has a field ${field}`),
        ...(source.csl.id === source.id && isWords(source.csl.type)
          ? []
          : [`${source.id} has another csl.id`]),
      ]),
    brokenBy: {
      "another id inside": (seed) =>
        withSource(seed, "source.mercer-1923", (source) => ({
          ...source,
          csl: { ...source.csl, id: "mercer" },
        })),
      "a field of our own invention": (seed) =>
        withSource(seed, "source.mercer-1923", (source) => ({ ...source, trust: 3 })),
    },
  },
  {
    says: "a claim can be made as it stands: fields, citations, lists, hardness, a date that reads in its role",
    find: ({ claims }) =>
      claims.flatMap((claim) => {
        const made = makeClaim(claim);
        return "id" in made ? [] : made.map(({ message }) => `${claim.id}: ${message}`);
      }),
    brokenBy: {
      "a date that does not read": (seed) =>
        withClaim(seed, "claim.A19", (claim) => ({ ...claim, when: "c.1808" })),
      "no citation": (seed) => withClaim(seed, "claim.A19", (claim) => ({ ...claim, citations: [] })),
      "a published citation without its place": (seed) =>
        withClaim(seed, "claim.A19", (claim) => ({
          ...claim,
          citations: claim.citations.map((citation) => without(citation, "locator")),
        })),
      "common practice that names a source": (seed) =>
        withClaim(seed, "claim.A13", (claim) => ({
          ...claim,
          citations: [{ basis: "common practice", source: "source.mercer-1923" }],
        })),
      "a habit called physical": (seed) =>
        withClaim(seed, "claim.A13", (claim) => ({ ...claim, hardness: "physical" })),
      "an unknown field": (seed) => withClaim(seed, "claim.A13", (claim) => ({ ...claim, certainty: 1 })),
    },
  },
  {
    says: "an id stands once, and begins with the kind of what it names",
    find: ({ terms, claims, sources }) => {
      const named = [
        ...terms.map(({ id, kind }) => ({ id, kind })),
        ...claims.map(({ id }) => ({ id, kind: "claim" })),
        ...sources.map(({ id }) => ({ id, kind: "source" })),
      ];
      const seen = new Set<string>();
      return named.flatMap(({ id, kind }) => {
        const twice = seen.has(id);
        seen.add(id);
        const fits = new RegExp(`^${kind}\\.[A-Za-z0-9-]+$`).test(id);
        return [...(twice ? [`${id} stands twice`] : []), ...(fits ? [] : [`${id} is no id of a ${kind}`])];
      });
    },
    brokenBy: {
      "a line copied": (seed) => ({ ...seed, claims: [...seed.claims, ...seed.claims.slice(0, 1)] }),
      "a tool called a feature": (seed) =>
        withTerm(seed, "tool.band-saw", (term) => ({ ...term, kind: TERM_KINDS[0] })),
    },
  },
  {
    says: "everything that is named exists and is of the kind wanted, and nothing is its own broader term or exception",
    find: (seed) => checkGraph(asGraph(seed)).map(({ path, message }) => `${path[1]}: ${message}`),
    brokenBy: {
      "a missing tool": (seed) =>
        withClaim(seed, "claim.M11", (claim) => ({ ...claim, ways: [["tool.ribbon-saw"]] })),
      "a region as form": (seed) =>
        withClaim(seed, "claim.A13", (claim) => ({ ...claim, scope: { form: "region.britain" } })),
      "a ring of broader terms": (seed) =>
        withTerm(seed, "tool.saw", (term) => ({ ...term, broader: "tool.band-saw" })),
      "an exception of itself": (seed) =>
        withClaim(seed, "claim.B48-gb", (claim) => ({ ...claim, of: "claim.B48-gb" })),
    },
  },
];
