import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import { ADDRESS_FORM, type Neo4jAddress, readNeo4jAddress } from "./stores/neo4j/neo4j-address.ts";

/** The settings of one server. */
export interface Config {
  /** On 127.0.0.1, the only address it listens on; 0 takes a free one. */
  readonly port: number;
  /** Folder of the store, unless it lies on a Neo4j server. */
  readonly dataFolder: string;
  readonly neo4j?: Neo4jAddress;
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
  const neo4j = readStore(env["SCRIBELINE_STORE"]);
  if (isProblem(neo4j)) problems.push(neo4j);
  const config: Config = Object.freeze({
    ...(neo4j === undefined || isProblem(neo4j) ? {} : { neo4j }),
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

/** What is refused is not said again: it may hold a password. */
function readStore(setting: string | undefined): Neo4jAddress | Problem | undefined {
  const text = setting?.trim();
  if (text === undefined || text === "") return undefined;
  return (
    readNeo4jAddress(text) ??
    problem(
      "WRONG_FORMAT",
      `SCRIBELINE_STORE is no address of a store; it has to be like ${ADDRESS_FORM} (or bolt://, and +s for TLS), with signs such as @ or / in the password as %40 or %2F. Leave it out for a file in the data folder.`,
      ["SCRIBELINE_STORE"],
    )
  );
}
