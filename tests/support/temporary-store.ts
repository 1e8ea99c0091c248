import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { atEnd } from "./at-end.ts";
import { answered } from "./expect-answer.ts";

/** The path of a store in a new folder, which is removed when the file of tests, or the process, ends. */
export function temporaryPath(): string {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-store-"));
  atEnd(() => rmSync(folder, { recursive: true, force: true }));
  return join(folder, "scribeline.sqlite");
}

/** A store in a new file. */
export const openTemporary = async (): Promise<Store> => answered(await openSqliteStore(temporaryPath()));

/** A store in a new file that is closed and opened again before each call: nothing is kept in memory between two. */
export async function openForgetful(): Promise<Store> {
  const path = temporaryPath();
  let store = answered(await openSqliteStore(path));
  let isClosed = false;
  let last: Promise<unknown> = Promise.resolve();
  /** Calls wait for the one before, as each closes the store under it. */
  const inTurn = <Answer>(call: () => Promise<Answer>): Promise<Answer> => {
    const answer = last.then(async () => {
      await store.close();
      const opened = await openSqliteStore(path);
      if (isProblem(opened)) throw new Error(opened.message);
      store = opened;
      return call();
    });
    last = answer.catch(() => undefined);
    return answer;
  };
  return new Proxy(store, {
    get: (_, method: keyof Store) => {
      // A promise asks what it is resolved with for "then".
      if (typeof store[method] !== "function") return store[method];
      if (method === "close")
        return async () => {
          await last;
          if (!isClosed) await store.close();
          isClosed = true;
        };
      if (method === "dump")
        return async function* () {
          yield* await inTurn(async () => store.dump());
        };
      // What is read slice by slice needs a store that stays open while other calls close theirs.
      if (method === "allTerms" || method === "allClaims" || method === "walkBlocks")
        return async function* (...args: readonly unknown[]) {
          await last;
          const reader = answered(await openSqliteStore(path, { readOnly: true }));
          try {
            yield* (reader[method] as (...args: readonly unknown[]) => AsyncIterable<unknown>)(...args);
          } finally {
            await reader.close();
          }
        };
      return (...args: readonly unknown[]) =>
        inTurn(() => (store[method] as (...args: readonly unknown[]) => Promise<unknown>)(...args));
    },
  });
}
