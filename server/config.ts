import { readFileSync } from "node:fs";
import { isIP } from "node:net";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { ROLES, type Role } from "./domain/people/caller.ts";
import { isProblem, type Problem, problem } from "./domain/problem.ts";
import type { ProviderSettings } from "./providers/open-provider.ts";
import { ADDRESS_FORM, type Neo4jAddress, readNeo4jAddress } from "./stores/neo4j/neo4j-address.ts";

/** The settings of one server. */
export interface Config {
  /** The one address that it listens on; one that is no loopback address only with accounts and TLS in front. */
  readonly address: string;
  /** Whether one has to sign in. */
  readonly accounts: boolean;
  /** The least role that has to sign in in two steps; without it nobody has to. */
  readonly secondStepFrom?: Role;
  /** Another provider that people sign in at (OpenID Connect). */
  readonly provider?: ProviderSettings;
  /** 0 takes a free one. */
  readonly port: number;
  /** Under which a proxy in front of it is reached by browsers, like `https://graph.museum.example`; beside its own machine's names. */
  readonly origins: readonly string[];
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
  /** Milliseconds between two looks for what other processes have written to the store. */
  readonly followEvery: number;
  /** Milliseconds that a request waits at most for a write that it has to know of (docs/spec/18-running.md, H5). */
  readonly longestWait: number;
  /** Milliseconds that it goes on answering after it was told to stop, while it says that it is not ready. */
  readonly drain: number;
  /** Where the server makes backups (without it, it makes none), how many hours lie between two, how many are kept. */
  readonly backups: { readonly folder?: string; readonly hours: number; readonly keep: number };
  /** Whether the newest revision is walked over in memory (docs/spec/4-store.md, S51). */
  readonly mirror: boolean;
}

const LOOPBACKS = ["127.0.0.1", "::1"] as const;

const WEB_FOLDER = fileURLToPath(new URL("../web/dist", import.meta.url));

const NUMBERS = {
  SCRIBELINE_PORT: { least: 0, most: 65_535, otherwise: 4820, what: "a port" },
  SCRIBELINE_LARGEST_BODY: { least: 1024, most: 100_000_000, otherwise: 256_000, what: "bytes" },
  SCRIBELINE_DEADLINE: { least: 100, most: 600_000, otherwise: 10_000, what: "milliseconds" },
  SCRIBELINE_HIGHEST_COST: { least: 100, most: 10_000_000, otherwise: 10_000, what: "a cost" },
  SCRIBELINE_FOLLOW_EVERY: { least: 5, most: 60_000, otherwise: 250, what: "milliseconds" },
  SCRIBELINE_LONGEST_WAIT: { least: 0, most: 60_000, otherwise: 3_000, what: "milliseconds" },
  SCRIBELINE_BACKUP_HOURS: { least: 1, most: 8_760, otherwise: 24, what: "hours" },
  SCRIBELINE_BACKUPS_KEPT: { least: 1, most: 10_000, otherwise: 7, what: "how many backups are kept" },
  SCRIBELINE_DRAIN: { least: 0, most: 600_000, otherwise: 0, what: "milliseconds" },
} as const;

/** Reads the settings from the environment; a folder that is not absolute is taken from the working folder. */
export function readConfig(env: Env): Config | readonly [Problem, ...Problem[]] {
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
  const sound = <Value>(read: Value | Problem, otherwise: Value): Value => {
    if (!isProblem(read)) return read;
    problems.push(read);
    return otherwise;
  };
  const neo4j = sound(readStore(env), undefined);
  const accounts = sound(readSwitch(env, "SCRIBELINE_ACCOUNTS", "off"), false);
  const secondStepFrom = sound(readSecondStep(env["SCRIBELINE_SECOND_STEP"]), undefined);
  const provider = sound(readProvider(env), undefined);
  const origins = sound<readonly string[]>(readOrigins(env["SCRIBELINE_ORIGINS"]), []);
  const config: Config = Object.freeze({
    ...(neo4j === undefined ? {} : { neo4j }),
    ...{ accounts, origins },
    ...(provider === undefined ? {} : { provider }),
    ...(secondStepFrom === undefined ? {} : { secondStepFrom }),
    address: sound(readAddress(env["SCRIBELINE_ADDRESS"], accounts, origins), LOOPBACKS[0]),
    port: number("SCRIBELINE_PORT"),
    dataFolder: resolve(env["SCRIBELINE_DATA"]?.trim() || "data"),
    webFolder: WEB_FOLDER,
    largestBody: number("SCRIBELINE_LARGEST_BODY"),
    deadline: number("SCRIBELINE_DEADLINE"),
    highestCost: number("SCRIBELINE_HIGHEST_COST"),
    followEvery: number("SCRIBELINE_FOLLOW_EVERY"),
    longestWait: number("SCRIBELINE_LONGEST_WAIT"),
    drain: number("SCRIBELINE_DRAIN"),
    backups: {
      ...readFolder(env["SCRIBELINE_BACKUPS"]),
      ...{ hours: number("SCRIBELINE_BACKUP_HOURS"), keep: number("SCRIBELINE_BACKUPS_KEPT") },
    },
    mirror: sound(readSwitch(env, "SCRIBELINE_MIRROR", "on"), true),
  });
  const [first, ...rest] = problems;
  return first === undefined ? config : [first, ...rest];
}

type Env = Readonly<Record<string, string | undefined>>;

/** What is refused is not said again: it may hold a password. */
function readStore(env: Env): Neo4jAddress | Problem | undefined {
  const text = readText(env, "SCRIBELINE_STORE");
  if (text === undefined || isProblem(text)) return text;
  return (
    readNeo4jAddress(text) ??
    problem(
      "WRONG_FORMAT",
      `SCRIBELINE_STORE is no address of a store; it has to be like ${ADDRESS_FORM} (or bolt://, and +s for TLS), with signs such as @ or / in the password as %40 or %2F. Leave it out for a file in the data folder.`,
      ["SCRIBELINE_STORE"],
    )
  );
}

/** A setting, or what stands in the file that `<name>_FILE` names: secrets come as files. */
function readText(env: Env, name: string): string | Problem | undefined {
  const text = env[name]?.trim() || undefined;
  const file = env[`${name}_FILE`]?.trim();
  if (file === undefined || file === "") return text;
  const refusal = (why: string) => problem("WRONG_FORMAT", why, [`${name}_FILE`]);
  if (text !== undefined) return refusal(`${name} and ${name}_FILE are both set; leave one out.`);
  try {
    return readFileSync(file, "utf8").trim() || refusal(`The file that ${name}_FILE names is empty.`);
  } catch {
    return refusal(`The file that ${name}_FILE names, ${file}, cannot be read.`);
  }
}

const readFolder = (setting: string | undefined): { readonly folder?: string } => {
  const folder = setting?.trim() || undefined;
  return folder === undefined ? {} : { folder: resolve(folder) };
};

function readSwitch(env: Env, name: string, otherwise: "on" | "off"): boolean | Problem {
  const text = env[name]?.trim() || otherwise;
  if (text === "on" || text === "off") return text === "on";
  return problem(
    "WRONG_FORMAT",
    `${name} is "${text}"; it has to be on or off. Leave it out for ${otherwise}.`,
    [name],
  );
}

function readSecondStep(setting: string | undefined): Role | Problem | undefined {
  const text = setting?.trim() || "off";
  if (text === "off") return undefined;
  return (
    ROLES.find((role) => role === text) ??
    problem(
      "WRONG_FORMAT",
      `SCRIBELINE_SECOND_STEP is "${text}"; it has to be off or the least role that has to sign in in two steps: ${ROLES.join(", ")}. Leave it out for off.`,
      ["SCRIBELINE_SECOND_STEP"],
    )
  );
}

/** All of it or nothing; what is refused is not said again: it may be a secret. */
function readProvider(env: Env): ProviderSettings | Problem | undefined {
  const issuer = env["SCRIBELINE_OIDC_ISSUER"]?.trim() || undefined;
  const client = env["SCRIBELINE_OIDC_CLIENT"]?.trim() || undefined;
  const secret = readText(env, "SCRIBELINE_OIDC_SECRET");
  if (isProblem(secret)) return secret;
  if (issuer === undefined && client === undefined && secret === undefined) return undefined;
  const refusal = (name: string, why: string) => problem("WRONG_FORMAT", `${name} ${why}`, [name]);
  if (client === undefined) return refusal("SCRIBELINE_OIDC_CLIENT", "is missing beside the issuer.");
  if (secret === undefined) return refusal("SCRIBELINE_OIDC_SECRET", "is missing beside the issuer.");
  const isSafe = /^https:\/\/|^http:\/\/(?:localhost|127\.0\.0\.1|\[::1\])[:/]/.test(`${issuer}/`);
  if (issuer === undefined || !URL.canParse(issuer) || !isSafe)
    return refusal("SCRIBELINE_OIDC_ISSUER", "has to be the https address of the provider's issuer.");
  return { issuer, client, secret, name: env["SCRIBELINE_OIDC_NAME"]?.trim() || new URL(issuer).hostname };
}

/** Anything but loopback is refused until one has to sign in, and until the passwords come over TLS. */
function readAddress(
  setting: string | undefined,
  accounts: boolean,
  origins: readonly string[],
): string | Problem {
  const text = setting?.trim() || LOOPBACKS[0];
  const refusal = (why: string) =>
    problem("WRONG_FORMAT", `SCRIBELINE_ADDRESS is "${text}"; ${why}`, ["SCRIBELINE_ADDRESS"]);
  if (LOOPBACKS.some((address) => address === text)) return text;
  if (isIP(text) === 0)
    return refusal(
      "it has to be an address of this machine in digits: 127.0.0.1, ::1, or one of its network.",
    );
  if (!accounts)
    return refusal(
      "without accounts it has to be 127.0.0.1 or ::1: whoever reaches Scribeline can change everything. Set SCRIBELINE_ACCOUNTS=on, so that people have to sign in (docs/deploy.md).",
    );
  if (!origins.some((origin) => origin.startsWith("https:")))
    return refusal(
      "passwords would go over the network in the clear. Put a proxy with TLS in front, and name it in SCRIBELINE_ORIGINS as https://… (docs/deploy.md).",
    );
  return text;
}

function readOrigins(setting: string | undefined): readonly string[] | Problem {
  const texts = (setting ?? "").split(/[\s,]+/).filter((text) => text !== "");
  const wrong = texts.find(
    (text) => !/^https?:\/\/[a-z0-9.-]+(?::\d{1,5})?$/i.test(text) || !URL.canParse(text),
  );
  return wrong === undefined
    ? texts.map((text) => new URL(text).origin)
    : problem(
        "WRONG_FORMAT",
        `SCRIBELINE_ORIGINS holds "${wrong}"; it has to be addresses as browsers show them, without a path, like https://graph.museum.example, several with commas between. Leave it out where no proxy stands in front.`,
        ["SCRIBELINE_ORIGINS"],
      );
}
