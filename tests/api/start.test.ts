import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { afterAll, describe, expect, it } from "vitest";
import { post, send } from "#tests/support/open-http.ts";
import { runNode } from "#tests/support/run-node.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-start-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const start = (env: Readonly<Record<string, string>>) =>
  runNode(["server/start.ts", "--no-build"], { SCRIBELINE_PORT: "0", ...env });

async function addressOf(server: ReturnType<typeof runNode>): Promise<string> {
  await expect.poll(server.said).toMatch(/http:\/\/127\.0\.0\.1:\d+\//);
  return server.said().match(/http:\/\/127\.0\.0\.1:\d+\//)?.[0] ?? "";
}

describe("npm start", () => {
  it("[A28] seeds an empty folder once, prints the address, answers, keeps what is recorded, and [A21] stops", async () => {
    const data = join(folder, "data");
    const first = start({ SCRIBELINE_DATA: data });
    const url = await addressOf(first);
    expect(first.said()).toContain("Seeded");
    expect(statSync(data).mode & 0o077).toBe(0);
    const query = "{ revision { number } terms(first: 1) { totalCount } examinations { totalCount } }";
    const before = JSON.parse((await post(url, { query })).text).data;
    expect(before.terms.totalCount).toBeGreaterThan(100);
    const made = await post(url, {
      query: `mutation { createExamination(piece: {
        title: "Kept", examined: 2026, attribution: { date: "1760" }, parts: [], observations: []
      }) { __typename } }`,
    });
    expect(made.text).toContain("ExaminationChanged");
    first.child.kill("SIGTERM");
    const ended = await first.ended;
    expect({ exit: ended.exit, err: ended.err }).toEqual({ exit: 0, err: "" });

    const second = start({ SCRIBELINE_DATA: data });
    const again = await addressOf(second);
    expect(second.said()).not.toContain("Seeded");
    const after = JSON.parse((await post(again, { query })).text).data;
    expect(after).toEqual({
      ...before,
      examinations: { totalCount: before.examinations.totalCount + 1 },
    });
    second.child.kill("SIGINT");
    expect((await second.ended).exit).toBe(0);
  });

  it("[A28] says that the port is taken, or the folder by an earlier version, and what to do; the first goes on", async () => {
    const data = join(folder, "shared");
    const first = start({ SCRIBELINE_DATA: data });
    const url = await addressOf(first);
    const { port } = new URL(url);
    const taken = await start({ SCRIBELINE_DATA: join(folder, "other"), SCRIBELINE_PORT: port }).ended;
    expect(taken.exit).toBe(1);
    expect(taken.err).toContain(`Port ${port} of 127.0.0.1 is taken`);
    expect(taken.err).toContain(`SCRIBELINE_PORT=${Number(port) + 1} npm start`);
    const kept = join(folder, "kept");
    mkdirSync(kept);
    const alone = new DatabaseSync(join(kept, "scribeline.sqlite-writer"));
    alone.exec("BEGIN EXCLUSIVE");
    const locked = await start({ SCRIBELINE_DATA: kept }).ended;
    alone.close();
    expect(locked.exit).toBe(1);
    expect(locked.err).toContain("SCRIBELINE_DATA");
    await expect.poll(async () => (await send(`${url}readyz`)).status).toBe(200);
    first.child.kill("SIGTERM");
    expect((await first.ended).exit).toBe(0);
  });

  it("[A28] says that the store is damaged, and leaves it as it is", async () => {
    const data = join(folder, "damaged");
    mkdirSync(data);
    const store = join(data, "scribeline.sqlite");
    writeFileSync(store, "x".repeat(8192));
    const { exit, out, err } = await start({ SCRIBELINE_DATA: data }).ended;
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(err).toContain("damaged");
    expect(readFileSync(store, "utf8")).toBe("x".repeat(8192));
  });

  it("[A22] says all that is wrong with its settings, and starts nothing", async () => {
    const { exit, out, err } = await start({ SCRIBELINE_PORT: "high", SCRIBELINE_DEADLINE: "soon" }).ended;
    expect({ exit, out }).toEqual({ exit: 1, out: "" });
    expect(err).toMatch(/^SCRIBELINE_PORT is "high"; .*\nSCRIBELINE_DEADLINE is "soon"; .*\n$/);
  });
});
