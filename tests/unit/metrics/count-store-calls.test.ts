import { describe, expect, it } from "vitest";
import { problem } from "#server/domain/problem.ts";
import { countStoreCalls } from "#server/metrics/count-store-calls.ts";
import { printMetrics } from "#server/metrics/print-metrics.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const commit = { change: sawGraph, by: "test", at: "2026-01-01T00:00:00Z", message: "test" };

describe("the calls of a store", () => {
  it("[H12] are counted by what came of them, and come through as they were", async () => {
    const inner = openMemoryStore();
    let clock = 0;
    const { store, tell } = countStoreCalls(inner, () => (clock += 20));
    expect(await store.commit(commit)).toMatchObject({ number: 1 });
    expect(await store.commit({ ...commit, expected: 0 })).toMatchObject({ code: "CHANGED_MEANWHILE" });
    expect(await store.newestRevision()).toMatchObject({ number: 1 });
    inner.newestRevision = () =>
      Promise.reject(new StoreFailed(problem("STORE_UNREACHABLE", "gone"), undefined));
    await expect(store.newestRevision()).rejects.toThrow("gone");
    inner.commit = async () => problem("STORE_FULL", "full");
    expect(await store.commit(commit)).toMatchObject({ code: "STORE_FULL" });
    await expect(store.listTerms({}, { first: 0 })).rejects.toThrow(RangeError);
    const lines = printMetrics(await tell(), "plain").split("\n");
    for (const line of [
      'scribeline_store_calls_total{call="commit",way="write",outcome="answered"} 1',
      'scribeline_store_calls_total{call="commit",way="write",outcome="refused"} 1',
      'scribeline_store_calls_total{call="commit",way="write",outcome="failed"} 1',
      'scribeline_store_calls_total{call="newestRevision",way="read",outcome="answered"} 1',
      'scribeline_store_calls_total{call="newestRevision",way="read",outcome="failed"} 1',
      'scribeline_store_calls_total{call="listTerms",way="read",outcome="failed"} 1',
      'scribeline_store_refusals_total{code="CHANGED_MEANWHILE"} 1',
      'scribeline_store_failures_total{code="STORE_UNREACHABLE"} 1',
      'scribeline_store_failures_total{code="STORE_FULL"} 1',
      'scribeline_store_failures_total{code="DEFECT"} 1',
      'scribeline_store_seconds_bucket{way="write",le="0.01"} 0',
      'scribeline_store_seconds_bucket{way="write",le="0.025"} 3',
    ])
      expect(lines).toContain(line);
  });

  it("[H12] a dump passes through uncounted, record by record", async () => {
    const { store } = countStoreCalls(openMemoryStore(), () => 0);
    await store.commit(commit);
    const kinds: string[] = [];
    for await (const record of store.dump()) kinds.push(Object.keys(record)[0] ?? "");
    expect(kinds.length).toBe(4);
  });
});
