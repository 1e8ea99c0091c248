import { nextTurn } from "./next-turn.ts";

/** Milliseconds of work after which others are let go on, unless said otherwise. */
const SLICE = 10;

export interface TurnsOptions {
  /** Milliseconds of work after which others are let go on: fewer where single steps of the work are long themselves. */
  readonly slice?: number;
  /** Milliseconds to rest after so many of work; none unless said otherwise. */
  readonly restAfter?: (worked: number) => number;
  /** Counts the milliseconds of work; those of the clock unless said otherwise. */
  readonly now?: () => number;
}

/** For long work, which calls this often: lets everybody else have a turn where it has worked long enough since the last. */
export function openTurns({
  slice = SLICE,
  restAfter = () => 0,
  now = () => performance.now(),
}: TurnsOptions = {}): () => Promise<void> {
  let began = now();
  return async () => {
    const worked = now() - began;
    if (worked < slice) return;
    const rest = restAfter(worked);
    await (rest > 0 ? new Promise((resolve) => setTimeout(resolve, rest)) : nextTurn());
    began = now();
  };
}
