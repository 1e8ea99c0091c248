import { loadavg } from "node:os";
import { setTimeout as sleep } from "node:timers/promises";
import { id } from "#server/domain/ids.ts";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { quantile, sayFigure } from "./figure.ts";
import { crowd } from "./live/crowd.ts";
import { follow } from "./live/follower.ts";
import { type BenchHouse, openBenchHouse } from "./live/house.ts";
import type { Bench } from "./measure.ts";

const CLIENTS = 200;
const CHANGES = 200;
/** Milliseconds between two changes. */
const EVERY = 100;
const MISSED = 10_000;
const seconds = Number(process.env["BENCH_SECONDS"] || 300);

/** What live clients are told, by one server process over a file, clients and server on one machine. */
export const bench: Bench = async () => {
  const house = await openBenchHouse();
  try {
    await seenByAll(house);
    await caughtUp(house);
    await crowd(house, seconds);
    console.log(
      `  load of the machine: ${loadavg()
        .map((load) => load.toFixed(1))
        .join(", ")}`,
    );
  } finally {
    await house.stop();
  }
  return [];
};

/** From the moment at which a change is sent until each of 200 was told of it. */
async function seenByAll(house: BenchHouse): Promise<void> {
  let { id: piece, version, notes } = await house.create();
  const sent = new Map<number, number>();
  const told = new Map<number, number[]>();
  const answers: number[] = [];
  const clients = await Promise.all(
    Array.from({ length: CLIENTS }, () =>
      follow(house.url, ({ changes }) => {
        for (const each of changes) {
          const since = each.id === piece ? sent.get(each.version) : undefined;
          if (since === undefined) continue;
          const times = told.get(each.version) ?? [];
          times.push(performance.now() - since);
          told.set(each.version, times);
        }
      }),
    ),
  );
  for (let count = 0; count < CHANGES; count++) {
    const start = performance.now();
    sent.set(version + 1, start);
    ({ version, notes } = await house.change(piece, version, new Map([...notes, ["own", `${count}`]])));
    answers.push(performance.now() - start);
    await sleep(EVERY);
  }
  await sleep(500);
  const all = [...told.values()];
  const missing = all.filter((times) => times.length !== CLIENTS).length + CHANGES - all.length;
  console.log(`  ${CHANGES} changes to ${CLIENTS} clients, ${missing} of them not told to all`);
  const each = all.flat();
  const lasts = all.map((times) => Math.max(...times));
  const say = (value: number, what: string, atMost?: number) =>
    sayFigure({ what, value, unit: "ms", ...(atMost === undefined ? {} : { atMost }) });
  say(quantile(answers, 0.5), "a change sent until its answer, median");
  say(quantile(each, 0.5), "a change sent until a client is told, median");
  say(quantile(each, 0.99), "99 of 100 of these", 50);
  say(quantile(lasts, 0.5), "a change sent until the last of 200 is told, median");
  say(quantile(lasts, 0.99), "99 of 100 of these", 50);
  const between = all.map((times) => Math.max(...times) - Math.min(...times));
  say(quantile(between, 0.5), "the first of 200 told until the last, median");
  say(quantile(between, 0.99), "99 of 100 of these");
  await Promise.all(clients.map((client) => client.close()));
}

/** From connecting until all that was missed is told. */
async function caughtUp(house: BenchHouse): Promise<void> {
  const { id: piece } = await house.create();
  let since = 0;
  const before = await follow(house.url, ({ sequence }) => {
    since = sequence;
  });
  await before.close();
  const store = answered(await openSqliteStore(storeFile(house.folder)));
  const { piece: content } = (await store.examination(id(piece))) ?? {};
  if (!content) throw new Error("The piece is not in the store");
  for (let version = 1; version <= MISSED; version++)
    answered(
      await store.changeExamination(
        id(piece),
        version,
        { ...content, title: `Version ${version}` },
        "2026-01-01T00:00:00Z",
      ),
    );
  const newest = await store.newestWrite();
  await store.close();
  // Until the server itself knows of them: what is measured is the client's way.
  await new Promise<void>((resolve) => {
    void follow(house.url, ({ sequence }) => sequence >= newest && resolve(), newest - 1);
  });
  const start = performance.now();
  let count = 0;
  const took = await new Promise<number>((resolve) => {
    void follow(
      house.url,
      ({ changes, sequence, readAnew }) => {
        count += changes.length;
        if (readAnew || sequence >= newest) resolve(performance.now() - start);
      },
      since,
    );
  });
  sayFigure({
    what: `catching up with ${count} changes, from connecting on`,
    value: took / 1000,
    unit: "s",
    atMost: 2,
  });
  if (count !== MISSED) throw new Error(`${count} of ${MISSED} were told`);
}
