import type { Problem } from "../domain/problem.ts";
import { type LinesAbout, readLines, refusalOf } from "../formats/read-lines.ts";
import type { ImportTarget } from "../ports/import-target.ts";
import type { Progress } from "../ports/progress.ts";
import { checkImport } from "./check-import.ts";
import { type CheckedImport, type FoundProblems, openLook, sayLook } from "./open-look.ts";
import { type ImportLine, readAgain } from "./read-import-line.ts";
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
  /** Whether all can be taken back at the end: what is empty is then written while the file is looked through, which is read once. */
  readonly canTakeBack?: boolean;
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

type Answer = Imported | FoundProblems;

/**
 * Imports a file of terms, sources and claims (docs/formats/import.schema.json) into a store of any kind. The file is looked
 * through before anything of it stands; what is wrong with it is told, all of it. What stands already is not written
 * again, so that an import that was broken off is done again and goes on where it was. Rules [S60] and [S61].
 */
export async function importFile(store: ImportTarget, path: string, options: ImportOptions): Promise<Answer> {
  try {
    return options.canTakeBack === true
      ? await writeWhileLooking(store, path, options)
      : await writeAfterLooking(store, path, options);
  } catch (failure) {
    return { problems: [refusalOf(failure)], total: 1 };
  }
}

async function writeAfterLooking(store: ImportTarget, path: string, options: ImportOptions): Promise<Answer> {
  const { tell } = options;
  const checked = await checkImport(store, { ...options, lines: readLines(path, ABOUT) });
  if ("problems" in checked) return checked;
  const nothing = { added: 0, changed: 0, revisions: 0 };
  if (options.isDry || checked.stand === checked.things) return { checked, written: nothing };
  const lines = readLines(path, ABOUT);
  const of = checked.things - checked.stand;
  const told = ({ added, changed, revisions }: WrittenImport): void =>
    tell(() => `Writing: ${added + changed} of ${of}, in ${revisions} revisions`);
  const { index } = checked;
  return { checked, ...(await writeImport(store, { ...options, lines, index, read: readAgain, told })) };
}

/** Of what is named and has not come by yet it is not known whether it will. */
async function writeWhileLooking(store: ImportTarget, path: string, options: ImportOptions): Promise<Answer> {
  const look = await openLook(store, false);
  const index = { ...look.index, lineOf: (id: string) => look.index.lineOf(id) ?? Number.POSITIVE_INFINITY };
  const read = (text: string): ImportLine | undefined => {
    const line = look.take(text);
    return look.found > 0 ? undefined : line;
  };
  const told = (): void => options.tell(() => `Looking and writing: ${sayLook(look)}`);
  const lines = readLines(path, ABOUT);
  const done = await writeImport(store, { ...options, lines, index, read, told, isHandedOver: true });
  const checked = await look.end();
  return "problems" in checked ? checked : { checked, ...done };
}
