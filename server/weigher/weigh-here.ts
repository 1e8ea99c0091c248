import type { Weigher } from "../ports/weigher.ts";
import { weigh } from "../reasoning/weigh.ts";

/** Weighs in the thread that asks: for a command, which has nobody else to answer. It cannot be stopped. */
export const weighHere: Weigher = { weigh: async (job) => weigh(job), close: async () => {} };
