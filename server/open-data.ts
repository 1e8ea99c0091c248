import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import type { Config } from "./config.ts";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import { type ReferenceTables, tablesOf } from "./ports/reference-tables.ts";
import type { Store } from "./ports/store.ts";
import { readSeed } from "./seed/read-seed.ts";
import { readTables } from "./seed/read-tables.ts";
import { seedStore } from "./seed/seed-store.ts";
import { updateSeed } from "./seed/update-seed.ts";
import { hashFolder, leaveMark, readMark } from "./seed-mark.ts";
import { printAddress } from "./stores/neo4j/neo4j-address.ts";
import { openNeo4jStore } from "./stores/neo4j/open-neo4j-store.ts";
import { openSqliteStore } from "./stores/sqlite/open-sqlite-store.ts";

const SEED_FOLDER = fileURLToPath(new URL("../seed-data", import.meta.url));

/** Path of the store's file in a data folder. */
export const storeFile = (folder: string): string => join(folder, "scribeline.sqlite");

/** Where a store lies: on a Neo4j server, else in a data folder. */
export type StorePlace = Pick<Config, "dataFolder" | "neo4j">;

/** A place in words, without user and password. */
export const printPlace = ({ dataFolder, neo4j }: StorePlace): string =>
  neo4j === undefined ? dataFolder : printAddress(neo4j);

/** Opens the store of a place as it is. The one place that says which adapter keeps it. */
export const openStore = (
  { dataFolder, neo4j }: StorePlace,
  { readOnly }: { readonly readOnly: boolean },
): Promise<Store | Problem> =>
  neo4j === undefined
    ? openSqliteStore(storeFile(dataFolder), { readOnly })
    : openNeo4jStore(neo4j, { readOnly });

export interface OpenedData {
  readonly store: Store;
  readonly seeded: boolean;
  /** Edits by which a newer seed changed a graph that knew only an older one. */
  readonly updated: number;
}

/**
 * Opens the store of a place (a data folder is made so that nobody else of this machine may read it); a new or empty one is
 * seeded first, one that knows only an older seed is brought up to this one.
 */
export async function openData(place: StorePlace): Promise<OpenedData | Problem> {
  const refusal = place.neo4j === undefined ? makeFolder(place.dataFolder) : undefined;
  if (refusal !== undefined) return refusal;
  const store = await openStore(place, { readOnly: false });
  if (isProblem(store)) return store;
  const seeded =
    place.neo4j === undefined ? await seedOnce(store, place.dataFolder) : await seedInTurn(store);
  if (!isProblem(seeded)) return { store, ...seeded };
  await store.close();
  return seeded;
}

/** The same only to read, so that a server can go on writing; to seed it, it is opened to write for that once. */
export async function openDataToRead(place: StorePlace): Promise<OpenedData | Problem> {
  if (place.neo4j !== undefined || existsSync(storeFile(place.dataFolder))) {
    const store = await openStore(place, { readOnly: true });
    if (isProblem(store)) return place.neo4j === undefined ? store : openData(place);
    if (await store.newestRevision()) return { store, seeded: false, updated: 0 };
    await store.close();
  }
  return openData(place);
}

/** The reference tables as they come with the program, whatever the store holds. */
export async function openTables(): Promise<ReferenceTables | Problem> {
  const rows = await readTables(SEED_FOLDER);
  return isProblem(rows) ? rows : tablesOf(rows);
}

function makeFolder(folder: string): Problem | undefined {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    return undefined;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return problem(
      "STORE_UNREACHABLE",
      `The data folder ${folder} cannot be made (${why}); choose another with SCRIBELINE_DATA.`,
    );
  }
}

/** Nothing is read and compared where neither the seed nor the store is another than at the last start. */
async function seedOnce(store: Store, dataFolder: string): Promise<Omit<OpenedData, "store"> | Problem> {
  const [last, now] = await Promise.all([readMark(dataFolder), hashFolder(SEED_FOLDER)]);
  const before = await store.newestRevision();
  if (last?.seed === now && last.newest === before?.hash) return { seeded: false, updated: 0 };
  const seeded = await seed(store);
  const newest = await store.newestRevision();
  if (!isProblem(seeded) && newest) await leaveMark(dataFolder, { seed: now, newest: newest.hash });
  return seeded;
}

/** How long to wait for another program that seeds the same store, in milliseconds: it loses its turn a minute after it died. */
const LONGEST_TURN = 120_000;
const PAUSE = 500;

/** Waits until another program that seeds the store has ended, and then seeds what it left. */
async function seedInTurn(store: Store): Promise<Omit<OpenedData, "store"> | Problem> {
  for (let waited = 0; ; waited += PAUSE) {
    const seeded = await seed(store);
    if (!isProblem(seeded) || seeded.code !== "STORE_LOCKED" || waited >= LONGEST_TURN) return seeded;
    await setTimeout(PAUSE);
  }
}

async function seed(store: Store): Promise<Omit<OpenedData, "store"> | Problem> {
  const content = await readSeed(SEED_FOLDER);
  if (isProblem(content)) return content;
  const seeded = await seedStore(store, content);
  if (isProblem(seeded)) return seeded;
  const updated = seeded ? 0 : await updateSeed(store, content);
  return isProblem(updated) ? updated : { seeded, updated };
}
