import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { openLiveSocket } from "#tests/support/open-socket.ts";
import { startServerProcess } from "#tests/support/server-process.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-live-drain-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const CONNECTIONS = 200;
/** Milliseconds. */
const DRAIN = 1500;
/** What a busy machine takes to end a process, in milliseconds; requests under way have 8 seconds of their own. */
const REST = 6000;
const NEWS = "subscription { news { sequence } }";
const PRESENCE = 'subscription { presence(examination: "examination.x", isEditing: true) { count } }';

it("[Z3] [H3] a server that is told to stop says so to 200 live connections at once, and ends when its drain does", async () => {
  const server = await startServerProcess({ SCRIBELINE_DATA: folder, SCRIBELINE_DRAIN: String(DRAIN) });
  const sockets = await Promise.all(
    Array.from({ length: CONNECTIONS }, async () => {
      const socket = await openLiveSocket(server.url);
      for (const [id, query] of Object.entries({ n: NEWS, p: PRESENCE })) socket.subscribe(id, query);
      await socket.next();
      return socket;
    }),
  );
  const told = performance.now();
  server.kill("SIGTERM");
  const closed = await Promise.all(sockets.map((socket) => socket.closed));
  const closedAfter = performance.now() - told;
  const { exit, err } = await server.ended;
  const endedAfter = performance.now() - told;
  expect(new Set(closed.map(({ code, reason }) => `${code} ${reason}`))).toEqual(
    new Set(["1012 Told to stop; connect again"]),
  );
  expect(exit).toBe(0);
  expect(err).not.toMatch(/"level":"(warn|error)"/);
  // They are told at the beginning of the drain, and none of them holds up its end.
  expect(closedAfter).toBeLessThan(endedAfter);
  expect(endedAfter).toBeGreaterThan(DRAIN);
  expect(endedAfter).toBeLessThan(DRAIN + REST);
});
