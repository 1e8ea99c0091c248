import { describe, expect, it } from "vitest";
import { withinDeadline } from "#server/api/limits/within-deadline.ts";
import { problem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

/** A store whose reading of terms fails with this. */
const failing = (error: unknown): Store => ({
  ...openMemoryStore(),
  terms: () => Promise.reject(error),
});
const TERM = '{ term(id: "tool.circular-saw") { label } revision { number } }';

describe("what fails", () => {
  it("[A8] a defect is told as an id under which the log has it, and the rest is answered", async () => {
    const { ask, logged } = await openApi([sawGraph], failing(new TypeError("secret of /home/ann")));
    const { data, errors } = await ask(TERM);
    expect(data).toEqual({ term: null, revision: { number: 1 } });
    expect(errors).toEqual([
      {
        message: expect.not.stringContaining("secret"),
        path: ["term"],
        locations: expect.anything(),
        extensions: { code: "INTERNAL_SERVER_ERROR", id: "s1" },
      },
    ]);
    expect(errors[0]?.message).toContain("s1");
    expect(logged).toEqual([
      {
        ...{ level: "error", event: "defect", id: "s1", path: "term" },
        error: expect.stringMatching(/^TypeError: secret of \/home\/ann\n\s+at /),
      },
    ]);
  });

  it("[A8] a failing store says its problem, and the log what the medium said", async () => {
    const told = problem("STORE_CORRUPT", "The store is damaged; restore it from a dump.");
    const { ask, logged } = await openApi([sawGraph], failing(new StoreFailed(told, new Error("page 7"))));
    const { errors } = await ask(TERM);
    expect(errors).toMatchObject([{ message: told.message, extensions: { code: "STORE_CORRUPT" } }]);
    expect(logged).toEqual([
      { level: "error", event: "store failed", code: "STORE_CORRUPT", error: "Error: page 7" },
    ]);
  });

  it.each(["STORE_FULL", "STORE_LOCKED", "STORE_CORRUPT", "STORE_UNREACHABLE"] as const)(
    "[A5] a write that the medium refuses (%s) is a refusal, and nothing is kept",
    async (code) => {
      const told = problem(code, "The medium did not take it; try again.");
      const base = { ...openMemoryStore(), createExamination: () => Promise.resolve(told) };
      const { ask, store } = await openApi([sawGraph], base);
      const { data, errors } = await ask(`mutation {
        createExamination(piece: {
          title: "T", examined: 2026, attribution: { date: "1760" }, parts: [], observations: []
        }) { __typename ... on Refused { problems { code message } current { id } } }
      }`);
      expect(errors).toEqual([]);
      expect(data.createExamination).toEqual({
        __typename: "Refused",
        problems: [{ code, message: told.message }],
        current: null,
      });
      expect((await store.listExaminations({ first: 10 })).total).toBe(0);
    },
  );

  it("[A13] a request that has taken too long does no more work", async () => {
    let now = 0;
    const store = withinDeadline(openMemoryStore(), 1000, () => now);
    now = 1000;
    expect(await store.newestRevision()).toBeUndefined();
    now = 1001;
    expect(() => store.newestRevision()).toThrow(
      expect.objectContaining({
        extensions: { code: "DEADLINE_EXCEEDED" },
      }),
    );
  });

  it("a document that cannot be read is told with its place", async () => {
    const { ask, logged } = await openApi([sawGraph]);
    const { errors } = await ask("{ term(id: ");
    expect(errors).toMatchObject([
      { extensions: { code: "GRAPHQL_PARSE_FAILED" }, locations: [{ line: 1 }] },
    ]);
    expect(logged).toEqual([]);
  });
});
