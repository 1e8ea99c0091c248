import { type Problem, problem } from "../../domain/problem.ts";

/** Primary result codes of SQLite (sqlite.org, "Result and Error Codes"). */
const BUSY = 5;
const LOCKED = 6;
const READONLY = 8;
const IOERR = 10;
const CORRUPT = 11;
const FULL = 13;
const CANTOPEN = 14;
const NOTADB = 26;

/** Tells whether another connection is in the way for the moment. */
export const isBusy = (failure: unknown): boolean => {
  const code = resultCodeOf(failure);
  return code === BUSY || code === LOCKED;
};

/** The primary result code of a failure of SQLite; none of another failure. */
function resultCodeOf(failure: unknown): number | undefined {
  const said = failure as { readonly code?: unknown; readonly errcode?: unknown };
  return said.code === "ERR_SQLITE_ERROR" && typeof said.errcode === "number"
    ? said.errcode & 0xff
    : undefined;
}

/** Says what a failure of SQLite means for the person who keeps the store; `undefined` if it is a defect of ours. */
export function findMediumProblem(failure: unknown): Problem | undefined {
  const detail = `SQLite says: ${String((failure as { readonly message?: unknown }).message)}`;
  switch (resultCodeOf(failure)) {
    case BUSY:
    case LOCKED:
      return problem(
        "STORE_LOCKED",
        `Another program is writing to the store's file and has not ended in time; nothing was written here. Try again, or look what the other program does. (${detail})`,
      );
    case READONLY:
      return problem(
        "STORE_LOCKED",
        `The store can only be read here: it was opened for reading, or its file or folder is write-protected. Nothing was written. (${detail})`,
      );
    case FULL:
    case IOERR:
      return problem(
        "STORE_FULL",
        `The disk did not take the data: it is full, or a limit on files was reached; nothing was written. Make room and try again. (${detail})`,
      );
    case CORRUPT:
    case NOTADB:
      return storeCorrupt(detail);
    case CANTOPEN:
      return problem(
        "STORE_UNREACHABLE",
        `The store's file cannot be opened or made; check that its folder exists and may be written. (${detail})`,
      );
    default:
      return undefined;
  }
}

/** For a file whose bytes are not those of a sound store. */
export const storeCorrupt = (detail: string): Problem =>
  problem(
    "STORE_CORRUPT",
    `The store's file is damaged or is not a database. Move it away and restore the last sound dump. (${detail})`,
  );
