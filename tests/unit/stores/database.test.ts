import { DatabaseSync } from "node:sqlite";
import { describe, expect, it } from "vitest";
import { problem } from "#server/domain/problem.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { type Database, wrapDatabase } from "#server/stores/sqlite/database.ts";
import { refusedWith } from "#tests/support/expect-answer.ts";

/** What node:sqlite throws for a result code. */
const failing = (errcode: number) => () => {
  throw Object.assign(new Error("the disk says no"), { code: "ERR_SQLITE_ERROR", errcode });
};
function opened(): Database {
  const database = wrapDatabase(new DatabaseSync(":memory:"));
  database.raw.exec("CREATE TABLE kept (word TEXT)");
  return database;
}
const words = (database: Database) =>
  database.all<{ word: string }>("SELECT word FROM kept").map(({ word }) => word);
const add = (database: Database, word: string) => database.run("INSERT INTO kept VALUES (:word)", { word });

describe("a write", () => {
  it("is kept whole if it gives an answer", async () => {
    const database = opened();
    expect(await database.write(() => [add(database, "a"), add(database, "b")].length)).toBe(2);
    expect(words(database)).toEqual(["a", "b"]);
  });

  it("leaves nothing if it gives a problem or fails", async () => {
    const database = opened();
    const refusal = problem("EMPTY_LIST", "Nothing.");
    const refused = await database.write(() => {
      add(database, "a");
      return refusal;
    });
    expect(refused).toBe(refusal);
    const defect = () =>
      database.write(() => {
        add(database, "a");
        throw new TypeError("a defect");
      });
    await expect(defect()).rejects.toThrow(TypeError);
    expect(words(database)).toEqual([]);
    await database.write(() => add(database, "after"));
    expect(words(database)).toEqual(["after"]);
  });
});

describe("[S11] a failing medium", () => {
  it.each([
    [5, "STORE_LOCKED"],
    [6, "STORE_LOCKED"],
    [8, "STORE_LOCKED"],
    [261, "STORE_LOCKED"],
    [10, "STORE_FULL"],
    [778, "STORE_FULL"],
    [13, "STORE_FULL"],
    [11, "STORE_CORRUPT"],
    [26, "STORE_CORRUPT"],
    [14, "STORE_UNREACHABLE"],
  ])("with result code %i is %s, in a write and in a read", async (errcode, code) => {
    const database = opened();
    expect(refusedWith(await database.write(failing(errcode)))).toBe(code);
    let thrown: unknown;
    try {
      await database.read(failing(errcode));
    } catch (failure) {
      thrown = failure;
    }
    expect(thrown).toBeInstanceOf(StoreFailed);
    expect((thrown as StoreFailed).problem.code).toBe(code);
    expect((thrown as StoreFailed).cause).toBeInstanceOf(Error);
    expect(await database.read(() => "still reads")).toBe("still reads");
  });

  it("is told from a defect of the program, which is thrown as it is", async () => {
    const database = opened();
    await expect(database.read(failing(1))).rejects.toThrow("the disk says no");
    await expect(database.write(() => database.run("INSERT INTO none VALUES (1)"))).rejects.toThrow(
      /no such table/,
    );
  });
});
