import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { type Problem, problem } from "./domain/problem.ts";

/** The settings of one server. */
export interface Config {
  /** On 127.0.0.1, the only address it listens on; 0 takes a free one. */
  readonly port: number;
  /** Folder of the store. */
  readonly dataFolder: string;
  /** Folder of the built web client. */
  readonly webFolder: string;
  /** Largest body of a request, in bytes. */
  readonly largestBody: number;
  /** Time for one request, in milliseconds. */
  readonly deadline: number;
  /** Highest cost of one operation (docs/spec/5-api.md, A12). */
  readonly highestCost: number;
}

const WEB_FOLDER = fileURLToPath(new URL("../web/dist", import.meta.url));

const NUMBERS = {
  SCRIBELINE_PORT: { least: 0, most: 65_535, otherwise: 4820, what: "a port" },
  SCRIBELINE_LARGEST_BODY: { least: 1024, most: 100_000_000, otherwise: 256_000, what: "bytes" },
  SCRIBELINE_DEADLINE: { least: 100, most: 600_000, otherwise: 10_000, what: "milliseconds" },
  SCRIBELINE_HIGHEST_COST: { least: 100, most: 10_000_000, otherwise: 10_000, what: "a cost" },
} as const;

/** Reads the settings from the environment; a folder that is not absolute is taken from the working folder. */
export function readConfig(
  env: Readonly<Record<string, string | undefined>>,
): Config | readonly [Problem, ...Problem[]] {
  const problems: Problem[] = [];
  const number = (name: keyof typeof NUMBERS): number => {
    const { least, most, otherwise, what } = NUMBERS[name];
    const text = env[name]?.trim();
    if (text === undefined || text === "") return otherwise;
    const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
    if (value >= least && value <= most) return value;
    problems.push(
      problem(
        "WRONG_FORMAT",
        `${name} is "${text}"; it has to be ${what}, a whole number from ${least} to ${most}. Leave it out for ${otherwise}.`,
        [name],
      ),
    );
    return otherwise;
  };
  const config: Config = Object.freeze({
    port: number("SCRIBELINE_PORT"),
    dataFolder: resolve(env["SCRIBELINE_DATA"]?.trim() || "data"),
    webFolder: WEB_FOLDER,
    largestBody: number("SCRIBELINE_LARGEST_BODY"),
    deadline: number("SCRIBELINE_DEADLINE"),
    highestCost: number("SCRIBELINE_HIGHEST_COST"),
  });
  const [first, ...rest] = problems;
  return first === undefined ? config : [first, ...rest];
}
