import type { ImportTarget } from "../ports/import-target.ts";
import type { Progress } from "../ports/progress.ts";
import { type CheckedImport, type FoundProblems, openLook, sayLook } from "./open-look.ts";
import type { ImportLine } from "./read-import-line.ts";

export interface CheckOptions {
  /** The lines of the file, some at a time. */
  readonly lines: AsyncIterable<readonly string[]>;
  /** Whether what stands otherwise may be changed. */
  readonly mayReplace: boolean;
  readonly tell: Progress;
}

/** Looks a whole file through before anything of it is written. */
export async function checkImport(
  store: ImportTarget,
  { lines, mayReplace, tell }: CheckOptions,
): Promise<CheckedImport | FoundProblems> {
  const look = await openLook(store, mayReplace);
  for await (const some of lines) {
    const taken: ImportLine[] = [];
    for (const text of some) {
      const line = look.take(text);
      if (line !== undefined) taken.push(line);
    }
    await look.compare(taken);
    tell(() => `Checking: ${sayLook(look)}`);
  }
  return look.end();
}
