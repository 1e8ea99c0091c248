import parsePrometheusTextFormat from "parse-prometheus-text-format";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openHttp, post, send } from "#tests/support/open-http.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const CREATE = "mutation BeginPiece($piece: PieceInput!) { createExamination(piece: $piece) { __typename } }";

describe("the numbers of a running server", () => {
  let server: Awaited<ReturnType<typeof openHttp>>;
  beforeAll(async () => {
    server = await openHttp([sawGraph]);
  });
  afterAll(() => server.stop());
  const metrics = async (headers: Record<string, string> = {}) => send(`${server.url}metrics`, { headers });
  /** Value of the sample with exactly these labels. */
  const sample = async (name: string, labels: Record<string, string> = {}): Promise<number> => {
    const family = parsePrometheusTextFormat((await metrics()).text).find((each) => each.name === name);
    const found = family?.metrics.find(
      (each) => JSON.stringify(each.labels ?? {}) === JSON.stringify(labels),
    );
    return Number(found?.value ?? 0);
  };

  it("[H10] come in the format that is asked for", async () => {
    const older = await metrics({ Accept: "*/*" });
    expect(older.status).toBe(200);
    expect(older.headers["content-type"]).toBe("text/plain; version=0.0.4; charset=utf-8");
    const newer = await metrics({
      Accept: "application/openmetrics-text;version=1.0.0;q=0.5,text/plain;version=0.0.4;q=0.3",
    });
    expect(newer.headers["content-type"]).toBe("application/openmetrics-text; version=1.0.0; charset=utf-8");
    expect(newer.text.endsWith("\n# EOF\n")).toBe(true);
  });

  it("[H10] have every family once, with its samples together, told what it is", async () => {
    const { text } = await metrics({ Accept: "application/openmetrics-text" });
    const families = [...text.matchAll(/^# TYPE (\S+) (\S+)\n(?:# UNIT \1 (\S+)\n)?# HELP \1 (.+)$/gm)];
    expect(families.length).toBe(text.match(/^# TYPE/gm)?.length);
    expect(new Set(families.map(([, name]) => name)).size).toBe(families.length);
    for (const [, name = "", , unit] of families) {
      expect(name).toMatch(/^(scribeline|process|nodejs)_[a-z_]+$/);
      if (unit) expect(name.endsWith(`_${unit}`)).toBe(true);
    }
    let family = "";
    for (const line of text.split("\n")) {
      family = /^# TYPE (\S+)/.exec(line)?.[1] ?? family;
      if (line !== "" && !line.startsWith("#"))
        expect(line).toMatch(
          new RegExp(
            `^${family}(_total|_bucket|_sum|_count)?(\\{[a-z]+="[^"]*"(,[a-z]+="[^"]*")*\\})? [-+.e\\dInf]+$`,
          ),
        );
    }
  });

  it("[H12] count requests, operations and calls of the store, and where it stands", async () => {
    const before = {
      api: await sample("scribeline_requests_total", { kind: "api", status: "200" }),
      foreign: await sample("scribeline_requests_total", { kind: "page", status: "421" }),
      other: await sample("scribeline_operations_total", {
        operation: "other",
        type: "mutation",
        outcome: "answered",
      }),
    };
    await post(server.url, { query: CREATE, variables: { piece: sawnChest } });
    await send(server.url, { headers: { Host: "evil.example" } });
    await post(server.url, { query: "query Broken { nothing }" });
    expect(await sample("scribeline_requests_total", { kind: "api", status: "200" })).toBe(before.api + 2);
    expect(await sample("scribeline_requests_total", { kind: "page", status: "421" })).toBe(
      before.foreign + 1,
    );
    expect(
      await sample("scribeline_operations_total", {
        operation: "BeginPiece",
        type: "mutation",
        outcome: "answered",
      }),
    ).toBe(1);
    expect(await sample("scribeline_operation_errors_total", { code: "GRAPHQL_VALIDATION_FAILED" })).toBe(1);
    expect(
      await sample("scribeline_store_calls_total", {
        call: "createExamination",
        way: "write",
        outcome: "answered",
      }),
    ).toBe(1);
    expect(await sample("scribeline_revision")).toBe(1);
    expect(await sample("scribeline_store_write")).toBe(2);
    expect(await sample("scribeline_followed_write")).toBe(2);
    expect(await sample("scribeline_writes_behind")).toBe(0);
    expect(await sample("process_resident_memory_bytes")).toBeGreaterThan(1_000_000);
    expect(await sample("process_cpu_seconds_total")).toBeGreaterThan(0);
    expect(await sample("scribeline_requests_under_way")).toBe(1);
  });

  it("[H12] count answers that were kept and served again", async () => {
    const query = "query ($piece: PieceInput!) { examine(piece: $piece) { ... on Examined { report } } }";
    const kept = async (outcome: string) => await sample("scribeline_kept_answers_total", { outcome });
    const before = { hit: await kept("hit"), miss: await kept("miss") };
    const first = await post(server.url, { query, variables: { piece: sawnChest } });
    const again = await post(server.url, { query, variables: { piece: sawnChest } });
    expect(again.text).toBe(first.text);
    expect(await kept("miss")).toBe(before.miss + 1);
    expect(await kept("hit")).toBe(before.hit + 1);
  });

  it("[H12] tell how many stored examinations are to be examined again", async () => {
    const examined = async () => await sample("scribeline_standings_examined_total", { outcome: "examined" });
    await post(server.url, { query: CREATE, variables: { piece: { ...sawnChest, title: "Another" } } });
    const left = async () => Number(await sample("scribeline_standings_known")) - Number(await examined());
    await expect
      .poll(async () => [await sample("scribeline_standings_waiting"), await left()])
      .toEqual([0, 0]);
    expect(await examined()).toBeGreaterThan(0);
  });

  it("[H13] hold nothing that anybody typed", async () => {
    const secret = "MrsSecretsChest";
    const title = { ...sawnChest, title: secret };
    await post(server.url, { query: CREATE, variables: { piece: title } });
    await post(server.url, {
      query: `query ${secret} { search(words: "${secret}", first: 1) { totalCount } }`,
    });
    await post(server.url, { query: `{ node(id: "examination.${secret}") { id } }` });
    await send(`${server.url}terms/${secret}`);
    const { text } = await metrics();
    expect(text).not.toContain(secret);
    expect(text).not.toMatch(/examination\.\w|claim\.|127\.0\.0\.1/);
  });

  it.each([
    [{ Host: "graph.museum.example" }, 421],
    [{ "X-Forwarded-For": "10.0.0.7" }, 404],
    [{ Forwarded: "for=10.0.0.7" }, 404],
    [{ Via: "1.1 proxy" }, 404],
    [{ Origin: "http://localhost:3000" }, 404],
    [{ Host: "localhost:9" }, 200],
  ] as [Record<string, string>, number][])("[H13] asked with %o are answered %i", async (headers, status) => {
    expect((await metrics(headers)).status).toBe(status);
  });
});
