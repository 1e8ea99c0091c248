import { createHash } from "node:crypto";
import { existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Piece } from "#server/domain/examination.ts";
import { planGraph, type Wishes } from "#server/generator/graph-plan.ts";
import { makePiece } from "#server/generator/make-piece.ts";
import { printGraph, printPieces } from "#server/generator/print-graph.ts";
import { worldOf } from "#server/generator/world.ts";
import { writeGraph } from "#server/generator/write-graph.ts";
import type { Store } from "#server/ports/store.ts";
import { boundOfClaim } from "#server/reasoning/bound-of-claim.ts";
import { mirroredStore } from "#server/stores/mirror/mirrored-store.ts";
import { type Mirror, openMirror } from "#server/stores/mirror/open-mirror.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";

const CACHE = fileURLToPath(new URL("../../../.cache/bench", import.meta.url));
export const EXAMINATIONS = 1_000;

/** Numbers of claims to measure at: `BENCH_CLAIMS`, such as 10000,100000,1000000. */
export const sizes = (otherwise = "10000,100000"): readonly number[] =>
  (process.env["BENCH_CLAIMS"] || otherwise).split(",").map(Number);

/** What made-up graphs are measured on, unless a bench says otherwise. */
export const wishesOf = (claims: number, claimsATerm = 4): Wishes => ({ claims, claimsATerm, seed: 1 });

/** A folder for what was made of these wishes, kept from run to run as long as the generator makes the same. */
export function folderOf(wishes: Wishes): string {
  const sample = createHash("sha256");
  for (const lines of printGraph(wishesOf(1_000))) sample.update(lines);
  for (const lines of printPieces(wishesOf(1_000), 3)) sample.update(lines);
  const version = sample.digest("hex").slice(0, 8);
  return join(CACHE, `${wishes.claims}-${wishes.claimsATerm}-${wishes.seed}-${version}`);
}

/** The data folder of a store that holds such a graph and a thousand pieces; made where it is missing. */
export async function dataFolderOf(wishes: Wishes): Promise<string> {
  const folder = join(folderOf(wishes), "data");
  if (existsSync(folder)) {
    // Brings it up to the version of today, as a reader may not.
    await answered(await openSqliteStore(join(folder, "scribeline.sqlite"))).close();
    return folder;
  }
  const part = `${folder}.part`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  const store = answered(await openSqliteStore(join(part, "scribeline.sqlite")));
  console.log(`  making ${wishes.claims} claims up …`);
  answered(await writeGraph(store, { ...wishes, examinations: EXAMINATIONS }));
  await store.close();
  renameSync(part, folder);
  return folder;
}

/** The first made-up pieces of such a graph. */
export function piecesOf(wishes: Wishes, count: number): readonly Piece[] {
  const world = worldOf(planGraph(wishes));
  return Array.from({ length: count }, (_, n) => makePiece(world, n + 1).piece);
}

/** The store of such a graph to read from, with a mirror in front that is built. */
export async function openMirrored(wishes: Wishes): Promise<Mirrored> {
  const path = join(await dataFolderOf(wishes), "scribeline.sqlite");
  const store = answered(await openSqliteStore(path, { readOnly: true }));
  const mirror = openMirror(store, {
    log: (line) => console.log(`  ${JSON.stringify(line)}`),
    ...{ checkEvery: 0, boundOf: boundOfClaim },
  });
  await mirror.built;
  return {
    ...{ store, mirror, mirrored: mirroredStore(store, mirror) },
    close: async () => {
      await mirror.stop();
      await store.close();
    },
  };
}

export interface Mirrored {
  readonly store: Store;
  readonly mirror: Mirror;
  readonly mirrored: Store;
  close(): Promise<void>;
}
