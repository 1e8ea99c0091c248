import { GraphQLError } from "graphql";
import { expect, it } from "vitest";
import { withinDeadline } from "#server/api/limits/within-deadline.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";

/** A store of which some functions never answer. */
const silent = (...functions: readonly (keyof Store)[]): Store => ({
  ...openMemoryStore(),
  ...Object.fromEntries(functions.map((name) => [name, () => new Promise(() => {})])),
});
const now = (): number => performance.now();

it("[T5] a read that does not answer is given up at the deadline", async () => {
  const store = withinDeadline(silent("newestRevision"), 20, now);
  const failure = await store.newestRevision().catch((error: unknown) => error);
  expect(failure).toBeInstanceOf(GraphQLError);
  expect((failure as GraphQLError).extensions["code"]).toBe("DEADLINE_EXCEEDED");
});

it("[T5] a write that does not answer is refused at the deadline, saying that nobody knows of it", async () => {
  const store = withinDeadline(silent("commit"), 20, now);
  const answer = await store.commit(aCommit(adding(aTerm("tool.saw"))));
  expect(answer).toMatchObject({ code: "STORE_UNREACHABLE" });
  expect(answer).toHaveProperty("message", expect.stringContaining("Look first whether this was kept"));
});

it("[T5] what answers in time is passed on, and what is asked after the deadline is not begun", async () => {
  let time = 0;
  const store = withinDeadline(openMemoryStore(), 60_000, () => time);
  expect(await store.commit(aCommit(adding(aTerm("tool.saw"))))).toMatchObject({ number: 1 });
  time = 60_001;
  expect(() => store.newestRevision()).toThrow(GraphQLError);
});
