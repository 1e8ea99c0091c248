import { setImmediate } from "node:timers/promises";
import type { Worker } from "node:worker_threads";
import { afterEach, describe, expect, it } from "vitest";
import type { WeighingJob } from "#server/domain/weighing/job.ts";
import type { Stage, Weighing } from "#server/domain/weighing/weighing.ts";
import type { Log } from "#server/ports/log.ts";
import type { Weigher } from "#server/ports/weigher.ts";
import { weigh } from "#server/reasoning/weigh.ts";
import { openWeigher } from "#server/weigher/open-weigher.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { jobOf } from "#tests/support/weigh-sketch.ts";

const STAGES: readonly Stage[] = ["dates", "weights", "sensitivity", "rivals"];

let weigher: Weigher | undefined;
const logged: Parameters<Log>[0][] = [];
const log: Log = (line) => logged.push(line);
/** Workers that were started since. */
const started: Worker[] = [];
const note = (worker: Worker) => started.push(worker);
process.on("worker", note);
afterEach(async () => {
  await weigher?.close();
  started.length = 0;
  logged.length = 0;
});

/** A job on a piece of many parts; the more of them the longer it takes. */
function aJob(parts = 1, stages = STAGES): WeighingJob {
  const names = Array.from({ length: parts }, (_, i) => i);
  const claims = names.map(
    (i): ClaimSketch => ({
      ...{ id: `claim.saw${i}`, relation: "introduced" },
      ...{ subject: `feature.saw${i}`, when: `${1700 + (i % 150)}` },
    }),
  );
  const observations = names.map((i) => ({ id: `o${i}`, part: `p${i}`, feature: `feature.saw${i}` }));
  return jobOf(claims, aPiece({ date: "1760/1775", observations }), stages);
}

/** A job that brings its worker down: its date cannot be read. */
function aFatalJob(): WeighingJob {
  const job = aJob();
  return { ...job, piece: { ...job.piece, attribution: { ...job.piece.attribution, date: "no date" } } };
}

const missing = (weighing: Weighing) => weighing.missing.map(({ stage }) => stage);

/** What is there is right, and what is not is named. */
function expectPartOf(found: Weighing, whole: Weighing): void {
  for (const stage of STAGES)
    if (found[stage] === undefined) expect(found.missing).toContainEqual({ stage, why: "stopped" });
    else expect([stage, found[stage]]).toEqual([stage, whole[stage]]);
  expect(found.missing).toHaveLength(STAGES.filter((stage) => found[stage] === undefined).length);
}

describe("the weigher of worker threads", () => {
  it("gives one worker job after job, and each the answer that it has in this thread", async () => {
    weigher = openWeigher({ log, count: 1 });
    const job = aJob();
    const wanted = weigh(job);
    for (let n = 0; n < 3; n++) expect(await weigher.weigh(job)).toEqual(wanted);
    expect(wanted.missing).toEqual([]);
    expect(started).toHaveLength(1);
  });

  it("answers a job that is stopped before it began with all that is missing", async () => {
    weigher = openWeigher({ log, count: 1 });
    const found = await weigher.weigh(aJob(), AbortSignal.abort());
    expect(missing(found)).toEqual(STAGES);
    expect(started).toHaveLength(0);
  });

  it("answers a job that is stopped half-way with what was through, names the rest, and goes on with the next", async () => {
    weigher = openWeigher({ log, count: 1 });
    const job = aJob(60);
    const whole = weigh(job);
    const lengths: number[] = [];
    for (const wait of [0, 40, 120]) {
      await weigher.weigh(aJob());
      const found = await weigher.weigh(job, AbortSignal.timeout(wait));
      expectPartOf(found, whole);
      lengths.push(found.missing.length);
    }
    expect(lengths[0]).toBe(STAGES.length);
    expect(await weigher.weigh(job)).toEqual(whole);
  });

  it("answers a job that is stopped while it waits at once", async () => {
    weigher = openWeigher({ log, count: 1 });
    const job = aJob(60);
    const first = weigher.weigh(job);
    const stop = new AbortController();
    const second = weigher.weigh(job, stop.signal);
    stop.abort();
    expect(missing(await second)).toEqual(STAGES);
    expect(missing(await first)).toEqual([]);
    expect(started).toHaveLength(1);
  });

  it("answers a job whose worker is killed, and gives the next a fresh one", async () => {
    weigher = openWeigher({ log, count: 1 });
    const job = aJob(60);
    const underWay = weigher.weigh(job);
    await setImmediate();
    await started[0]?.terminate();
    expectPartOf(await underWay, weigh(job));
    expect(await weigher.weigh(aJob())).toEqual(weigh(aJob()));
    expect(started).toHaveLength(2);
  });

  it("gives no job to a worker that was killed while it had none", async () => {
    weigher = openWeigher({ log, count: 1 });
    await weigher.weigh(aJob());
    await started[0]?.terminate();
    expect(missing(await weigher.weigh(aJob()))).toEqual([]);
    expect(started).toHaveLength(2);
  });

  it("answers a job that brings its worker down with what is missing, and goes on", async () => {
    weigher = openWeigher({ log, count: 1 });
    const [fatal, after] = await Promise.all([weigher.weigh(aFatalJob()), weigher.weigh(aJob())]);
    expect(missing(fatal)).toEqual(STAGES);
    expect(missing(after)).toEqual([]);
    expect(logged).toMatchObject([{ level: "error", event: "weighing failed" }]);
    expect(logged[0]?.["error"]).toMatch(/^Error[\s\S]*claim-years/);
    expect(logged[0]?.["error"]).not.toContain("no date");
  });

  it("answers a job that takes too long with what was through", async () => {
    weigher = openWeigher({ log, count: 1, longest: 1 });
    expectPartOf(await weigher.weigh(aJob(60)), weigh(aJob(60)));
    expect(logged).toMatchObject([{ level: "warn", event: "weighing took too long", milliseconds: 1 }]);
  });

  it("answers each of a hundred jobs: in turn as many as may wait, and the rest at once as stopped", async () => {
    weigher = openWeigher({ log, count: 2 });
    const job = aJob(1, ["dates"]);
    const jobs = Array.from({ length: 100 }, () => weigher?.weigh(job) as Promise<Weighing>);
    const answers = await Promise.all(jobs);
    const whole = weigh(job);
    const through = answers.filter((answer) => answer.missing.length === 0);
    expect(through).toHaveLength(66);
    for (const answer of through) expect(answer).toEqual(whole);
    for (const answer of answers.slice(66)) expect(missing(answer)).toEqual(["dates"]);
    expect(started).toHaveLength(2);
  });

  it("answers what runs and what waits when it is closed, and every job after", async () => {
    weigher = openWeigher({ log, count: 1 });
    const job = aJob(60);
    const underWay = [weigher.weigh(job), weigher.weigh(job), weigher.weigh(job)];
    await weigher.close();
    const whole = weigh(job);
    for (const found of await Promise.all(underWay)) expectPartOf(found, whole);
    expect(missing(await weigher.weigh(job))).toEqual(STAGES);
    await weigher.close();
    expect(started).toHaveLength(1);
  });
});
