import { problem } from "../domain/problem.ts";
import { checkWords } from "../domain/proposals/check-words.ts";
import type { Proposal } from "../domain/proposals/proposal.ts";
import type { Store } from "../ports/store.ts";
import { type Refusal, refusalFrom } from "./refusal.ts";
import { unfitOf } from "./unfit-of.ts";

/**
 * Refuses a proposal that is too large or made on a revision that there is not; an open one also if it says nothing of why,
 * changes nothing, or the graph would refuse it.
 */
export async function refuseUnfitChange(
  { store }: { readonly store: Store },
  { state, title, why, change, base }: Pick<Proposal, "state" | "title" | "why" | "change" | "base">,
): Promise<Refusal | undefined> {
  const newest = (await store.newestRevision())?.number ?? 0;
  const told = [
    ...checkWords({ title, why, change }),
    ...(base >= 0 && base <= newest
      ? []
      : [
          problem(
            "UNKNOWN_REVISION",
            `There is no revision ${base}; name one from 0 to ${newest}, or none.`,
            ["base"],
          ),
        ]),
  ];
  if (told.length > 0 || state !== "open") return refusalFrom(told);
  const unsaid = (
    [
      ["title", title, "Say in a few words what it is."],
      ["why", why, "Say why the graph should change, so that others can decide."],
    ] as const
  )
    .filter(([, text]) => text.trim() === "")
    .map(([field, , message]) => problem("EMPTY_LIST", message, [field]));
  const unfit = await unfitOf(store, change);
  return refusalFrom([
    ...unsaid,
    ...(unfit === undefined ? [] : [{ ...unfit, path: ["change", ...unfit.path] }]),
  ]);
}
