import { problem } from "../domain/problem.ts";
import type { Proposal } from "../domain/proposals/proposal.ts";
import type { Store } from "../ports/store.ts";
import { type Refusal, refusalFrom } from "./refusal.ts";

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
