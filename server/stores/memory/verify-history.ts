import { findBrokenLink } from "../../chain/find-broken-link.ts";
import { storeTampered } from "../../chain/refusals.ts";
import type { Problem } from "../../domain/problem.ts";
import { NO_HASH } from "../../domain/revision.ts";
import type { History } from "./graph-history.ts";

/** Recomputes the chain of hashes. */
export function verifyHistory(
  history: History,
): { readonly revisions: number; readonly head: string } | Problem {
  for (const [index, { revision, change }] of history.entries()) {
    const broken = findBrokenLink(revision, change, history[index - 1]?.revision);
    if (broken !== undefined) return storeTampered(index + 1, broken);
  }
  return { revisions: history.length, head: history.at(-1)?.revision.hash ?? NO_HASH };
}
