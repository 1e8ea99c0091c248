import { sharesTheHouse } from "../../domain/people/caller.ts";
import { mayDo } from "../../domain/people/may-do.ts";
import { isProblem } from "../../domain/problem.ts";
import type { Proposal } from "../../domain/proposals/proposal.ts";
import { STEPS, type Step, stateAfter } from "../../domain/proposals/step.ts";
import type { Acting } from "../acting.ts";

const OWN: readonly Step[] = ["open", "change", "withdraw"];

/** What the caller may do to a proposal now, and else why not. */
export function stepsOfProposal(
  { caller }: Pick<Acting, "caller">,
  proposal: Proposal,
): readonly { readonly step: Step; readonly refused?: string }[] {
  const isShared = caller !== undefined && sharesTheHouse(caller);
  const { by } = proposal;
  return (Object.keys(STEPS) as Step[]).map((step) => {
    const forbidden = OWN.includes(step)
      ? mayDo(caller, "change a proposal", { by })
      : mayDo(caller, "decide on a proposal", { by, isShared });
    const next = stateAfter(proposal, step);
    const refused = forbidden ?? (isProblem(next) ? next : undefined);
    return refused === undefined ? { step } : { step, refused: refused.message };
  });
}
