import type { Claim, Requires } from "#server/domain/claim.ts";
import { withClaim, without } from "../seed-graph.ts";
import type { Rule } from "./rule.ts";

/** Whether neither the claim nor one of its citations says why. */
const isBare = ({ note = "", citations }: Claim): boolean =>
  [note, ...citations.map((citation) => citation.note ?? "")].every((text) => text.length < 10);

/** Whether the ways are single materials, finishes or fittings: what is seen or found is the thing itself. */
const isTheThingFound = (claim: Requires): boolean =>
  claim.ways.every((way) => way.length === 1 && /^(material|finish|hardware)\./.test(way[0] ?? ""));

/** Every term that a claim names. */
export function termsNamedBy(claim: Claim): readonly string[] {
  const scope = "scope" in claim ? Object.values(claim.scope) : [];
  const own = [
    ...("subject" in claim ? [claim.subject] : []),
    ...("object" in claim ? [claim.object] : []),
    ...("condition" in claim ? [claim.condition] : []),
    ...("ways" in claim ? claim.ways.flat() : []),
    ...("regions" in claim ? claim.regions : []),
    ...(claim.relation === "spread to" ? [claim.from, claim.to] : []),
  ];
  return [...own, ...scope];
}

/** Kinds whose terms are only worth having if a claim speaks of them; the others are also words for attributions. */
const SPOKEN_OF = new Set(["feature", "practice", "tool", "hardware"]);

export const modellingRules: readonly Rule[] = [
  {
    says: "a complete list of ways says why it is complete, unless the one way is the very stuff or fitting that is found",
    find: ({ claims }) =>
      claims
        .filter(
          (claim) =>
            claim.relation === "requires" && claim.closed && !isTheThingFound(claim) && isBare(claim),
        )
        .map(({ id }) => `${id} is closed without a reason`),
    brokenBy: {
      "a reason left out": (seed) => withClaim(seed, "claim.M11", (claim) => without(claim, "note")),
      "a list closed in passing": (seed) =>
        withClaim(seed, "claim.M27", (claim) => ({ ...without(claim, "note"), closed: true })),
    },
  },
  {
    says: "a rejected claim keeps its reason, and so does a beginning kept soft",
    find: ({ claims }) =>
      claims
        .filter(
          (claim) =>
            claim.status === "rejected" || (claim.relation === "introduced" && claim.hardness === "practice"),
        )
        .filter(isBare)
        .map(({ id }) => `${id} gives no reason`),
    brokenBy: {
      "a rejection without a word": (seed) => withClaim(seed, "claim.A36", (claim) => without(claim, "note")),
      "a soft beginning without a word": (seed) =>
        withClaim(seed, "claim.A7", (claim) => without(claim, "note")),
    },
  },
  {
    says: "a claim names its row in the fact register, or says where it comes from; an exception may leave that to its claim",
    find: ({ claims }) =>
      claims
        .filter(({ row, note, relation }) =>
          row === undefined ? note === undefined && relation !== "void when" : !/^[A-M]\d+$/.test(row),
        )
        .map(({ id, row }) => `${id} has the row ${row}`),
    brokenBy: {
      "a row of nowhere": (seed) => withClaim(seed, "claim.A36", (claim) => ({ ...claim, row: "page 12" })),
      "neither row nor note": (seed) =>
        withClaim(seed, "claim.M1", (claim) => without(without(claim, "row"), "note")),
    },
  },
  {
    says: "a claim whose id is that of a row is of that row, and each further claim of a row has an ending of its own",
    find: ({ claims }) =>
      claims
        .filter(({ id, row }) => /^claim\.[A-M]\d+$/.test(id) && id !== `claim.${row}`)
        .map(({ id, row }) => `${id} claims to be of the row ${row}`),
    brokenBy: {
      "an id of another row": (seed) => withClaim(seed, "claim.A36", (claim) => ({ ...claim, row: "A37" })),
    },
  },
  {
    says: "a feature says in a sentence what it is, and on which kinds of part it is looked for",
    find: ({ terms }) =>
      terms
        .filter(({ kind }) => kind === "feature")
        .filter(({ note = "", parts = [] }) => note.length < 10 || parts.length === 0)
        .map(({ id }) => `${id} says too little`),
    brokenBy: {
      "a bare feature": (seed) => ({
        ...seed,
        terms: seed.terms.map((term) =>
          term.id === "feature.wire-nail" ? (without(term, "parts") as typeof term) : term,
        ),
      }),
    },
  },
  {
    says: "every feature, practice, tool and fitting is spoken of by a claim or is the wider kind of one that is",
    find: ({ terms, claims }) => {
      const named = new Set([
        ...claims.flatMap(termsNamedBy),
        ...terms.flatMap(({ broader }) => (broader === undefined ? [] : [broader])),
      ]);
      return terms
        .filter(({ id, kind }) => SPOKEN_OF.has(kind) && !named.has(id))
        .map(({ id }) => `${id} stands alone`);
    },
    brokenBy: {
      "a tool nobody needs": (seed) => ({
        ...seed,
        claims: seed.claims.filter((claim) => !termsNamedBy(claim).includes("tool.froe")),
      }),
    },
  },
];
