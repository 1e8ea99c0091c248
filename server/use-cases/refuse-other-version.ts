import { problem } from "../domain/problem.ts";
import type { Refusal } from "./refusal.ts";

/**
 * Refuses what was made on another version than the one that was read. Also on a later one, which there is not yet: what is written then would
 * rest on what no longer stood.
 */
export function refuseOtherVersion(
  what: string,
  { id, version }: { readonly id: string; readonly version: number },
  on: number,
): Refusal | undefined {
  if (version === on) return undefined;
  return {
    refused: [
      problem(
        "CHANGED_MEANWHILE",
        `The ${what} ${id} was changed meanwhile: you looked at version ${on}, the newest is ${version}. Look at it again.`,
        ["expectedVersion"],
      ),
    ],
  };
}
