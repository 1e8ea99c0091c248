import type { Examination } from "../../domain/examination.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Written } from "../../domain/written.ts";
import { type PlannedCards, putCards } from "./cards.ts";
import { type Content, sizeOf } from "./content.ts";
import type { Database, Run } from "./database.ts";
import { refreshAfter } from "./refresh-statistics.ts";
import { endWrite, findWrite, isBeingFilled, keepStage, lockStore, type StoreState } from "./store-state.ts";
import { sweep } from "./sweep.ts";
import { type Step, stepsOf, writeNewest } from "./write-content.ts";
import { addWrites } from "./writes.ts";

/** How a write ends. */
export interface Ending<Answer> {
  /** Number of the newest revision afterwards. */
  readonly revision: number;
  /** What it adds to the ledger: at least one line. */
  readonly lines: readonly Written[];
  readonly cards: PlannedCards;
  readonly examinations: readonly Examination[];
  readonly answer: Answer;
}

/** What a write is going to do. */
export interface Planned<Answer> extends Omit<Ending<Answer>, "examinations"> {
  readonly content: Content;
}

/** A write whose content is still being read: steps as they come, a refusal among them, and then how it ends. */
export interface Streamed<Answer> {
  readonly steps: AsyncIterable<Step | Problem>;
  readonly ending: () => Ending<Answer>;
}

/** How often to look whether another program has ended, in milliseconds. */
const LOOK_EVERY = 100;

/**
 * Writes what `plan` makes of the state of the store, all or nothing. `key` names this write: tried again after it was
 * kept, it is not done again, and `recall` gives the answer. `amount` says how long the whole
 * may take. While another program writes much, it waits until `deadline`.
 */
export async function writePlanned<Answer>(
  database: Database,
  key: string,
  plan: (run: Run, state: StoreState) => Promise<Planned<Answer> | Streamed<Answer> | Problem>,
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
    const size = "steps" in planned ? Number.POSITIVE_INFINITY : sizeOf(planned.content);
    if (size > database.limits.rowsAtOnce || "steps" in planned) {
      await keepStage(run, key, 0);
      return { done: false, streamed: "steps" in planned ? planned : streamOf(planned, database) } as const;
    }
    for (const step of stepsOf(planned.content, planned.lines, database.limits.rowsAtOnce)) await step(run);
    await finish(run, key, endingOf(planned));
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
  if (!begun.done) return writeInSteps(database, key, begun.streamed);
  await refreshAfter(database, begun.size);
  return begun.answer;
}

const endingOf = <Answer>({ content, ...rest }: Planned<Answer>): Ending<Answer> => ({
  ...rest,
  examinations: content.examinations,
});

function streamOf<Answer>(planned: Planned<Answer>, { limits }: Database): Streamed<Answer> {
  async function* steps(): AsyncGenerator<Step> {
    yield* stepsOf(planned.content, planned.lines, limits.rowsAtOnce);
  }
  return { steps: steps(), ending: () => endingOf(planned) };
}

async function finish<Answer>(
  run: Run,
  key: string,
  { examinations, revision, lines, cards }: Ending<Answer>,
): Promise<void> {
  await writeNewest(run, examinations);
  await putCards(run, cards);
  await addWrites(run, lines);
  await endWrite(run, key, revision, lines.at(-1) as Written);
}

/** In several transactions; nobody sees anything of it before the last, and other writers are kept out meanwhile. */
async function writeInSteps<Answer>(
  database: Database,
  key: string,
  { steps, ending }: Streamed<Answer>,
): Promise<Answer | Problem> {
  /** A step that was kept although its answer was lost is not done again. */
  const takeStep = (
    number: number,
    step: Step,
    amount: "step" | "much" = "step",
  ): Promise<"done" | Problem> =>
    database.write(async (run) => {
      const { stagedBy, stagedSteps } = await lockStore(run, key);
      if (stagedBy !== key) return (await findWrite(run, key)) === undefined ? isBeingFilled() : "done";
      if (stagedSteps > number) return "done";
      await keepStage(run, key, number + 1);
      await step(run);
      return "done";
    }, amount);
  let number = 0;
  try {
    for await (const step of steps) {
      const taken = isProblem(step) ? step : await takeStep(number++, step);
      if (isProblem(taken)) return await giveUp(database, key, taken);
    }
    await refreshAfter(database, number * database.limits.rowsAtOnce);
    const end = ending();
    const ended = await takeStep(number, (run) => finish(run, key, end), "much");
    return isProblem(ended) ? await giveUp(database, key, ended) : end.answer;
  } catch (failure) {
    return giveUp(database, key, Promise.reject(failure));
  }
}

/** Takes back what was written of a write that failed; if that fails too, the next writer does it. */
async function giveUp<Failure>(database: Database, key: string, failure: Failure): Promise<Awaited<Failure>> {
  await sweep(database, key);
  return await failure;
}
