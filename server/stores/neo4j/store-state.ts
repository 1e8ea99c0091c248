import { linkWritten, type MadeByWrite } from "../../chain/link-written.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import type { WriteNote, Written } from "../../domain/written.ts";
import type { Run } from "./database.ts";
import { WRITE_NODE, type WriteNode, writtenOf } from "./writes.ts";

/** What the node of a store says. */
export interface StoreState {
  /** Number of the newest revision; what lies beyond is not there yet. */
  readonly revision: number;
  /** Number of the newest write, of the graph or an examination. */
  readonly sequence: number;
  /** The hash of that write. */
  readonly head: string | null;
  /** The key of a write that takes several transactions and has not ended. */
  readonly stagedBy: string | null;
  /** Whether that one has lately been heard of. */
  readonly isStaging: boolean | null;
  /** How many of its steps it has done. */
  readonly stagedSteps: number;
}

/**
 * For how long a write of several transactions keeps others out after its last one, in milliseconds by the clock of the
 * server. A lease that runs longer than two of these was taken before that clock was set back, and is over.
 */
const LEASE = 60_000;

/**
 * Locks the store against other writers until the end of this transaction, then reads how it stands: the other way round,
 * two writers could read the same state.
 */
export async function lockStore(run: Run, key: string): Promise<StoreState> {
  await run("MATCH (s:Store {name: $store}) SET s.lockedBy = $key", { key });
  const [state] = await run<StoreState>(
    `MATCH (s:Store {name: $store})
     RETURN s.revision AS revision, s.sequence AS sequence, s.head AS head, s.stagedBy AS stagedBy,
       timestamp() < s.stagedUntil AND s.stagedUntil <= timestamp() + 2 * $lease AS isStaging,
       coalesce(s.stagedSteps, 0) AS stagedSteps`,
    { lease: LEASE },
  );
  if (state === undefined) throw new Error("The node of the store is gone");
  return state;
}

/** The next line of the ledger of a store that stands so. */
export const lineAfter = (
  { sequence, head }: Pick<StoreState, "sequence" | "head">,
  note: WriteNote,
  made: MadeByWrite,
): Written => deepFreeze(linkWritten(note, made, head === null ? undefined : { sequence, hash: head }));

/** What was written under this key before, if anything was. */
export async function findWrite(run: Run, key: string): Promise<Written | undefined> {
  const [row] = await run<{ written: WriteNode }>(
    `MATCH (w:Write {store: $store, key: $key}) RETURN ${WRITE_NODE}`,
    { key },
  );
  return row && writtenOf(row.written);
}

/** Keeps other writers out until this write ends, or for a minute; `steps` of it are done. */
export const keepStage = (run: Run, key: string, steps: number): Promise<unknown> =>
  run(
    `MATCH (s:Store {name: $store})
     SET s.stagedBy = $key, s.stagedUntil = timestamp() + $lease, s.stagedSteps = $steps`,
    { key, lease: LEASE, steps },
  );

/** Makes a write visible, under its key, and lets others write. `last` is its last line in the ledger. */
export const endWrite = (run: Run, key: string, revision: number, last: Written): Promise<unknown> =>
  run(
    `MATCH (s:Store {name: $store})
     SET s.revisionBefore = s.revision, s.sequenceBefore = s.sequence, s.revision = $revision, s.sequence = $sequence, s.head = $hash
     REMOVE s.lockedBy, s.stagedBy, s.stagedUntil, s.stagedSteps
     WITH s MATCH (w:Write {store: $store, sequence: $sequence}) SET w.key = $key`,
    { key, revision, sequence: last.sequence, hash: last.hash },
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
