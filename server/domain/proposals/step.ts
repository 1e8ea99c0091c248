import { type Problem, problem } from "../problem.ts";
import type { Proposal, ProposalState } from "./proposal.ts";

/** What can be done to a proposal, with the states from which, and the state that follows. */
export const STEPS = {
  open: { from: ["draft", "changes asked for"], to: "open" },
  change: { from: ["draft", "open", "changes asked for"], to: undefined },
  "ask for changes": { from: ["open"], to: "changes asked for" },
  accept: { from: ["open"], to: "accepted" },
  decline: { from: ["open", "changes asked for"], to: "declined" },
  supersede: { from: ["open", "changes asked for"], to: "superseded" },
  withdraw: { from: ["draft", "open", "changes asked for"], to: "withdrawn" },
} as const satisfies Record<
  string,
  { readonly from: readonly ProposalState[]; readonly to: ProposalState | undefined }
>;
export type Step = keyof typeof STEPS;

/** The state after a step, or `WRONG_STATE`: what is decided stays decided; a new proposal can be made instead. */
export function stateAfter({ state }: Pick<Proposal, "state">, step: Step): ProposalState | Problem {
  const { from, to }: { readonly from: readonly ProposalState[]; readonly to: ProposalState | undefined } =
    STEPS[step];
  if (from.includes(state)) return to ?? state;
  return problem(
    "WRONG_STATE",
    `One cannot ${step} a proposal that is ${state}; it has to be ${from.join(" or ")}. Make a new proposal instead.`,
    ["state"],
  );
}
