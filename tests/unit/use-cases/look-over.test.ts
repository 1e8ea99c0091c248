import { describe, expect, it } from "vitest";
import type { Caller, Role } from "#server/domain/people/caller.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { readBatch } from "#server/use-cases/ask/batch/read-batch.ts";
import { lookOver } from "#server/use-cases/ask/look-over/look-over.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const nobody = { terms: async () => [], sources: async () => [] };

async function portsOf(role: Role) {
  const store = openMemoryStore();
  const revision = await store.commit(aCommit(sawGraph));
  if (isProblem(revision)) throw new Error(revision.message);
  const caller: Caller = { id: "person.one", role, via: "session" };
  return { store, caller, now: () => "2026-11-25T10:00:00.000Z", newSuffix: () => "s1" };
}

describe("reading back what somebody writes", () => {
  it("[J40] [J45] is for those who may propose", async () => {
    const reader = await portsOf("reader");
    const form = { relation: "introduced", subject: "tool.circular-saw" };
    expect((await lookOver(reader, "claim", form, nobody)).problems).toMatchObject([{ code: "NOT_ALLOWED" }]);
    const table = { head: ["relation", "basis"], rows: [{ row: 2, cells: ["attested", "from memory"] }] };
    expect(await readBatch(reader, table, nobody)).toMatchObject({
      rows: [],
      problems: [{ code: "NOT_ALLOWED" }],
    });
  });

  it("[J40] writes nothing", async () => {
    const ports = await portsOf("contributor");
    const before = await ports.store.newestWrite();
    const form = { relation: "attested", subject: "tool.circular-saw", when: "1800", basis: "from memory" };
    expect((await lookOver(ports, "claim", form, nobody)).change).toHaveLength(1);
    await lookOver(ports, "merge", { about: "feature.rough-ground", into: "feature.gesso" }, nobody);
    expect(await ports.store.newestWrite()).toBe(before);
  });
});
