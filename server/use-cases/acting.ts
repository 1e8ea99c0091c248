import type { Deed } from "../domain/deed.ts";
import type { Caller } from "../domain/people/caller.ts";
import { type About, type Action, mayDo } from "../domain/people/may-do.ts";
import type { Clock } from "../ports/clock.ts";
import type { Along } from "../ports/store.ts";
import { type Refusal, refusalFrom } from "./refusal.ts";

/** Who acts, and by which clock. */
export interface Acting {
  readonly caller: Caller | undefined;
  readonly now: Clock;
}

/** A refusal if the caller may not do it. */
export function refuseCaller({ caller }: Acting, action: Action, about?: About): Refusal | undefined {
  const problem = mayDo(caller, action, about);
  return refusalFrom(problem === undefined ? [] : [problem]);
}

/** What goes along with a write, so that the ledger tells who did it. The caller was let through before. */
export function signed(
  { caller, now }: Acting,
  did: string,
  about?: string,
): Along & { readonly deed: Deed } {
  if (caller === undefined) throw new Error(`Nobody may ${did}; it was to be refused before`);
  return { deed: { by: caller.id, at: now(), did, ...(about === undefined ? {} : { about }) } };
}
