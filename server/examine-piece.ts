import { parseArgs } from "node:util";
import { citationsAsText } from "./citations-as-text.ts";
import { readConfig } from "./config.ts";
import { canonicalJson } from "./domain/canonical-json.ts";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import { readJsonFile } from "./formats/read-json-file.ts";
import { readPiece } from "./formats/read-piece.ts";
import { readReport } from "./formats/read-report.ts";
import { readWeighing } from "./formats/read-weighing.ts";
import { openDataToRead } from "./open-data.ts";
import { openDump } from "./open-dump.ts";
import type { Store } from "./ports/store.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { examinePiece } from "./use-cases/ask/examine-piece.ts";
import { weighPiece } from "./use-cases/ask/weigh-piece.ts";
import { isRefusal } from "./use-cases/refusal.ts";
import { weighHere } from "./weigher/weigh-here.ts";
import { weighingAsText } from "./weighing-as-text.ts";
import { wordsAsText } from "./words-as-text.ts";

const USAGE = `npm run --silent examine -- piece.json [--graph dump.jsonl] [--revision N] [--weigh] [--words]

  piece.json          the piece, as docs/formats/piece.schema.json says
  --graph dump.jsonl  examine on the graph of a dump, not on that of the data folder (SCRIBELINE_DATA)
  --revision N        on that state of the graph; the newest if it is left out
  --weigh             what the probabilities say of it, as docs/formats/weighing.schema.json says, in place of the report
  --words             the answer in words, not as JSON (docs/formats/report.schema.json)
`;

/** Largest file of a piece that is read, in bytes. */
const LARGEST_PIECE = 1_000_000;

interface Wanted {
  readonly piece: string;
  readonly graph: string | undefined;
  readonly revision: number | undefined;
  readonly weigh: boolean;
  readonly words: boolean;
}

function readArguments(args: readonly string[]): Wanted | "help" | Problem {
  const wrong = (why: string) => problem("WRONG_FORMAT", `${why} Use: ${USAGE.split("\n", 1)[0]}`);
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        graph: { type: "string" },
        revision: { type: "string" },
        weigh: { type: "boolean", default: false },
        words: { type: "boolean", default: false },
        help: { type: "boolean", short: "h" },
      },
    });
    if (values.help) return "help";
    const [piece, ...more] = positionals;
    if (piece === undefined || more.length > 0) return wrong("One file of a piece is wanted.");
    const revision = values.revision;
    if (revision !== undefined && !/^\d{1,9}$/.test(revision))
      return wrong(`--revision has to be a whole number, and is "${revision}".`);
    return {
      piece,
      graph: values.graph,
      revision: revision === undefined ? undefined : Number(revision),
      weigh: values.weigh,
      words: values.words,
    };
  } catch (error) {
    return wrong(`${error instanceof Error ? error.message : error}.`);
  }
}

async function openGraph(dump: string | undefined): Promise<Store | readonly Problem[]> {
  if (dump !== undefined) {
    const store = await openDump(dump);
    return isProblem(store) ? [store] : store;
  }
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return config;
  const data = await openDataToRead(config);
  return isProblem(data) ? [data] : data.store;
}

async function answer(wanted: Wanted): Promise<string | readonly Problem[]> {
  const json = await readJsonFile(wanted.piece, LARGEST_PIECE);
  if (isProblem(json)) return [json];
  const piece = readPiece(json.value);
  if (!("title" in piece)) return piece;
  const store = await openGraph(wanted.graph);
  if (!("close" in store)) return store;
  try {
    if (wanted.weigh) {
      const weighed = await weighPiece({ store, weigher: weighHere }, piece, { revision: wanted.revision });
      if (isRefusal(weighed)) return weighed.refused;
      return wanted.words ? weighingAsText(weighed.words, piece) : jsonAsText(weighed.weighing, readWeighing);
    }
    const examined = await examinePiece({ store }, piece, wanted.revision);
    if (isRefusal(examined)) return examined.refused;
    const { report, words, claims } = examined;
    if (!wanted.words) return jsonAsText(report, readReport);
    return wordsAsText(report, words, piece, await citationsAsText(store, claims, report.revision));
  } finally {
    await store.close();
  }
}

/** An answer as it is printed. Throws if it is not of the published form, which is a defect. */
function jsonAsText<Answer extends { readonly format: string }>(
  found: Answer,
  read: (value: unknown) => Answer | readonly Problem[],
): string {
  const checked = read(found);
  if ("format" in checked) return `${canonicalJson(found)}\n`;
  const wrong = checked.map(({ path, message }) => `/${path.join("/")} ${message}`);
  throw new TypeError(`${found.format} is not of its form: ${wrong.join(" ")}`);
}

/** Examines a piece from the command line. Exit status: 0 for any answer, 2 for what cannot be examined. */
async function main(): Promise<void> {
  const wanted = readArguments(process.argv.slice(2));
  if (wanted === "help") return void process.stdout.write(USAGE);
  if (isProblem(wanted)) return refuse(wanted);
  const text = await answer(wanted);
  if (typeof text === "string") process.stdout.write(text);
  else refuse(...text);
}

await runCommand(main);
