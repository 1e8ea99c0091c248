import { createWriteStream } from "node:fs";
import { rename, rm } from "node:fs/promises";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { parseArgs } from "node:util";
import { createZstdCompress } from "node:zlib";
import { readConfig } from "./config.ts";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import type { Wishes } from "./generator/graph-plan.ts";
import { printGraph, printPieces } from "./generator/print-graph.ts";
import { writeGraph } from "./generator/write-graph.ts";
import { openStore, printPlace } from "./open-data.ts";
import { refuse } from "./refuse.ts";
import { runCommand } from "./run-command.ts";
import { showUsage } from "./show-usage.ts";

const USAGE = `npm run generate -- --claims 1000000 --out file.jsonl      a made-up graph as JSON Lines (file.jsonl.zst: compressed)
npm run generate -- --claims 1000000                       the same into the empty store of the settings (SCRIBELINE_DATA or SCRIBELINE_STORE)
  --claims-a-term 4    claims for each term; the seed graph has 1.25
  --seed 1             another number makes another graph
  --examinations 0     made-up pieces besides: kept in the store, or beside the file in file.pieces.jsonl
`;

type Asked = Wishes & { readonly examinations: number; readonly out: string | undefined };

function readWishes(): Asked | Problem | undefined {
  const text = { type: "string" } as const;
  let values: Record<string, string | boolean | undefined>;
  try {
    ({ values } = parseArgs({
      options: {
        claims: text,
        "claims-a-term": text,
        seed: text,
        examinations: text,
        out: text,
        help: { type: "boolean" },
      },
    }));
  } catch (error) {
    return problem("WRONG_FORMAT", error instanceof Error ? error.message : String(error));
  }
  if (values["help"] || values["claims"] === undefined) return undefined;
  const numbers = {
    claims: Number(values["claims"]),
    claimsATerm: Number(values["claims-a-term"] ?? "4"),
    seed: Number(values["seed"] ?? "1"),
    examinations: Number(values["examinations"] ?? "0"),
  };
  const isWhole = (number: number, least: number, most: number): boolean =>
    Number.isInteger(number) && number >= least && number <= most;
  if (!isWhole(numbers.claims, 100, 100_000_000))
    return problem("WRONG_FORMAT", "--claims has to be a whole number from 100 to 100000000.", ["claims"]);
  if (!(numbers.claimsATerm >= 0.5 && numbers.claimsATerm <= 100))
    return problem("WRONG_FORMAT", "--claims-a-term has to be from 0.5 to 100.", ["claims-a-term"]);
  if (!isWhole(numbers.seed, 0, 2 ** 32 - 1) || !isWhole(numbers.examinations, 0, 1_000_000))
    return problem("WRONG_FORMAT", "--seed and --examinations have to be whole numbers.", ["seed"]);
  return { ...numbers, out: values["out"] as string | undefined };
}

/** Writes beside the file first, so that what stands under its name is always whole. */
async function writeLines(lines: Iterable<string>, file: string): Promise<Problem | undefined> {
  const part = `${file}.part`;
  try {
    const text = Readable.from(lines);
    if (file.endsWith(".zst")) await pipeline(text, createZstdCompress(), createWriteStream(part));
    else await pipeline(text, createWriteStream(part));
    await rename(part, file);
    return undefined;
  } catch (failure) {
    await rm(part, { force: true });
    const { code, message } = failure as NodeJS.ErrnoException;
    if (code === undefined || !/^E[A-Z]+$/.test(code)) throw failure;
    return problem(
      "UNREADABLE_FILE",
      `${file} cannot be written (${message}); make room, or name another file.`,
    );
  }
}

async function generateToFile(wishes: Asked, file: string): Promise<void> {
  const refusal = await writeLines(printGraph(wishes), file);
  if (refusal !== undefined) return refuse(refusal);
  process.stderr.write(`Made ${wishes.claims} claims up, in ${file}\n`);
  if (wishes.examinations === 0) return;
  const pieces = `${file.replace(/\.jsonl(\.zst)?$/, "")}.pieces.jsonl`;
  const alsoRefused = await writeLines(printPieces(wishes, wishes.examinations), pieces);
  if (alsoRefused !== undefined) return refuse(alsoRefused);
  process.stderr.write(`Made ${wishes.examinations} pieces up, in ${pieces}\n`);
}

async function generateToStore(wishes: Asked): Promise<void> {
  const config = readConfig(process.env);
  if (!("dataFolder" in config)) return refuse(...config);
  const store = await openStore(config, { readOnly: false });
  if (isProblem(store)) return refuse(store);
  try {
    const done = await writeGraph(store, wishes, ({ number }, claims) =>
      process.stderr.write(`revision ${number}: ${claims} of ${wishes.claims} claims\n`),
    );
    if (isProblem(done)) return refuse(done);
    process.stderr.write(`Wrote a made-up graph to ${printPlace(config)}\n`);
  } finally {
    await store.close();
  }
}

/** Makes a large graph up, to a file or into a store. Exit status: 0, or 2 for a refusal or without a number of claims. */
async function main(): Promise<void> {
  const wishes = readWishes();
  if (wishes === undefined) return showUsage(USAGE);
  if (isProblem(wishes)) return refuse(wishes);
  if (wishes.out === undefined) await generateToStore(wishes);
  else await generateToFile(wishes, wishes.out);
}

await runCommand(main);
