import type { Card, CardWrite } from "../card.ts";
import { idOfEdit } from "../graph-view.ts";
import type { TermId } from "../ids.ts";
import type { Proposal } from "./proposal.ts";

/** A proposal as a house keeps it. `version` counts its changes. */
export interface KeptProposal extends Proposal {
  readonly id: string;
  readonly version: number;
}

/** The kind of the cards that proposals are kept on. */
export const PROPOSAL_CARD = "proposal";

/** What a card says. */
export const proposalOf = ({ id, version, body }: Card): KeptProposal => ({
  id,
  version,
  ...(body as Proposal),
});

/**
 * The card that keeps a proposal from now on. It is found by its state, whoever made it, its kind, what it edits, and the regions
 * its claims are scoped to with all above them (`regions`).
 */
export const proposalWrite = (
  id: string,
  expectedVersion: number,
  proposal: Proposal,
  regions: readonly TermId[],
): CardWrite => ({
  ...{ kind: PROPOSAL_CARD, id, expectedVersion },
  next: {
    keys: {
      state: [proposal.state],
      by: [proposal.by],
      kind: [proposal.kind],
      edits: proposal.change.map(idOfEdit),
      region: regions,
    },
    body: proposal,
  },
});

/** The regions that the claims of a proposal are scoped to, or name as places. */
export function regionsOf({ change }: Pick<Proposal, "change">): readonly TermId[] {
  const regions = change.flatMap((edit): readonly (TermId | undefined)[] => {
    if (edit.kind === "term")
      return [edit.after, edit.before].map((term) => (term?.kind === "region" ? term.id : undefined));
    if (edit.kind === "source") return [];
    return [edit.after, edit.before].flatMap((claim) => {
      if (claim === undefined || claim.relation === "void when") return [];
      if (claim.relation === "spread to") return [claim.from, claim.to];
      const places = claim.relation === "confined to" ? claim.regions : [];
      return [claim.scope.region, ...places];
    });
  });
  return [...new Set(regions.filter((region) => region !== undefined))];
}
