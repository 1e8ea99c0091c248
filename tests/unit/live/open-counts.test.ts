import { describe, expect, it } from "vitest";
import { problem } from "#server/domain/problem.ts";
import { openCounts } from "#server/live/open-counts.ts";
import type { Notes } from "#server/ports/notes.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";

const count = (done: number, of = 9, found = 0) => ({ done, of, found });

/** The counts of a process over a store. */
function aProcess(by: string, notes: Notes, beat = 0) {
  const logged: string[] = [];
  const counts = openCounts(notes, {
    ...{ by, pace: { beat, life: 10_000 } },
    log: ({ event }) => logged.push(event),
  });
  return { ...counts, logged };
}

describe("[J4] counts of what is under way", () => {
  it("tell of the one begun last of a name, until that ends", async () => {
    const counts = aProcess("p1", openMemoryStore());
    const first = counts.begin("one");
    expect(await counts.find("one")).toBeUndefined();
    first.tell(count(1));
    const second = counts.begin("one");
    second.tell(count(3, 7, 2));
    first.tell(count(2));
    first.end();
    expect(await counts.find("one")).toEqual({ done: 3, of: 7, found: 2 });
    expect(await counts.find("other")).toBeUndefined();
    second.end();
    expect(await counts.find("one")).toBeUndefined();
  });

  it("are told to another process, as far as they are, until they end", async () => {
    const store = openMemoryStore();
    const [here, there] = [aProcess("p1", store), aProcess("p2", store)];
    const counting = here.begin("one");
    counting.tell(count(1));
    await expect.poll(() => there.find("one")).toEqual(count(1));
    counting.tell(count(5, 9, 4));
    await expect.poll(() => there.find("one")).toEqual(count(5, 9, 4));
    expect(await there.find("other")).toBeUndefined();
    counting.end();
    await expect.poll(() => there.find("one")).toBeUndefined();
  });

  it("that end before a beat is over are told to nobody", async () => {
    const store = openMemoryStore();
    const here = aProcess("p1", store, 60_000);
    const counting = here.begin("one");
    counting.tell(count(1));
    expect(await here.find("one")).toEqual(count(1));
    expect(await store.notesAbout(["count one"])).toEqual([]);
    counting.end();
  });

  it("begun anew here are told to others though the one before ends later", async () => {
    const store = openMemoryStore();
    const [here, there] = [aProcess("p1", store), aProcess("p2", store)];
    const first = here.begin("one");
    first.tell(count(8));
    await expect.poll(() => there.find("one")).toEqual(count(8));
    const second = here.begin("one");
    first.end();
    expect(await there.find("one")).toEqual(count(8));
    second.tell(count(2));
    await expect.poll(() => there.find("one")).toEqual(count(2));
    here.begin("one").end();
    await expect.poll(() => there.find("one")).toBeUndefined();
  });

  it("of which a note cannot be written or read are logged, and known here all the same", async () => {
    const down = async () => {
      throw new StoreFailed(problem("STORE_UNREACHABLE", "It is away."), undefined);
    };
    const counts = aProcess("p1", { leaveNotes: down, notesAbout: down });
    const counting = counts.begin("one");
    counting.tell(count(1));
    expect(await counts.find("one")).toEqual(count(1));
    expect(await counts.find("other")).toBeUndefined();
    counting.end();
    await expect.poll(() => counts.logged).toContain("count not shared");
  });

  it("of another program that are no counts are none", async () => {
    const store = openMemoryStore();
    await store.leaveNotes("p9", [{ about: "count one", body: { done: "all" } }], 10_000);
    expect(await aProcess("p1", store).find("one")).toBeUndefined();
  });
});
