import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, expect, it } from "vitest";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { askServer, startServerProcess } from "#tests/support/server-process.ts";
import { severalServers } from "./several-servers.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-processes-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

severalServers("a file", () => {
  const data = join(folder, "shared");
  return {
    env: { SCRIBELINE_DATA: data },
    open: async () => answered(await openSqliteStore(storeFile(data))),
  };
});

it("[S19] two servers that start on a file of an earlier version bring it up to date once, and both serve it", async () => {
  const data = mkdtempSync(join(folder, "old-"));
  const kept = new URL("../stores/sqlite/kept/version-1.sqlite.gz", import.meta.url);
  writeFileSync(storeFile(data), gunzipSync(readFileSync(kept)));
  const env = { SCRIBELINE_DATA: data };
  const servers = await Promise.all([startServerProcess(env), startServerProcess(env)]);
  for (const { url } of servers)
    expect(await askServer(url, "{ revision { number } examinations { totalCount } }")).toMatchObject({
      data: { revision: { number: 3 }, examinations: { totalCount: 1 } },
      sequence: 1,
    });
  const store = answered(await openSqliteStore(storeFile(data)));
  const [first, ...more] = await store.writesAfter(0, 9);
  expect(first).toMatchObject({ sequence: 1, revision: 3, restored: true });
  expect(more).toEqual([]);
  expect(await store.verify()).toMatchObject({ revisions: 3 });
  await store.close();
  for (const server of servers) server.kill("SIGTERM");
  expect((await Promise.all(servers.map(({ ended }) => ended))).map(({ exit }) => exit)).toEqual([0, 0]);
});
