import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { storeFile } from "#server/open-data.ts";
import type { Neo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { asSetting } from "#tests/support/neo4j/store-address.ts";
import { type Ended, runNode } from "#tests/support/run-node.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-commands-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

onNeo4j("[S18] [S43] the commands on a store of a Neo4j server", (server) => {
  const command = async (
    name: string,
    address: Neo4jAddress,
    args: readonly string[] = [],
  ): Promise<Ended> => {
    const ended = await runNode([`server/${name}.ts`, ...args], {
      SCRIBELINE_STORE: asSetting(address),
      SCRIBELINE_DATA: join(folder, "no-data"),
      npm_lifecycle_event: name,
      npm_config_loglevel: "silent",
    }).ended;
    expect(ended.out + ended.err, "the password must not be told").not.toContain(address.password);
    return ended;
  };

  it("dump it, restore it elsewhere, verify it, and refuse a store that is not there", async () => {
    const [from, to] = [server.address({ scheme: "neo4j" }), server.address()];
    const store = await server.open(from);
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    answered(await store.createExamination(id("examination.a"), aPiece(), "2026-11-25T10:00:00.000Z"));
    await store.close();

    const file = join(folder, "dump.jsonl");
    expect(await command("dump-store", from, [file])).toMatchObject({ exit: 0, out: "" });
    const bytes = readFileSync(file, "utf8");
    expect(bytes.split("\n")).toHaveLength(7);
    expect((await command("verify-store", to)).err).toMatch(/^STORE_UNREACHABLE: There is no store at /);
    expect((await command("restore-store", to, [file])).err).toMatch(
      /^Restored 6 records of .* \(store test-/,
    );
    expect(await command("dump-store", to)).toMatchObject({ exit: 0, out: bytes, err: "" });
    expect((await command("verify-store", to)).out).toMatch(/^1 revisions check/);
    const again = await command("restore-store", to, [file]);
    expect(again).toMatchObject({ exit: 2, out: "" });
    expect(again.err).toMatch(/^STORE_NOT_EMPTY/);
    expect(existsSync(join(folder, "no-data"))).toBe(false);
  });

  it("seed a new one and examine a piece on it, with the report that a file gives", async () => {
    const piece = "docs/formats/piece.example.json";
    const onServer = await command("examine-piece", server.address(), [piece]);
    expect(onServer).toMatchObject({ exit: 0, err: "" });
    const onFile = await runNode(["server/examine-piece.ts", piece], {
      SCRIBELINE_DATA: join(folder, "data"),
    }).ended;
    expect(onServer.out).toBe(onFile.out);
    expect(onServer.out.length).toBeGreaterThan(500);
  });

  it("[S55] move a store from a file to a server and back, with one hash all along", async () => {
    const [data, back] = [join(folder, "old"), join(folder, "back")];
    const store = answered(await openSqliteStore(storeFile(data)));
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    await store.close();
    const address = server.address();
    const there = await runNode(["server/move-store.ts", "--from", data, "--to", asSetting(address)]).ended;
    expect(there.exit).toBe(0);
    const home = await runNode(["server/move-store.ts", "--to", back], {
      SCRIBELINE_STORE: asSetting(address),
    }).ended;
    const hashes = `${there.out}${home.out}`.match(/[0-9a-f]{64}/g) ?? [];
    expect(hashes).toHaveLength(4);
    expect(new Set(hashes).size).toBe(1);
    expect(`${there.out}${there.err}${home.out}${home.err}`).not.toContain(address.password);
  });

  it("refuse a setting that is no address", async () => {
    const { exit, err } = await runNode(["server/verify-store.ts"], { SCRIBELINE_STORE: "neo4j:secret" })
      .ended;
    expect(exit).toBe(2);
    expect(err).toMatch(/^WRONG_FORMAT at \/SCRIBELINE_STORE: /);
    expect(err).not.toContain("secret");
  });
});
