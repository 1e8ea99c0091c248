import { keepResults } from "#server/again/keep-results.ts";
import { openStandings } from "#server/again/open-standings.ts";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Examination } from "#server/domain/examination.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { writeGraph } from "#server/generator/write-graph.ts";
import { readAll } from "#server/ports/read-all.ts";
import type { Store } from "#server/ports/store.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { boundOfClaim } from "#server/reasoning/bound-of-claim.ts";
import { examine } from "#server/reasoning/examine.ts";
import { verdictsOn } from "#server/reasoning/verdicts-on.ts";
import { mirroredStore } from "#server/stores/mirror/mirrored-store.ts";
import { openMirror } from "#server/stores/mirror/open-mirror.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { previewChange } from "#server/use-cases/ask/preview-change.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { quantile, sayFigure } from "./figure.ts";
import { type Bench, median } from "./measure.ts";

const CLAIMS = 100_000;
const EXAMINATIONS = 10_000;
/** Claims whose withdrawal is foreseen, and of those as many made. */
const FORESEEN = 200;
const MADE = 20;
/** Examinations by which the cost of examining all is taken. */
const SAMPLE = 400;

/** What foreseeing one claim less took, and found. */
interface Foreseen {
  readonly cost: number;
  readonly looked: number;
  readonly shifted: number;
  readonly ofStates: number;
}

/** Milliseconds of work of this thread: other programs of the machine are left out. */
const worked = (): number => {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
};
async function costOf<Result>(run: () => Promise<Result>): Promise<readonly [Result, number]> {
  const began = worked();
  const result = await run();
  return [result, worked() - began];
}

/** Accepted claims of terms that something can need, at random. */
async function someClaims(store: Store): Promise<readonly Claim[]> {
  const relations = [
    "introduced",
    "attested",
    "common from",
    "common until",
    "discontinued",
    "current",
  ] as const;
  const all = await readAll((page) => store.listClaims({ relations: [...relations, "requires"] }, page));
  const accepted = all.filter(({ status }) => status === "accepted");
  const random = randomSource(5);
  return Array.from({ length: FORESEEN }, () => random.pick(accepted));
}

/** Without the claim and what excepts it. */
async function withdrawal(store: Store, claim: Claim): Promise<Change> {
  const exceptions = await readAll((page) => store.listClaims({ of: [claim.id] }, page));
  const before = (await store.claims([claim.id])).get(claim.id);
  return before ? [...exceptions, before].map((each) => ({ kind: "claim", before: each })) : [];
}

const again = async (store: Store, { piece }: Examination): Promise<unknown> =>
  verdictsOn(piece, await store.neighbourhood(askFor(piece, ASSUMED)));

/** Stored examinations and changes of the graph: what a change touches, what it would do, and answers that are kept. */
export const bench: Bench = async () => {
  const file = answered(await openSqliteStore(temporaryPath()));
  answered(await writeGraph(file, { claims: CLAIMS, claimsATerm: 4, seed: 1, examinations: EXAMINATIONS }));
  // As a server has it: over its mirror.
  const mirror = openMirror(file, { log: console.log, boundOf: boundOfClaim });
  await mirror.built;
  const store = mirroredStore(file, mirror);
  let told = await store.newestWrite();
  const standings = openStandings({ store, log: console.log, restAfter: () => 0, now: worked });
  const [, building] = await costOf(standings.settled);
  const { index, longest } = standings.measures();
  const all = `${EXAMINATIONS} examinations at ${CLAIMS} claims`;
  sayFigure({
    what: `${all} examined, weighed and indexed, work of one thread`,
    value: building / 1000,
    unit: "s",
  });
  sayFigure({ what: `the longest piece of that work without a rest`, value: longest, unit: "ms" });
  sayFigure({ what: `the index: ${index.entries} entries`, value: index.bytes / 1e6, unit: "MB" });

  const claims = await someClaims(store);
  const foreseen: Foreseen[] = [];
  for (const claim of claims) {
    const change = await withdrawal(store, claim);
    const [{ looked, shifted }, cost] = await costOf(() => previewChange({ store, standings }, change));
    const ofStates = shifted.filter(({ shifts }) => shifts.states.length > 0).length;
    foreseen.push({ cost, looked, shifted: shifted.length, ofStates });
  }
  const costs = foreseen.map(({ cost }) => cost);
  const touched = foreseen.map(({ looked }) => looked);
  console.log(
    `         examinations that a claim touches, of ${EXAMINATIONS}: median ${median(touched)}, 95 % ${quantile(touched, 0.95)}, most ${Math.max(...touched)}; of ${sum(touched)} touched ${sum(foreseen.map(({ shifted }) => shifted))} would say something else, ${sum(foreseen.map(({ ofStates }) => ofStates))} of them of what a part most probably is`,
  );
  const busiest = foreseen.reduce((most, one) => (one.looked > most.looked ? one : most));
  console.log(
    `         the claim that touches most, ${busiest.looked}, took ${(busiest.cost / Math.max(1, busiest.looked)).toFixed(2)} ms for each`,
  );
  const what = `foreseeing what one claim less would do to ${all}`;
  sayFigure({
    what: `${what}, median of ${FORESEEN} claims`,
    value: median(costs),
    unit: "ms",
    atMost: 1000,
  });
  sayFigure({ what: `${what}, 95 % of them`, value: quantile(costs, 0.95), unit: "ms", atMost: 1000 });
  sayFigure({ what: `${what}, the most`, value: Math.max(...costs), unit: "ms" });

  const sample = await readSample(store, SAMPLE);
  const [, sampled] = await costOf(async () => {
    for (const each of sample) await again(store, each);
  });
  const everything = (sampled / sample.length) * EXAMINATIONS;

  const before = standings.measures();
  let [makings, cost] = [0, 0];
  for (const claim of claims.slice(0, MADE)) {
    const change = await withdrawal(store, claim);
    if (change.length === 0) continue;
    answered(await store.commit(aCommit(change)));
    const [, spent] = await costOf(async () => {
      for (const written of await store.writesAfter(told, 10)) {
        await mirror.follow(written);
        await standings.follow(written);
      }
      await standings.settled();
    });
    told = await store.newestWrite();
    makings++;
    cost += spent;
  }
  const after = standings.measures();
  console.log(
    `         after ${makings} such changes ${after.examined - before.examined} were examined again and ${after.cutOff - before.cutOff} cut off by their digest`,
  );
  await standings.stop();

  const results = keepResults();
  const kept: number[] = [];
  const anew: number[] = [];
  for (const { piece } of sample.slice(0, 100)) {
    const neighbourhood = await store.neighbourhood(askFor(piece, ASSUMED));
    results.report(piece, neighbourhood);
    kept.push((await costOf(async () => results.report(piece, neighbourhood)))[1]);
    anew.push((await costOf(async () => examine(piece, neighbourhood)))[1]);
  }
  await store.close();
  const against = `examining all ${EXAMINATIONS} again, by ${SAMPLE} of them`;
  return [
    {
      what: "foreseeing one claim less, mean",
      against,
      cost: sum(costs) / FORESEEN,
      costAgainst: everything,
      atMost: 0.02,
    },
    {
      what: "foreseeing one claim less, for each examination that it touches",
      against: "examining and weighing one before and after, both anew",
      cost: sum(costs) / sum(touched),
      costAgainst: (2 * sampled) / sample.length,
      atMost: 1,
    },
    {
      what: "examining again what one claim less touches, mean",
      against,
      cost: cost / makings,
      costAgainst: everything,
      atMost: 0.05,
    },
    {
      what: "a report that is kept",
      against: "worked out anew",
      cost: sum(kept) / kept.length,
      costAgainst: sum(anew) / anew.length,
      atMost: 0.2,
    },
  ];
};

const sum = (numbers: readonly number[]): number => numbers.reduce((all, number) => all + number, 0);

/** The first ones of the list. */
async function readSample(store: Store, count: number): Promise<readonly Examination[]> {
  const rows: Examination[] = [];
  let after: string | undefined;
  do {
    const page = await store.listExaminations({ first: 100, ...(after === undefined ? {} : { after }) });
    rows.push(...page.rows);
    after = page.hasMore ? page.cursors.at(-1) : undefined;
  } while (after !== undefined && rows.length < count);
  return rows.slice(0, count);
}
