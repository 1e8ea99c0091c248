import type { Change, Edit } from "#server/domain/change.ts";
import type { Claim, Strength } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { ProposalKind } from "../shared/apollo/schema-types.graphql.ts";

/** What a correction makes of a thing. */
export interface Corrected {
  readonly kind: ProposalKind;
  readonly title: string;
  readonly change: Change;
}

const replaced = (kind: "claim" | "term", before: Claim | Term, after: Claim | Term): Change => [
  { kind, before, after } as Edit,
];

/** The same claim with another date. */
export const redate = (claim: Claim, when: string, says: string): Corrected => ({
  kind: "CORRECTION",
  title: `Another date: ${says}`,
  change: replaced("claim", claim, { ...claim, when } as Claim),
});

/** The same claim, to be leaned on more or less. */
export const restrengthen = (claim: Claim, strength: Strength, says: string): Corrected => ({
  kind: "CORRECTION",
  title: `Strength ${strength}: ${says}`,
  change: replaced("claim", claim, { ...claim, strength }),
});

/** The claim counts for nothing from then on; it stays to be read, and can be restored. */
export const retract = (claim: Claim, says: string): Corrected => ({
  kind: "RETIREMENT",
  title: `Retract: ${says}`,
  change: replaced("claim", claim, { ...claim, status: "rejected" }),
});

/** A claim that counts for nothing counts again. */
export const restore = (claim: Claim, says: string): Corrected => ({
  kind: "CORRECTION",
  title: `Restore: ${says}`,
  change: replaced("claim", claim, { ...claim, status: "accepted" }),
});

/** Where this is seen too, the claim says nothing. */
export const except = (
  claim: Claim,
  condition: { readonly id: string; readonly label: string },
  basis: "common practice" | "from memory",
  suffix: string,
): Corrected => ({
  kind: "EXCEPTION",
  title: `Unless ${condition.label}: ${claim.id}`,
  change: [
    {
      kind: "claim",
      after: {
        ...{ id: id(`claim.unless-${suffix}`), relation: "void when", of: claim.id },
        ...{ condition: id(condition.id), anywhere: false },
        ...{ strength: "usual", status: "accepted", citations: [{ basis }] },
      },
    },
  ],
});

/** The same term, named or described otherwise. */
export function reword(term: Term, label: string, note: string): Corrected {
  const { note: _, ...rest } = term;
  return {
    kind: "CORRECTION",
    title: label === term.label ? `Another note: ${label}` : `${term.label}, to be called ${label}`,
    change: replaced("term", term, { ...rest, label, ...(note === "" ? {} : { note }) }),
  };
}

/** The term is taken out, which the evidence takes only where nothing names it any more. */
export const retire = (term: Term): Corrected => ({
  kind: "RETIREMENT",
  title: `Retire: ${term.label}`,
  change: [{ kind: "term", before: term }],
});
