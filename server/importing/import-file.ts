import type { Problem } from "../domain/problem.ts";
import { type LinesAbout, readLines, refusalOf } from "../formats/read-lines.ts";
import type { ImportTarget } from "../ports/import-target.ts";
import type { Progress } from "../ports/progress.ts";
import { type CheckedImport, checkImport } from "./check-import.ts";
import { type WrittenImport, writeImport } from "./write-import.ts";

export interface ImportOptions {
  readonly by: string;
  readonly message: string;
  /** Whether things that stand otherwise are changed, or speak against the file. */
  readonly mayReplace: boolean;
  /** Only looks. */
  readonly isDry: boolean;
  readonly now: () => Date;
  readonly tell: Progress;
  readonly thingsARevision?: number;
}

/** What came of an import. */
export interface Imported {
  readonly checked: Pick<CheckedImport, "things" | "stand" | "change" | "uncited">;
  readonly written: WrittenImport;
  /** Why the store took no more; what was written before stands. */
  readonly refusal?: Problem;
}

const ABOUT: LinesAbout = {
  code: "WRONG_FORMAT",
  what: "file",
  advice: "Nothing was imported; use a whole, undamaged file.",
  mayEndOpen: true,
};

/**
 * Imports a file of terms, sources and claims (docs/formats/import.schema.json) into a store of any kind. The file is looked
 * through before anything of it is written; what is wrong with it is told, all of it. What stands already is not written
 * again, so that an import that was broken off is done again and goes on where it was. Rules [S60] and [S61].
 */
export async function importFile(
  store: ImportTarget,
  path: string,
  options: ImportOptions,
): Promise<Imported | { readonly problems: readonly Problem[]; readonly total: number }> {
  try {
    const checked = await checkImport(store, { ...options, lines: readLines(path, ABOUT) });
    if ("problems" in checked) return checked;
    const nothing = { added: 0, changed: 0, revisions: 0 };
    if (options.isDry || checked.stand === checked.things) return { checked, written: nothing };
    return { checked, ...(await writeImport(store, { ...options, checked, lines: readLines(path, ABOUT) })) };
  } catch (failure) {
    return { problems: [refusalOf(failure)], total: 1 };
  }
}
