import type { DatabaseSync, SQLInputValue, SQLOutputValue } from "node:sqlite";
import { sha256 } from "../../chain/sha256.ts";

/** The columns of a version of an examination that its digest is made of, in their order. */
export const DIGESTED = "id, version, undo_to, deleted, changed_at, piece";

/**
 * Lets SQL ask for `digest_of_version(id, version, undo_to, deleted, changed_at, piece)`: versions are not in the chain of
 * hashes, so each has a digest of its own, by which damage is found.
 */
export function addDigest(database: DatabaseSync): void {
  database.function(
    "digest_of_version",
    { deterministic: true, varargs: true },
    (...columns: SQLOutputValue[]): SQLInputValue => sha256(JSON.stringify(columns)),
  );
}
