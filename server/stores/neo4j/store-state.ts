import { type Problem, problem } from "../../domain/problem.ts";
import type { Run } from "./database.ts";

/** What the node of a store says. */
export interface StoreState {
  /** Number of the newest revision; what lies beyond is not there yet. */
  readonly revision: number;
  /** Number of the newest write, of the graph or an examination. */
  readonly sequence: number;
  /** The key of a write that takes several transactions and has not ended. */
  readonly stagedBy: string | null;
  /** Whether that one has lately been heard of. */
  readonly isStaging: boolean | null;
  /** How many of its steps it has done. */
  readonly stagedSteps: number;
}

/** What a write did, kept with its key, so that a write tried again finds that it was kept. */
export interface WriteNote {
  readonly revision?: number;
  readonly examination?: string;
  readonly version?: number;
  readonly restored?: true;
}

/** For how long a write of several transactions keeps others out after its last one, in milliseconds. */
const LEASE = 60_000;

/**
 * Locks the store against other writers until the end of this transaction, then reads how it stands: the other way round,
 * two writers could read the same state.
 */
export async function lockStore(run: Run, key: string): Promise<StoreState> {
  await run("MATCH (s:Store {name: $store}) SET s.lockedBy = $key", { key });
  const [state] = await run<StoreState>(
    `MATCH (s:Store {name: $store})
     RETURN s.revision AS revision, s.sequence AS sequence, s.stagedBy AS stagedBy,
       s.stagedUntil > timestamp() AS isStaging, coalesce(s.stagedSteps, 0) AS stagedSteps`,
  );
  if (state === undefined) throw new Error("The node of the store is gone");
  return state;
}

/** What was written under this key before, if anything was. */
export async function findWrite(run: Run, key: string): Promise<WriteNote | undefined> {
  const [row] = await run<{ note: WriteNote }>(
    `MATCH (w:Write {store: $store, key: $key})
     RETURN w {.revision, .examination, .version} AS note`,
    { key },
  );
  return row?.note;
}

/** Keeps other writers out until this write ends, or for a minute; `steps` of it are done. */
export const keepStage = (run: Run, key: string, steps: number): Promise<unknown> =>
  run(
    `MATCH (s:Store {name: $store})
     SET s.stagedBy = $key, s.stagedUntil = timestamp() + $lease, s.stagedSteps = $steps`,
    { key, lease: LEASE, steps },
  );

/** Makes a write visible, and lets others write. */
export const endWrite = (
  run: Run,
  key: string,
  {
    revision,
    sequence,
    note,
  }: { readonly revision: number; readonly sequence: number; readonly note: WriteNote },
): Promise<unknown> =>
  run(
    `MATCH (s:Store {name: $store})
     SET s.revision = $revision, s.sequence = $sequence
     REMOVE s.lockedBy, s.stagedBy, s.stagedUntil, s.stagedSteps
     CREATE (w:Write {store: $store, key: $key, sequence: $sequence}) SET w += $note`,
    { key, revision, sequence, note },
  );

/** Lets others write where a write of several transactions came to nothing. */
export const endStage = (run: Run): Promise<unknown> =>
  run("MATCH (s:Store {name: $store}) REMOVE s.lockedBy, s.stagedBy, s.stagedUntil, s.stagedSteps");

/** For a store that another program is just filling. */
export const isBeingFilled = (): Problem =>
  problem(
    "STORE_LOCKED",
    "Another program is writing much to the store; nothing was written here. Try again when it has ended.",
  );
