import type { Claim } from "#server/domain/claim.ts";
import type { Source } from "#server/domain/source.ts";
import { type SeedGraph, withClaim, without, withSource, withTerm } from "../seed-graph.ts";
import type { Rule } from "./rule.ts";

/** Kinds of term whose labels are trade names. */
const TRADE_KINDS = new Set(["feature", "practice", "tool", "hardware", "material", "finish"]);
/** Words that stand in names of firms without being names. */
const FILLING = new Set([
  "and",
  "the",
  "Company",
  "Works",
  "Sons",
  "Bros",
  "Society",
  "Museum",
  "Association",
  "London",
]);

/** Names of patentees, and of firms that wrote a source of the trade. */
function namesInSources(sources: readonly Source[]): ReadonlySet<string> {
  const names = sources
    .filter(({ kind }) => kind === "patent" || kind === "trade text")
    .flatMap(({ csl }) => csl.author ?? [])
    .flatMap(({ family, literal }) => (family ?? literal ?? "").split(/[^\p{L}]+/u))
    .filter((word) => word.length > 3 && /^\p{Lu}/u.test(word) && !FILLING.has(word));
  return new Set(names);
}

const published = ({ citations }: Pick<Claim, "citations">) =>
  citations.flatMap((citation) => (citation.basis === "published" ? [citation] : []));

const isFloor = (claim: Claim): boolean =>
  claim.relation === "introduced" && claim.hardness === "physical" && claim.status === "accepted";

const sourceOf = ({ sources }: SeedGraph): ReadonlyMap<string, Source> =>
  new Map(sources.map((source) => [source.id, source]));

const hasBroader = ({ terms }: SeedGraph): ReadonlySet<string> =>
  new Set(terms.flatMap((term) => (term.broader === undefined ? [] : [term.id])));

export const honestyRules: readonly Rule[] = [
  {
    says: "no label of the trade names a patentee or a firm of the sources",
    find: ({ terms, sources }) => {
      const names = namesInSources(sources);
      return terms
        .filter(({ kind }) => TRADE_KINDS.has(kind))
        .flatMap(({ id, label, otherLabels = [] }) =>
          [label, ...otherLabels].flatMap((text) =>
            text
              .split(/[^\p{L}]+/u)
              .filter((word) => names.has(word))
              .map((word) => `${id} is called after ${word}`),
          ),
        );
    },
    brokenBy: {
      "a screw after its patentee": (seed) =>
        withTerm(seed, "feature.cross-head-screw", (term) => ({ ...term, otherLabels: ["Phillips screw"] })),
    },
  },
  {
    says: "a page in a locator stands in the record of its source, and so was not made up",
    find: (seed) => {
      const sources = sourceOf(seed);
      return [...seed.claims, ...seed.tables].flatMap((claim) =>
        published(claim).flatMap(({ source, locator }) => {
          const record = JSON.stringify(sources.get(source) ?? "");
          const pages = [...locator.matchAll(/\bpp?\. ?([\d–-]+)/g)].flatMap(([, page = ""]) =>
            page.split(/[–-]/),
          );
          return pages
            .filter((page) => !new RegExp(`(^|\\D)${page}(\\D|$)`).test(record))
            .map((page) => `${claim.id} cites page ${page} of ${source}`);
        }),
      );
    },
    brokenBy: {
      "a page nobody read": (seed) =>
        withClaim(seed, "claim.A54", (claim) => ({
          ...claim,
          citations: [{ basis: "published", source: "source.rivers-umney-2003", locator: "p. 207" }],
        })),
    },
  },
  {
    says: "a patent gives a floor only to a narrower term: the design, under its wider kind",
    find: (seed) => {
      const sources = sourceOf(seed);
      const narrower = hasBroader(seed);
      return seed.claims
        .filter(isFloor)
        .filter((claim) => published(claim).some(({ source }) => sources.get(source)?.kind === "patent"))
        .filter((claim) => "subject" in claim && !narrower.has(claim.subject))
        .map(({ id }) => `${id} makes a patent the beginning of a whole kind`);
    },
    brokenBy: {
      "a patent on the kind itself": (seed) =>
        withTerm(seed, "tool.sawing-machine-of-1777", (term) => without(term, "broader")),
    },
  },
  {
    says: "a floor without a published source is never called certain",
    find: ({ claims }) =>
      claims
        .filter((claim) => isFloor(claim) && published(claim).length === 0 && claim.strength === "certain")
        .map(({ id }) => `${id} is certain from no text`),
    brokenBy: {
      "memory raised to certainty": (seed) =>
        withClaim(seed, "claim.A74", (claim) => ({ ...claim, strength: "certain" })),
    },
  },
  {
    says: "every source is cited by a claim or a table, or is itself a documented piece",
    find: ({ claims, sources, tables }) => {
      const cited = new Set(
        [...claims, ...tables].flatMap((cites) => published(cites).map(({ source }) => source)),
      );
      return sources
        .filter(({ id, piece }) => !cited.has(id) && piece === undefined)
        .map(({ id }) => `${id} is cited by nothing`);
    },
    brokenBy: {
      "a source nobody cites": (seed) =>
        withSource(seed, "source.mercer-1923", (source) => ({ ...source, id: "source.mercer-1932" })),
    },
  },
];
