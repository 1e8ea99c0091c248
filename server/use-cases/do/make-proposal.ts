import type { TermId } from "../../domain/ids.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import {
  type KeptProposal,
  PROPOSAL_CARD,
  proposalOf,
  proposalWrite,
  regionsOf,
} from "../../domain/proposals/kept-proposal.ts";
import type { Proposal } from "../../domain/proposals/proposal.ts";
import type { Term } from "../../domain/term.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { ancestorsOf } from "../ask/ancestors-of.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";

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
  const cards = [proposalWrite(id, 0, proposal, await withAllAbove(ports, regionsOf(proposal)))];
  const written = await ports.store.writeCards({ ...by, cards });
  return isProblem(written) ? { refused: [written] } : { id, version: 1, ...proposal };
}

/** Refuses an open proposal that says nothing of why, changes nothing, or that the graph would refuse. */
export async function refuseUnfitChange(
  { store }: { readonly store: Store },
  { state, title, why, change }: Pick<Proposal, "state" | "title" | "why" | "change">,
): Promise<Refusal | undefined> {
  if (state !== "open") return undefined;
  const unsaid = (
    [
      ["title", title, "Say in a few words what it is."],
      ["why", why, "Say why the graph should change, so that others can decide."],
    ] as const
  )
    .filter(([, text]) => text.trim() === "")
    .map(([field, , message]) => problem("EMPTY_LIST", message, [field]));
  const unfit = await store.wouldRefuse(change);
  return refusalFrom([
    ...unsaid,
    ...(unfit === undefined ? [] : [{ ...unfit, path: ["change", ...unfit.path] }]),
  ]);
}

/** Regions with all that lie above them, each once. */
export async function withAllAbove(
  { store }: { readonly store: Store },
  regions: readonly TermId[],
): Promise<readonly TermId[]> {
  const terms = await store.terms(regions);
  const find = async (id: TermId): Promise<Term | undefined> => (await store.terms([id])).get(id);
  const above = await Promise.all([...terms.values()].map((term) => ancestorsOf(find, term)));
  return [...new Set([...regions, ...above.flat().map(({ id }) => id)])].sort();
}

/** A proposal, if there is one that the caller may see: drafts are for whoever makes them. */
export async function findProposal(
  { store, caller }: Pick<Acting, "caller"> & { readonly store: Store },
  id: string,
): Promise<KeptProposal | undefined> {
  const card = await store.card(PROPOSAL_CARD, id);
  const proposal = card && proposalOf(card);
  return proposal?.state === "draft" && proposal.by !== caller?.id ? undefined : proposal;
}
