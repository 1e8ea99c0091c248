import type { Claim } from "../../../domain/claim.ts";
import { compareIds } from "../../../domain/compare.ts";
import type { ClaimId, TermId } from "../../../domain/ids.ts";
import type { Term } from "../../../domain/term.ts";
import { type Link, type LinkKind, linkId } from "./link.ts";

type Joint = readonly [kind: LinkKind, to: TermId];

/** The subject of a claim, or of the claim that an exception belongs to. */
export type SubjectOf = (claim: ClaimId) => TermId | undefined;

/** Links that claims say; one for each pair of terms and kind. Claims of every status are taken: filter before. */
export function linksOfClaims(claims: Iterable<Claim>, subjectOf: SubjectOf): readonly Link[] {
  const found = new Map<string, Link>();
  for (const claim of [...claims].sort(compareIds)) {
    const from = claim.relation === "void when" ? claim.condition : claim.subject;
    for (const [kind, to] of jointsOf(claim, subjectOf)) {
      if (from === to) continue;
      const id = linkId({ from, kind, to });
      const known = found.get(id);
      if (known?.claims.includes(claim)) continue;
      const hardness =
        known?.hardness === "physical"
          ? known.hardness
          : "hardness" in claim
            ? claim.hardness
            : known?.hardness;
      const claims = [...(known?.claims ?? []), claim];
      found.set(id, { from, to, kind, claims, ...(hardness === undefined ? {} : { hardness }) });
    }
  }
  return [...found.values()];
}

function jointsOf(claim: Claim, subjectOf: SubjectOf): readonly Joint[] {
  switch (claim.relation) {
    case "void when": {
      const to = subjectOf(claim.of);
      return to === undefined ? [] : [["void when", to]];
    }
    case "spread to":
      return [
        ["spread from", claim.from],
        ["spread to", claim.to],
      ];
    case "requires":
      return [...claim.ways.flat().map((term): Joint => ["requires", term]), ...inScope(claim, "said of")];
    case "typical of":
      return [["typical of", claim.object], ...inScope(claim, "said of")];
    case "confined to":
      return [...claim.regions.map((region): Joint => ["confined to", region]), ...inScope(claim, "said of")];
    case "not found in":
      return inScope(claim, "not found in");
    case "indicates":
      return inScope(claim, "said of");
    default:
      return inScope(claim, "dated in");
  }
}

const inScope = (claim: Claim, kind: LinkKind): readonly Joint[] => {
  const { region, form, part } = "scope" in claim ? claim.scope : {};
  return [region, form, part].flatMap((to): Joint[] => (to === undefined ? [] : [[kind, to]]));
};

/** Links that a term states itself: its broader term, its kinds of part, what it is mistaken for. */
export function linksOfTerm(term: Term): readonly Link[] {
  const from = term.id;
  const link = (kind: LinkKind, to: TermId): Link => ({ from, to, kind, claims: [] });
  return [
    ...(term.looking?.mistakenFor ?? []).flatMap((alike) =>
      alike.term === undefined ? [] : [link("mistaken for", alike.term)],
    ),
    ...(term.broader === undefined ? [] : [link("broader", term.broader)]),
    ...(term.parts ?? []).map((part) => link(term.kind === "form" ? "has part" : "looked for on", part)),
  ];
}
