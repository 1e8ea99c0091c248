import { existsSync } from "node:fs";
import { basename } from "node:path";
import { parseArgs } from "node:util";
import { type Config, readConfig } from "./config.ts";
import { isProblem, type Problem } from "./domain/problem.ts";
import { type Imported, type ImportOptions, importFile } from "./importing/import-file.ts";
import { openStore, printPlace, storeFile } from "./open-data.ts";
import type { FillTarget } from "./ports/import-target.ts";
import type { Store } from "./ports/store.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { inWords, sayProgress } from "./say-progress.ts";
import { showUsage } from "./show-usage.ts";
import { openMemoryStore } from "./stores/memory/open-memory-store.ts";
import { openFileFill } from "./stores/sqlite/fill/open-file-fill.ts";

const USAGE = `npm run import -- file.jsonl      terms, sources and claims into the store of the settings (file.jsonl.zst: compressed; docs/formats/import.schema.json)
  --dry-run        only looks the file through
  --replace        changes what stands otherwise, instead of refusing it
  --things 20000   how many go into one revision
  --by name        who the revisions are by (import)
  --message text   what they say (Import of <file>)
`;

interface Asked {
  readonly file: string;
  readonly isDry: boolean;
  readonly mayReplace: boolean;
  readonly by: string;
  readonly message: string;
  readonly thingsARevision?: number;
}

function readArguments(): Asked | undefined {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        "dry-run": { type: "boolean", default: false },
        replace: { type: "boolean", default: false },
        by: { type: "string" },
        message: { type: "string" },
        things: { type: "string" },
      },
    });
    const [file, ...more] = positionals;
    const { things } = values;
    if (file === undefined || more.length > 0) return undefined;
    if (things !== undefined && !/^[1-9]\d{0,5}$/.test(things)) return undefined;
    return {
      ...{ file, isDry: values["dry-run"], mayReplace: values.replace },
      by: values.by?.trim() || "import",
      message: values.message?.trim() || `Import of ${basename(file)}`,
      ...(things === undefined ? {} : { thingsARevision: Number(things) }),
    };
  } catch {
    return undefined;
  }
}

/** All that is wrong with the file, and that nothing was written. */
function refuseFile(
  file: string,
  { problems, total }: { problems: readonly Problem[]; total: number },
): void {
  refuse(...problems);
  const more = total - problems.length;
  process.stderr.write(
    `${more > 0 ? `${inWords(more)} more problems are not told. ` : ""}Nothing of ${file} was imported; correct it and import it again.\n`,
  );
}

function report({ checked, written }: Imported, place: string, isDry: boolean): void {
  const { things, stand, change, uncited } = checked;
  const counts = isDry
    ? `${inWords(things - stand - change)} would be added, ${inWords(change)} changed`
    : `${inWords(written.added)} added and ${inWords(written.changed)} changed in ${inWords(written.revisions)} revisions`;
  process.stdout.write(
    `${inWords(things)} things, in ${place}: ${counts}; ${inWords(stand)} stood already.\n`,
  );
  if (uncited > 0)
    process.stderr.write(
      `${inWords(uncited)} sources are cited by no claim of the file, and are no documented pieces.\n`,
    );
}

/** To look a file through, no store need be there yet. */
async function openToImport(config: Config, isDry: boolean): Promise<Store | Problem> {
  const isNone = isDry && config.neo4j === undefined && !existsSync(storeFile(config.dataFolder));
  return isNone ? openMemoryStore() : openStore(config, { readOnly: isDry });
}

/** Imports a file. Exit status: 0, or 2 for a refusal. */
async function main(): Promise<void> {
  const asked = readArguments();
  if (asked === undefined) return showUsage(USAGE);
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const { file, ...rest } = asked;
  const store = await openToImport(config, asked.isDry);
  if (isProblem(store)) return refuse(store);
  const progress = sayProgress();
  const options = { ...rest, now: () => new Date(), tell: progress.tell };
  try {
    const fill = await openToFill(config, store, asked.isDry);
    if (isProblem(fill)) return refuse(fill);
    const done = fill ? await fillFile(fill, file, options) : await importFile(store, file, options);
    progress.done();
    if (isProblem(done)) return refuseFill(file, done);
    if ("problems" in done) return refuseFile(file, done);
    report(done, printPlace(config), asked.isDry);
    if (done.refusal === undefined) return;
    refuse(done.refusal);
    process.stderr.write("What was written before stands. Import the file again: it goes on from there.\n");
  } finally {
    progress.done();
    await store.close();
  }
}

/** An empty file is filled in one go; what holds something is added to. */
async function openToFill(
  config: Config,
  store: Store,
  isDry: boolean,
): Promise<FillTarget | Problem | undefined> {
  if (isDry || config.neo4j !== undefined || (await store.newestWrite()) > 0) return undefined;
  return openFileFill(storeFile(config.dataFolder));
}

/** Imports a file into what is empty: all of it, or nothing. Gives the refusal of the store, if there is one. */
async function fillFile(
  fill: FillTarget,
  file: string,
  options: ImportOptions,
): Promise<Awaited<ReturnType<typeof importFile>> | Problem> {
  let isKept = false;
  try {
    const done = await importFile(fill, file, { ...options, canTakeBack: true });
    if ("problems" in done) return done;
    const refusal = done.refusal ?? (await fill.end());
    isKept = refusal === undefined;
    return refusal ?? done;
  } finally {
    if (!isKept) await fill.drop();
  }
}

function refuseFill(file: string, refusal: Problem): void {
  refuse(refusal);
  process.stderr.write(`Nothing of ${file} was imported.\n`);
}

await runCommand(main);
