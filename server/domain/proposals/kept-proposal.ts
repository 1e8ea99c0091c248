import type { Card, CardWrite } from "../card.ts";
import { idOfEdit } from "../graph-view.ts";
import type { TermId } from "../ids.ts";
import { isPrivate, type Proposal, type ProposalKind, type ProposalState } from "./proposal.ts";

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

/** What a list of proposals is narrowed to; all that are named must hold. */
export interface ProposalFilter {
  /** `shown` is every state of what was handed in. */
  readonly state?: ProposalState | "shown";
  readonly by?: string;
  readonly kind?: ProposalKind;
  readonly region?: TermId;
}

const listing = (...named: readonly (string | undefined)[]): string =>
  JSON.stringify(named.map((name) => name ?? ""));

/** The one value by which the cards of a filter are found, whatever it names. */
export const listedUnder = ({ state, by, kind, region }: ProposalFilter): string =>
  listing(state, by, kind, region);

/** Every filter that admits a proposal, as what it is found under. */
function everyListing(proposal: Proposal, regions: readonly TermId[]): readonly string[] {
  const { state, by, kind } = proposal;
  const states = proposal.neverOpened
    ? [undefined]
    : [undefined, state, ...(isPrivate(proposal) ? [] : ["shown"])];
  const makers = isPrivate(proposal) ? [by] : [undefined, by];
  return states.flatMap((one) =>
    makers.flatMap((maker) =>
      [undefined, kind].flatMap((about) =>
        [undefined, ...regions].map((region) => listing(one, maker, about, region)),
      ),
    ),
  );
}

/**
 * The card that keeps a proposal from now on. It is found by what it edits, and by any of its state, whoever made it, its kind
 * and a region its claims are scoped to or one above it (`regions`), also by several of them at once.
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
      listed: everyListing(proposal, regions),
      edits: [...new Set(proposal.change.map(idOfEdit))],
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
