import { once } from "node:events";
import { Worker } from "node:worker_threads";
import { standingTexts } from "../../../chain/change-text.ts";
import type { Problem } from "../../../domain/problem.ts";
import { tallyAfter } from "../../../domain/tally.ts";
import { type FillTarget, NOTHING_STANDS } from "../../../ports/import-target.ts";
import { addedRows } from "../added-rows.ts";
import type { FillAnswer, FillAsked, FillMessage } from "./fill-message.ts";

/** Revisions on their way to the thread that writes; more would only wait there. */
const MOST_UNDER_WAY = 3;
/** Memory for what has just come in, in MB, as `npm run import` gives itself. */
const YOUNG_MB = 128;

/**
 * Begins to fill the empty store in a file. Rows are made here; a thread of its own chains the revisions and writes them. Refuses what holds
 * something (`STORE_NOT_EMPTY`), and what the medium refuses.
 */
export async function openFileFill(
  path: string,
  patience = 5000,
  { mostPages }: Pick<FillAsked, "mostPages"> = {},
): Promise<FillTarget | Problem> {
  const asked: FillAsked = { path, patience, ...(mostPages === undefined ? {} : { mostPages }) };
  const worker = new Worker(new URL("./fill-in-thread.ts", import.meta.url), {
    workerData: asked,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
  });
  const waiting: ((answer: FillAnswer) => void)[] = [];
  let died: unknown;
  worker.on("message", (answer: FillAnswer) => waiting.shift()?.(answer));
  const ended = once(worker, "exit").catch((failure: unknown) => {
    died = failure;
    // What was asked of it is not answered any more.
    for (const settle of waiting.splice(0)) settle({});
  });
  const next = async (): Promise<Problem | undefined> => {
    if (died !== undefined) throw died;
    const { refusal } = await new Promise<FillAnswer>((settle) => waiting.push(settle));
    if (died !== undefined) throw died;
    return refusal;
  };
  const send = (message: FillMessage): Promise<Problem | undefined> => {
    const answer = next();
    worker.postMessage(message);
    return answer;
  };

  const unfit = await next();
  if (unfit !== undefined) {
    await worker.terminate();
    return unfit;
  }
  const rows = { term: 1, claim: 1, source: 1 };
  const underWay: Promise<Problem | undefined>[] = [];
  return {
    ...NOTHING_STANDS,
    newestRevision: async () => undefined,
    commit: async ({ change, ...authorship }) => {
      const answer = send({
        authorship,
        kinds: change.map(({ kind }) => kind),
        bodies: standingTexts(change),
        rows: addedRows(change, [...change.keys()], rows),
        more: tallyAfter({}, change),
      });
      // Whoever waits for it next is told; until then it is nobody's fault.
      answer.catch(() => undefined);
      underWay.push(answer);
      return underWay.length < MOST_UNDER_WAY ? undefined : underWay.shift();
    },
    end: async () => {
      for (const answer of underWay) {
        const refusal = await answer;
        if (refusal !== undefined) return refusal;
      }
      const refusal = await send("end");
      if (refusal === undefined) await ended;
      return refusal;
    },
    drop: async () => {
      if (died === undefined) await worker.terminate();
      await ended;
    },
  };
}
