import type { NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import { buildArrays } from "./build-arrays.ts";
import { findDifference } from "./find-difference.ts";
import { patchArrays } from "./patch-arrays.ts";
import { neighbourhoodReader } from "./read-neighbourhood.ts";
import { rowsOf } from "./rows-of.ts";
import { walkEdits } from "./walk-edits.ts";

/** How many of the newest revisions are made by patching. */
const PATCHED = 20;

export interface VerifiedMirror {
  readonly terms: number;
  readonly claims: number;
  /** Revisions that were patched on. */
  readonly patched: number;
  readonly asks: number;
}

/**
 * Builds a mirror of some revisions ago, patches it to the newest, and compares: all its rows with those of one built anew,
 * then the answers to so many asks at random with the store's. Refuses with what differs (`STORE_CORRUPT`).
 */
export async function verifyMirror(
  store: Store,
  { asks, random }: { readonly asks: number; readonly random: () => number },
): Promise<VerifiedMirror | Problem> {
  const newest = (await store.newestRevision())?.number ?? 0;
  const from = Math.max(0, newest - PATCHED);
  const arrays = await buildArrays(store.walkBlocks(from), from);
  for (let revision = from + 1; revision <= newest; revision++)
    patchArrays(arrays, revision, walkEdits((await store.changeAt(revision)) ?? []));
  const anew = rowsOf(await buildArrays(store.walkBlocks(newest), newest));
  const rows = rowsOf(arrays);
  const at = anew.findIndex((row, i) => rows[i] !== row);
  if (at >= 0 || rows.length !== anew.length)
    return differs(
      `patched from revision ${from} to ${newest} it does not hold "${anew[at] ?? rows.at(-1)}"`,
    );

  const reader = neighbourhoodReader(arrays, store, { claims: 100_000, terms: 100_000 });
  const mirror = { neighbourhood: ({ at: _, ...ask }: NeighbourhoodAsk) => reader.read(ask) };
  const found = await findDifference(mirror, store, arrays, { asks, random });
  if (found === undefined)
    return { terms: arrays.terms.size, claims: arrays.claims.size, patched: newest - from, asks };
  return differs(`the ${found.in} of the walk from ${found.ask.seeds.join(", ")} are others in the store`);
}

const differs = (what: string): Problem =>
  problem(
    "STORE_CORRUPT",
    `The mirror and the store differ: ${what}. Run npm run verify; if the store checks, go without the mirror (SCRIBELINE_MIRROR=off) and tell us.`,
  );
