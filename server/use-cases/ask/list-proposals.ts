import { sharesTheHouse } from "../../domain/people/caller.ts";
import {
  type KeptProposal,
  listedUnder,
  PROPOSAL_CARD,
  type ProposalFilter,
  proposalOf,
} from "../../domain/proposals/kept-proposal.ts";
import { isPrivate, isUndecided, UNDECIDED } from "../../domain/proposals/proposal.ts";
import { LARGEST_PAGE, type Page, type PageAsk, type Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";

type Ports = Pick<Acting, "caller"> & { readonly store: Store };

const under = (filter: ProposalFilter) => ({
  kind: PROPOSAL_CARD,
  key: { name: "listed", value: listedUnder(filter) },
});

/** Proposals that the caller may see, newest first: drafts are among them only where one's own are asked for. */
export async function listProposals(
  { store, caller }: Ports,
  filter: ProposalFilter,
  page: PageAsk,
): Promise<Page<KeptProposal>> {
  const isOwn = caller !== undefined && filter.by === caller.id;
  if (filter.state === "draft" && !isOwn) return { rows: [], cursors: [], hasMore: false, total: 0 };
  const asked = filter.state === undefined && !isOwn ? { ...filter, state: "shown" as const } : filter;
  const found = await store.listCards(under(asked), page, "down");
  return { ...found, rows: found.rows.map(proposalOf) };
}

/** Open proposals that wait for a word of the caller, oldest first: in a shared house those of others. */
export async function listToReview(
  { store, caller }: Ports,
  filter: Pick<ProposalFilter, "kind" | "region">,
  page: PageAsk,
): Promise<Page<KeptProposal>> {
  const open = { ...filter, state: "open" as const };
  if (caller === undefined || !sharesTheHouse(caller)) {
    const found = await store.listCards(under(open), page, "up");
    return { ...found, rows: found.rows.map(proposalOf) };
  }
  const rows: KeptProposal[] = [];
  const cursors: string[] = [];
  let after = page.after;
  for (let hasMore = true; hasMore && rows.length <= page.first; ) {
    const found = await store.listCards(
      under(open),
      { first: LARGEST_PAGE, ...(after ? { after } : {}) },
      "up",
    );
    for (const [i, card] of found.rows.entries()) {
      const proposal = proposalOf(card);
      if (proposal.by === caller.id) continue;
      rows.push(proposal);
      cursors.push(found.cursors[i] ?? "");
    }
    hasMore = found.hasMore;
    after = found.cursors.at(-1);
  }
  const count = async (by?: string): Promise<number> =>
    (await store.listCards(under(by === undefined ? open : { ...open, by }), { first: 1 })).total;
  return {
    rows: rows.slice(0, page.first),
    cursors: cursors.slice(0, page.first),
    hasMore: rows.length > page.first,
    total: (await count()) - (await count(caller.id)),
  };
}

/** Proposals not decided yet that edit a term, a claim or a source, as far as the caller may see them; newest first. */
export async function listProposalsOn(
  { store, caller }: Ports,
  id: string,
): Promise<readonly KeptProposal[]> {
  const key = { name: "edits", value: id };
  const { rows } = await store.listCards({ kind: PROPOSAL_CARD, key }, { first: LARGEST_PAGE }, "down");
  return rows.map(proposalOf).filter((one) => isUndecided(one) && (!isPrivate(one) || one.by === caller?.id));
}

/** Proposals of a person that are not decided yet. */
export async function countUndecided({ store }: { readonly store: Store }, by: string): Promise<number> {
  const counts = await Promise.all(
    UNDECIDED.map(async (state) => (await store.listCards(under({ by, state }), { first: 1 })).total),
  );
  return counts.reduce((sum, count) => sum + count, 0);
}
