import { setTimeout as sleep } from "node:timers/promises";
import { quantile, sayFigure } from "../figure.ts";
import { type Follower, follow } from "./follower.ts";
import type { BenchHouse, Notes, Version } from "./house.ts";

const WRITERS = 50;
const READERS = 150;
const PIECES = 10;
/** Milliseconds between two changes of a writer, and two reads of a reader, on the average. */
const WRITES_EVERY = 1000;
const READS_EVERY = 2000;

const pause = (mean: number) => sleep(-Math.log(1 - Math.random()) * mean);

/**
 * 50 people who change ten pieces, five to a piece at once, each one thing of their own on what they saw last, and 150 who read and follow. At
 * the end each thing has to say what its writer was told last that it says, and each follower to have been told of each version.
 */
export async function crowd(house: BenchHouse, seconds: number): Promise<void> {
  const begun = await Promise.all(Array.from({ length: PIECES }, () => house.create()));
  const [writes, reads, faults]: [number[], number[], string[]] = [[], [], []];
  const followers = await Promise.all(Array.from({ length: READERS }, () => follow(house.url, () => {})));
  const last = new Map<string, { readonly piece: string; readonly note: string }>();
  let isOver = false;

  const write = async (number: number): Promise<void> => {
    let seen = begun[number % PIECES] as Version;
    const own = `seen-${number}`;
    for (let count = 1; !isOver; count++) {
      await pause(WRITES_EVERY);
      const note = `${count}`;
      const start = performance.now();
      try {
        const notes: Notes = new Map([...seen.notes, [own, note]]);
        seen = await house.change(seen.id, seen.version, notes);
        writes.push(performance.now() - start);
        if (seen.notes.get(own) !== note) faults.push(`lost at once: ${own} ${note}`);
        last.set(own, { piece: seen.id, note });
      } catch (failure) {
        faults.push(String(failure));
      }
    }
  };
  const read = async (): Promise<void> => {
    while (!isOver) {
      await pause(READS_EVERY);
      const { id } = begun[Math.floor(Math.random() * PIECES)] as Version;
      const start = performance.now();
      await house.read(id).catch((failure: unknown) => faults.push(String(failure)));
      reads.push(performance.now() - start);
    }
  };
  const people = [
    ...Array.from({ length: WRITERS }, (_, number) => write(number)),
    ...Array.from({ length: READERS }, () => read()),
  ];
  await sleep(seconds * 1000);
  isOver = true;
  await Promise.all(people);
  await sleep(1000);

  const ends = new Map(await Promise.all(begun.map(async ({ id }) => [id, await house.read(id)] as const)));
  const lost = [...last].filter(([own, { piece, note }]) => ends.get(piece)?.notes.get(own) !== note);
  const untold = followers.filter(({ versions }) =>
    [...ends].some(([id, { version }]) => version > 1 && versions.get(id) !== version),
  );
  const gaps = followers.reduce((sum, each: Follower) => sum + each.faults(), 0);
  await Promise.all(followers.map((each) => each.close()));
  console.log(
    `  ${WRITERS} writers and ${READERS} readers, ${seconds} s: ${writes.length} changes and ${reads.length} reads, ${faults.length} errors, ${lost.length} lost updates, ${untold.length} followers not told to the end, ${gaps} gaps or doubles${faults.length > 0 ? `, the first: ${faults[0]}` : ""}`,
  );
  const within = (times: readonly number[], share: number, what: string) =>
    sayFigure({ what, value: quantile(times, share), unit: "ms" });
  within(writes, 0.5, "a change by one of 50 writers, median");
  within(writes, 0.99, "99 of 100 of them");
  within(reads, 0.5, "a read by one of 150 readers, median");
  within(reads, 0.99, "99 of 100 of them");
}
