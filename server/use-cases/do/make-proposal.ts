import { isProblem } from "../../domain/problem.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import type { Proposal } from "../../domain/proposals/proposal.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { cardOfProposal } from "../card-of-proposal.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitChange } from "../refuse-unfit-change.ts";

/** What somebody asks for; a draft may still be unfit for the graph, and only its maker sees it. */
export type Asked = Pick<Proposal, "kind" | "title" | "why" | "change" | "base" | "origin"> & {
  readonly state: "draft" | "open";
};

/** Keeps a new proposal. An open one is refused if the graph would refuse its change. */
export async function makeProposal(
  ports: Acting & { readonly store: Store; readonly newSuffix: NewSuffix },
  asked: Asked,
): Promise<KeptProposal | Refusal> {
  const refusal = refuseCaller(ports, "make a proposal") ?? (await refuseUnfitChange(ports, asked));
  if (refusal) return refusal;
  const now = ports.now();
  const id = `proposal.${now.slice(0, 10)}-${ports.newSuffix()}`;
  const by = signed(ports, "make proposal", id);
  const proposal: Proposal = { ...asked, by: by.deed.by, madeAt: now, changedAt: now };
  const cards = [await cardOfProposal(ports, id, 0, proposal)];
  const written = await ports.store.writeCards({ ...by, cards });
  return isProblem(written) ? { refused: [written] } : { id, version: 1, ...proposal };
}
