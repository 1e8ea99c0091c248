import { isProblem } from "../domain/problem.ts";
import { inTime } from "../ports/in-time.ts";
import type { Log } from "../ports/log.ts";
import type { Notes, NoteWrite } from "../ports/notes.ts";
import type { Present } from "../ports/presence.ts";
import type { Rooms } from "./open-presence.ts";

export interface SharePace {
  /** Milliseconds between two looks at what others say, and at least between two writes. */
  readonly beat: number;
  /** Milliseconds after which somebody is there no more at a process that is not heard of. What stays as it was is said again after a third of it. */
  readonly life: number;
}
const PACE: SharePace = { beat: 1000, life: 15_000 };
/** Those of one room who are told of to other processes, who edit first. */
const MOST_TOLD = 200;
/** Milliseconds that taking everything back may take at the end. */
const LONGEST_END = 1000;

/**
 * Tells the other processes over a store who is where at this one, and this one who is there at others, by notes of the store (Z6). It reads
 * only of rooms in which somebody is here, writes only while somebody is, and looks and writes nothing where nobody is. What cannot be
 * written or read is tried again: presence may come late, and nothing else waits for it.
 */
export function sharePresence(
  rooms: Rooms,
  notes: Notes,
  {
    by,
    log,
    pace: { beat, life } = PACE,
  }: { readonly by: string; readonly log: Log; readonly pace?: SharePace },
): { readonly stop: () => Promise<void> } {
  /** What others were told of a room, and when. */
  const told = new Map<string, { readonly text: string; readonly at: number }>();
  let heardAt = performance.now();
  let beatAt = -Infinity;
  let hasFailed = false;
  let isStopped = false;
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<void> | undefined;

  const tell = async (): Promise<void> => {
    const at = performance.now();
    const here = new Map([...rooms.here()].map(([room, present]) => [room, editorsFirst(present)]));
    const writes: NoteWrite[] = [...told.keys()].flatMap((room) => (here.has(room) ? [] : [{ about: room }]));
    for (const [room, present] of here) {
      const before = told.get(room);
      if (before?.text !== JSON.stringify(present) || at - before.at > life / 3)
        writes.push({ about: room, body: present });
    }
    if (writes.length === 0) return;
    const left = await notes.leaveNotes(by, writes, life);
    if (isProblem(left)) throw new Error(left.message);
    for (const { about, body } of writes)
      if (body === undefined) told.delete(about);
      else told.set(about, { text: JSON.stringify(body), at });
  };

  const hear = async (): Promise<void> => {
    const watched = [...rooms.here().keys()];
    if (watched.length === 0) return;
    const elsewhere = new Map<string, Present[]>(watched.map((room) => [room, []]));
    for (const note of await notes.notesAbout(watched))
      if (note.by !== by) elsewhere.get(note.about)?.push(...presentIn(note.body));
    heardAt = performance.now();
    for (const [room, present] of elsewhere) rooms.put(room, present);
  };

  const once = async (): Promise<void> => {
    beatAt = performance.now();
    const failures = (await Promise.allSettled([tell(), hear()])).flatMap((each) =>
      each.status === "rejected" ? [each.reason as unknown] : [],
    );
    if (failures.length > 0 && !hasFailed && !isStopped)
      log({ level: "warn", event: "presence not shared", error: String(failures[0]) });
    hasFailed = failures.length > 0;
    // Who was there when others were last heard of may be gone by now.
    if (performance.now() - heardAt > life) for (const room of rooms.here().keys()) rooms.put(room, []);
  };

  const plan = (): void => {
    const isQuiet = told.size === 0 && rooms.here().size === 0;
    if (timer !== undefined || running !== undefined || isStopped || isQuiet) return;
    timer = setTimeout(
      () => {
        timer = undefined;
        running = once().then(() => {
          running = undefined;
          plan();
        });
      },
      Math.max(0, beatAt + beat - performance.now()),
    );
    timer.unref();
  };
  rooms.onChange = plan;

  return {
    stop: async () => {
      isStopped = true;
      clearTimeout(timer);
      const end = async (): Promise<void> => {
        await running;
        if (told.size > 0)
          await notes.leaveNotes(
            by,
            [...told.keys()].map((about) => ({ about })),
            life,
          );
      };
      await inTime(
        end().catch(() => undefined),
        LONGEST_END,
      );
    },
  };
}

const editorsFirst = (present: readonly Present[]): readonly Present[] =>
  [...present].sort((a, b) => Number(b.isEditing) - Number(a.isEditing)).slice(0, MOST_TOLD);

/** Those whom a note of another process tells of; nobody where it cannot be read. */
const presentIn = (body: unknown): readonly Present[] => (Array.isArray(body) ? body.filter(isPresent) : []);

function isPresent(value: unknown): value is Present {
  if (typeof value !== "object" || value === null) return false;
  const { person, part, isEditing } = value as Partial<Record<keyof Present, unknown>>;
  return (
    typeof person === "string" &&
    typeof isEditing === "boolean" &&
    (part === undefined || typeof part === "string")
  );
}
