import { isProblem } from "../../domain/problem.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import type { Proposal } from "../../domain/proposals/proposal.ts";
import { type Step, stateAfter } from "../../domain/proposals/step.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { findProposal, unknownProposal } from "../ask/find-proposal.ts";
import { cardOfProposal } from "../card-of-proposal.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { refuseOtherVersion } from "../refuse-other-version.ts";
import { refuseUnfitChange } from "../refuse-unfit-change.ts";

type Ports = Acting & { readonly store: Store };

/** What its maker does to a proposal: says it otherwise, hands it to the reviewers, or takes it back. */
export type OwnStep = Extract<Step, "change" | "open" | "withdraw">;
export type Said = Partial<Pick<Proposal, "kind" | "title" | "why" | "change" | "base" | "form">>;

/** Changes a proposal of one's own. `expectedVersion` is the version it was read in. */
export async function changeProposal(
  ports: Ports,
  id: string,
  expectedVersion: number,
  step: OwnStep,
  said: Said | Refusal = {},
): Promise<KeptProposal | Refusal> {
  const unable = refuseCaller(ports, "change a proposal");
  if (unable) return unable;
  if (isRefusal(said)) return said;
  const proposal = await findProposal(ports, id);
  if (proposal === undefined) return { refused: [unknownProposal(id)] };
  const refusal = refuseCaller(ports, "change a proposal", { by: proposal.by });
  if (refusal) return refusal;
  const state = stateAfter(proposal, step);
  if (isProblem(state)) return { refused: [state] };
  const changed = refuseOtherVersion("proposal", proposal, expectedVersion);
  if (changed) return changed;
  const { id: _, version: __, ...before } = proposal;
  const next: Proposal = {
    ...{ ...before, ...said, state, changedAt: ports.now() },
    ...(step === "withdraw" && proposal.state === "draft" ? { neverOpened: true } : {}),
  };
  const unfit = step === "withdraw" ? undefined : await refuseUnfitChange(ports, next);
  if (unfit) return unfit;
  const cards = [await cardOfProposal(ports, id, expectedVersion, next)];
  const written = await ports.store.writeCards({ ...signed(ports, `${step} proposal`, id), cards });
  return isProblem(written) ? { refused: [written] } : { id, version: expectedVersion + 1, ...next };
}
