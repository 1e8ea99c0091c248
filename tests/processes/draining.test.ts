import { mkdtempSync, rmSync } from "node:fs";
import { Agent } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { send } from "#tests/support/open-http.ts";
import { startServerProcess } from "#tests/support/server-process.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-draining-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const CLIENTS = 24;
/** Milliseconds in which a proxy has to see, on a busy machine too, that the server leaves. */
const DRAIN = 4_000;
const QUERY = JSON.stringify({
  query: "{ revision { number } terms(first: 20) { edges { node { label } } } }",
});

it("[H3] a server that is told to stop breaks no connection of a proxy that looks whether it is ready", async () => {
  const env = { SCRIBELINE_DATA: folder, SCRIBELINE_DRAIN: String(DRAIN) };
  const leaving = await startServerProcess(env);
  const staying = await startServerProcess(env);
  let isOver = false;
  let isReady = true;
  const looking = (async () => {
    while (!isOver && isReady) {
      isReady = (await send(`${leaving.url}readyz`)).status === 200;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  })();
  const broken: string[] = [];
  const answers = { leaving: 0, lastOfItsConnection: 0, staying: 0 };
  const clients = Array.from({ length: CLIENTS }, async () => {
    const agent = new Agent({ keepAlive: true, maxSockets: 1 });
    while (!isOver) {
      const { url } = isReady ? leaving : staying;
      const there = isReady ? "leaving" : "staying";
      try {
        const { status, headers } = await send(`${url}graphql`, {
          ...{ agent, method: "POST", body: QUERY },
          headers: { "Content-Type": "application/json" },
        });
        if (status !== 200) broken.push(`${there}: ${status}`);
        answers[there]++;
        if (there === "leaving" && headers["connection"] === "close") answers.lastOfItsConnection++;
      } catch (failure) {
        broken.push(`${there}: ${failure}`);
      }
    }
    agent.destroy();
  });
  await expect.poll(() => answers.leaving).toBeGreaterThan(CLIENTS * 5);
  leaving.kill("SIGTERM");
  const { exit, err } = await leaving.ended;
  const then = answers.staying;
  await expect.poll(() => answers.staying).toBeGreaterThan(then + CLIENTS * 2);
  isOver = true;
  await Promise.all([...clients, looking]);
  // A slow machine is told what was made ahead, and how long it took.
  const complaints = err.split("\n").filter((line) => line !== "" && !line.includes('"level":"info"'));
  expect({ exit, complaints, broken }).toEqual({ exit: 0, complaints: [], broken: [] });
  expect(answers.lastOfItsConnection).toBeGreaterThan(0);
  staying.kill("SIGTERM");
  expect((await staying.ended).exit).toBe(0);
});
