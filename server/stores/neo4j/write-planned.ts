import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Written } from "../../domain/written.ts";
import { type PlannedCards, putCards } from "./cards.ts";
import { type Content, sizeOf } from "./content.ts";
import type { Database, Run } from "./database.ts";
import { refreshStatistics } from "./refresh-statistics.ts";
import { endWrite, findWrite, isBeingFilled, keepStage, lockStore, type StoreState } from "./store-state.ts";
import { sweep } from "./sweep.ts";
import { type Step, stepsOf, writeNewest } from "./write-content.ts";
import { addWrites } from "./writes.ts";

/** What a write is going to do. */
export interface Planned<Answer> {
  readonly content: Content;
  /** Number of the newest revision afterwards. */
  readonly revision: number;
  /** What it adds to the ledger: at least one line. */
  readonly lines: readonly Written[];
  readonly cards: PlannedCards;
  readonly answer: Answer;
}

/** How often to look whether another program has ended, in milliseconds. */
const LOOK_EVERY = 100;
/** From so many rows on, plans made before are not worth keeping. */
const CHANGES_PLANS = 1_000;

/**
 * Writes what `plan` makes of the state of the store, all or nothing. `key` names this write: tried again after it was
 * kept, it is not done again, and `recall` gives the answer. `amount` says how long the whole
 * may take. While another program writes much, it waits until `deadline`.
 */
export async function writePlanned<Answer>(
  database: Database,
  key: string,
  plan: (run: Run, state: StoreState) => Promise<Planned<Answer> | Problem>,
  recall: (run: Run, written: Written) => Promise<Answer>,
  amount: "little" | "much",
  deadline: number = performance.now() + database.limits.patience,
): Promise<Answer | Problem> {
  const begun = await database.write(async (run) => {
    const state = await lockStore(run, key);
    const kept = await findWrite(run, key);
    if (kept !== undefined) return { done: true, answer: await recall(run, kept), size: 0 } as const;
    if (state.stagedBy !== null && state.stagedBy !== key) {
      if (state.isStaging) return { waits: true } as const;
      await keepStage(run, key, 0);
      return { sweeps: true } as const;
    }
    const planned = await plan(run, state);
    if (isProblem(planned)) return planned;
    const size = sizeOf(planned.content);
    if (size > database.limits.rowsAtOnce) {
      await keepStage(run, key, 0);
      return { done: false, planned } as const;
    }
    for (const step of stepsOf(planned.content, planned.lines, database.limits.rowsAtOnce)) await step(run);
    await finish(run, key, planned);
    return { done: true, answer: planned.answer, size } as const;
  }, amount);
  if (isProblem(begun)) return begun;
  if ("waits" in begun) {
    if (performance.now() >= deadline) return isBeingFilled();
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
    return writePlanned(database, key, plan, recall, amount, deadline);
  }
  if ("sweeps" in begun) {
    const refusal = await sweep(database, key);
    return refusal ?? writePlanned(database, key, plan, recall, amount, deadline);
  }
  if (!begun.done) return writeInSteps(database, key, begun.planned);
  if (begun.size >= CHANGES_PLANS) await refreshStatistics(database);
  return begun.answer;
}

async function finish<Answer>(
  run: Run,
  key: string,
  { content, revision, lines, cards }: Planned<Answer>,
): Promise<void> {
  await writeNewest(run, content.examinations);
  await putCards(run, cards);
  await addWrites(run, lines);
  await endWrite(run, key, revision, lines.at(-1) as Written);
}

/** In several transactions; nobody sees anything of it before the last, and other writers are kept out meanwhile. */
async function writeInSteps<Answer>(
  database: Database,
  key: string,
  planned: Planned<Answer>,
): Promise<Answer | Problem> {
  /** A step that was kept although its answer was lost is not done again. */
  const takeStep = (number: number, step: Step): Promise<"done" | Problem> =>
    database.write(async (run) => {
      const { stagedBy, stagedSteps } = await lockStore(run, key);
      if (stagedBy !== key) return (await findWrite(run, key)) === undefined ? isBeingFilled() : "done";
      if (stagedSteps > number) return "done";
      await keepStage(run, key, number + 1);
      await step(run);
      return "done";
    }, "much");
  let number = 0;
  try {
    for (const step of stepsOf(planned.content, planned.lines, database.limits.rowsAtOnce)) {
      const taken = await takeStep(number++, step);
      if (isProblem(taken)) return await giveUp(database, key, taken);
    }
    await refreshStatistics(database);
    const ended = await takeStep(number, (run) => finish(run, key, planned));
    return isProblem(ended) ? await giveUp(database, key, ended) : planned.answer;
  } catch (failure) {
    return giveUp(database, key, Promise.reject(failure));
  }
}

/** Takes back what was written of a write that failed; if that fails too, the next writer does it. */
async function giveUp<Failure>(database: Database, key: string, failure: Failure): Promise<Awaited<Failure>> {
  await sweep(database, key);
  return await failure;
}
