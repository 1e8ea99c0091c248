import { afterEach, describe, expect, it } from "vitest";
import { problem } from "#server/domain/problem.ts";
import { openPresence } from "#server/live/open-presence.ts";
import { sharePresence } from "#server/live/share-presence.ts";
import type { Notes } from "#server/ports/notes.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";

const opened: { readonly stop: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const each of opened.splice(0)) await each.stop();
});

/** A process over a store, and what it asked of it. */
function aProcess(by: string, notes: Notes, life = 10_000) {
  const { presence, rooms } = openPresence();
  const calls = { left: 0, read: [] as string[] };
  const logged: string[] = [];
  const counted: Notes = {
    leaveNotes: (...rest) => {
      calls.left++;
      return notes.leaveNotes(...rest);
    },
    notesAbout: (about) => {
      calls.read.push(...about);
      return notes.notesAbout(about);
    },
  };
  const shared = sharePresence(rooms, counted, {
    ...{ by, pace: { beat: 20, life } },
    log: ({ event }) => logged.push(event),
  });
  opened.push(shared);
  return { ...presence, ...shared, calls, logged };
}
const person = (name: string, isEditing = false) => ({ person: `person.${name}`, isEditing });
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

describe("[Z6] who is there at another process over the same store", () => {
  it("is told when somebody comes, does something else and goes", async () => {
    const store = openMemoryStore();
    const [one, other] = [aProcess("p1", store), aProcess("p2", store)];
    const anna = one.enter("chest", person("anna"));
    const connection = {};
    const first = other.enter("chest", person("bert"), connection);
    await expect.poll(() => anna.others()).toEqual([person("bert")]);
    const changed = anna.changed(new AbortController().signal);
    const again = other.enter("chest", { ...person("bert", true), part: "top" }, connection);
    first.leave();
    await changed;
    await expect.poll(() => anna.others()).toEqual([{ ...person("bert", true), part: "top" }]);
    again.leave();
    await expect.poll(() => anna.others()).toEqual([]);
  });

  it("is told beside those at the same process, each once", async () => {
    const store = openMemoryStore();
    const [one, other] = [aProcess("p1", store), aProcess("p2", store)];
    const place = one.enter("chest", person("anna"));
    one.enter("chest", person("anna"));
    other.enter("chest", person("anna"));
    other.enter("chest", person("carl", true));
    await expect.poll(() => place.others()).toEqual([person("anna"), person("carl", true), person("anna")]);
  });

  it("is told of no other room, and nobody reads of one in which nobody is", async () => {
    const store = openMemoryStore();
    const [one, other] = [aProcess("p1", store), aProcess("p2", store)];
    const apart = one.enter("chest person.anna", person("anna"));
    const open = one.enter("table", person("anna"));
    other.enter("chest", person("bert"));
    other.enter("table", person("bert"));
    await expect.poll(() => open.others()).toEqual([person("bert")]);
    expect(apart.others()).toEqual([]);
    expect(new Set(one.calls.read)).toEqual(new Set(["chest person.anna", "table"]));
  });

  it("is gone a while after its process was last heard of", async () => {
    const store = openMemoryStore();
    const one = aProcess("p1", store);
    const place = one.enter("chest", person("anna"));
    expect(await store.leaveNotes("dead", [{ about: "chest", body: [person("bert")] }], 1_500)).toBe("left");
    await expect.poll(() => place.others()).toEqual([person("bert")]);
    await expect.poll(() => place.others()).toEqual([]);
  });

  it("is taken back at once when its process ends", async () => {
    const store = openMemoryStore();
    const [one, other] = [aProcess("p1", store), aProcess("p2", store)];
    const place = one.enter("chest", person("anna"));
    other.enter("chest", person("bert"));
    await expect.poll(() => place.others()).toEqual([person("bert")]);
    await other.stop();
    expect((await store.notesAbout(["chest"])).map(({ by }) => by)).toEqual(["p1"]);
    await expect.poll(() => place.others()).toEqual([]);
  });

  it("costs nothing where nobody is, and a write now and then where nothing changes", async () => {
    const store = openMemoryStore();
    const one = aProcess("p1", store, 600);
    await pause(100);
    expect(one.calls).toEqual({ left: 0, read: [] });
    const place = one.enter("chest", person("anna"));
    await pause(700);
    expect(one.calls.left).toBeGreaterThanOrEqual(2);
    expect(one.calls.left).toBeLessThanOrEqual(5);
    expect(await store.notesAbout(["chest"])).toHaveLength(1);
    place.leave();
    await expect.poll(() => store.notesAbout(["chest"])).toEqual([]);
    await pause(60);
    const { left, read } = { left: one.calls.left, read: one.calls.read.length };
    await pause(100);
    expect([one.calls.left, one.calls.read.length]).toEqual([left, read]);
  });

  it("tells of many who come at once in one write", async () => {
    const store = openMemoryStore();
    const one = aProcess("p1", store);
    const places = Array.from({ length: 300 }, (_, n) => one.enter("chest", person(`n${n}`, n === 299)));
    await expect.poll(() => store.notesAbout(["chest"])).toHaveLength(1);
    expect(one.calls.left).toBe(1);
    const bodies = (await store.notesAbout(["chest"])).map(({ body }) => body as readonly object[]);
    expect(bodies.map((body) => [body.length, body[0]])).toEqual([[200, person("n299", true)]]);
    expect(places[0]?.others()).toHaveLength(299);
  });

  it("is forgotten where the store fails for long, said once in the log, and told again after it", async () => {
    const store = openMemoryStore();
    let isAway = false;
    const fails = problem("STORE_UNREACHABLE", "Away.");
    const one = aProcess(
      "p1",
      {
        leaveNotes: async (...rest) => (isAway ? fails : store.leaveNotes(...rest)),
        notesAbout: async (about) => {
          if (isAway) throw new StoreFailed(fails, undefined);
          return store.notesAbout(about);
        },
      },
      200,
    );
    const place = one.enter("chest", person("anna"));
    expect(await store.leaveNotes("p2", [{ about: "chest", body: [person("bert")] }], 60_000)).toBe("left");
    await expect.poll(() => place.others()).toEqual([person("bert")]);
    isAway = true;
    await expect.poll(() => place.others()).toEqual([]);
    expect(one.logged).toEqual(["presence not shared"]);
    isAway = false;
    await expect.poll(() => place.others()).toEqual([person("bert")]);
  });

  it("is nobody where a note cannot be read", async () => {
    const store = openMemoryStore();
    const one = aProcess("p1", store);
    const place = one.enter("chest", person("anna"));
    for (const [by, body] of Object.entries({
      a: "x",
      b: [null, { person: 1, isEditing: true }],
      c: { a: 1 },
    }))
      expect(await store.leaveNotes(by, [{ about: "chest", body }], 60_000)).toBe("left");
    expect(await store.leaveNotes("d", [{ about: "chest", body: [person("bert")] }], 60_000)).toBe("left");
    await expect.poll(() => place.others()).toEqual([person("bert")]);
  });
});
