import type { CardWrite } from "../../domain/card.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import type { Proposal } from "../../domain/proposals/proposal.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { countUndecided } from "../ask/list-proposals.ts";
import { cardOfProposal } from "../card-of-proposal.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { refuseUnfitChange } from "../refuse-unfit-change.ts";

/** What somebody asks for; a draft may still be unfit for the graph, and only its maker sees it. */
export type Asked = Pick<Proposal, "kind" | "title" | "why" | "change" | "base" | "form" | "origin"> & {
  readonly state: "draft" | "open";
};

/** Proposals of one person that may wait for a decision at once, so that nobody buries those of the others. */
export const MOST_UNDECIDED = 500;

/**
 * Keeps a new proposal, or refuses what could not be read. An open one is refused if the graph would refuse its change. It is kept
 * together with the cards `beside` it, or not at all.
 */
export async function makeProposal(
  ports: Acting & { readonly store: Store; readonly newSuffix: NewSuffix },
  asked: Asked | Refusal,
  beside: readonly CardWrite[] = [],
): Promise<KeptProposal | Refusal> {
  const refusal = refuseCaller(ports, "make a proposal");
  if (refusal) return refusal;
  if (isRefusal(asked)) return asked;
  const unfit = await refuseUnfitChange(ports, asked);
  if (unfit) return unfit;
  if ((await countUndecided(ports, ports.caller?.id ?? "")) >= MOST_UNDECIDED)
    return {
      refused: [
        problem(
          "TRY_LATER",
          `You have ${MOST_UNDECIDED} proposals that nobody has decided on yet. Wait for decisions, or take some back.`,
        ),
      ],
    };
  const now = ports.now();
  const id = `proposal.${now.slice(0, 10)}-${ports.newSuffix()}`;
  const by = signed(ports, "make proposal", id);
  const proposal: Proposal = { ...asked, by: by.deed.by, madeAt: now, changedAt: now };
  const cards = [await cardOfProposal(ports, id, 0, proposal), ...beside];
  const written = await ports.store.writeCards({ ...by, cards });
  return isProblem(written) ? { refused: [written] } : { id, version: 1, ...proposal };
}
