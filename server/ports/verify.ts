import type { Problem } from "../domain/problem.ts";
import type { Progress } from "./progress.ts";

/** Recomputes the whole history of the store (`Store.verify`), wherever that is done. */
export type Verify = (
  progress: Progress,
) => Promise<{ readonly revisions: number; readonly head: string } | Problem>;
