import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import neo4j from "neo4j-driver";
import type { RunningNeo4j } from "./found-neo4j.ts";
import { makeCertificate } from "./make-certificate.ts";
import { removeFolder, temporaryFolder } from "./temporary-folder.ts";

interface Parts {
  readonly java: string;
  /** Folder of the jars. */
  readonly jars: string;
  readonly version: string;
}

/** A server to measure with: memory as it would have in earnest, all compilers, and a folder that stays. */
export interface Measured {
  /** Of the Java heap and of the page cache, as Java writes it: "2g". */
  readonly heap: string;
  readonly pages: string;
  /** Where it keeps its data from run to run. */
  readonly home: string;
}

/** How long a start may take on a busy machine, in milliseconds. */
const LONGEST_START = 280_000;
const PASSWORD = "a-password-for-tests";

/** Small, quick to start, and short-lived: it plans no query anew while tests fill it, and compiles lightly. */
const LIGHT = ["-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"];
const FOR_TESTS = ["-Xms128m", "-Xmx512m", ...LIGHT];
const toMeasure = ({ heap }: Measured): readonly string[] => [`-Xms${heap}`, `-Xmx${heap}`, "-XX:+UseG1GC"];
const JVM = [
  "-XX:-OmitStackTraceInFastThrow",
  ...["-Dlog4j2.disable.jmx=true", "-Djava.awt.headless=true", "-Dfile.encoding=UTF-8"],
  ...["nio", "io", "util.concurrent"].map((name) => `--add-opens=java.base/java.${name}=ALL-UNNAMED`),
  ...["--add-opens=java.base/sun.nio.ch=ALL-UNNAMED", "--enable-native-access=ALL-UNNAMED"],
  ...["--add-modules=jdk.incubator.vector"],
];

const settings = (home: string, port: number, pages = "64m"): string => `
server.bolt.listen_address=127.0.0.1:${port}
server.bolt.advertised_address=127.0.0.1:${port}
server.bolt.tls_level=OPTIONAL
dbms.ssl.policy.bolt.enabled=true
dbms.ssl.policy.bolt.base_directory=${join(home, "certificates")}
dbms.ssl.policy.bolt.client_auth=NONE
server.http.enabled=false
server.https.enabled=false
server.memory.pagecache.size=${pages}
dbms.usage_report.enabled=false
dbms.cypher.min_replan_interval=1h
db.tx_log.preallocate=false
`;

/** Otherwise a server that is told to end waits ten seconds for what nobody asks any more. The newer line calls it by another name. */
const endsAtOnce = (isLine5: boolean): string =>
  `internal.dbms.bolt.netty_server_shutdown_quiet_period${isLine5 ? "=0" : "_duration=0s"}\n`;

/** A server that can be killed and started again on the same files and the same port. */
export interface KillableNeo4j extends RunningNeo4j {
  /** kill -9, until it is gone. */
  kill(): Promise<void>;
  /** SIGTERM, until it is gone. */
  end(): Promise<void>;
  startAgain(): Promise<void>;
  /** Fills its database in bulk with the files that these arguments name, in place of what it holds. It has to have ended. */
  fill(argumentsFile: string): Promise<Filled>;
  /** Its own folder: what it was set up with, its data and logs. */
  readonly home: string;
}

/** How a bulk import ended. */
export interface Filled {
  readonly exit: number | null;
  readonly said: string;
}

/**
 * Starts a server on a free port of this machine, with a password and a certificate. `env` are settings of its process
 * besides those of this one.
 */
export async function startServer(
  { java, jars, version }: Parts,
  env: Readonly<Record<string, string>> = {},
  measured?: Measured,
): Promise<KillableNeo4j> {
  const home = measured?.home ?? temporaryFolder();
  const port = await findFreePort();
  const isNew = !existsSync(join(home, "data"));
  for (const folder of ["conf", "data", "logs", "run"]) mkdirSync(join(home, folder), { recursive: true });
  makeCertificate(join(home, "certificates"));
  const isLine5 = version.startsWith("5.");
  const conf = `${settings(home, port, measured?.pages)}${endsAtOnce(isLine5)}`;
  writeFileSync(join(home, "conf", "neo4j.conf"), conf);
  const main = isLine5 ? "CommunityEntryPoint" : "Neo4jCommunity";
  const args = [
    ...(measured === undefined ? FOR_TESTS : toMeasure(measured)),
    ...[...JVM, "-cp", join(jars, "*"), `org.neo4j.server.${main}`],
    ...[`--home-dir=${home}`, `--config-dir=${join(home, "conf")}`, "--console-mode"],
  ];
  let child: ChildProcess;
  const kill = (): void => void child.kill("SIGKILL");
  const start = async (): Promise<void> => {
    child = spawn(java, args, { stdio: ["ignore", "pipe", "pipe"], env: { ...process.env, ...env } });
    try {
      await untilStarted(child);
    } catch (failure) {
      kill();
      throw failure;
    }
  };
  const end = async (signal: "SIGKILL" | "SIGTERM"): Promise<void> => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((resolve) => child.once("exit", resolve));
    child.kill(signal);
    const impatience = setTimeout(kill, 15_000);
    await ended;
    clearTimeout(impatience);
  };
  process.once("exit", kill);
  await start();
  try {
    if (isNew) await setPassword(`bolt://127.0.0.1:${port}`);
  } catch (failure) {
    kill();
    throw failure;
  }
  return {
    ...{ host: `127.0.0.1:${port}`, user: "neo4j", password: PASSWORD, database: "neo4j", home },
    from: `the jars of ${version}`,
    kill: () => end("SIGKILL"),
    end: () => end("SIGTERM"),
    startAgain: start,
    fill: (argumentsFile) =>
      untilEnded(
        spawn(
          java,
          [
            ...["-Xmx256m", ...LIGHT, ...JVM, "-cp", join(jars, "*"), "org.neo4j.cli.AdminTool"],
            ...["database", "import", "full", "neo4j", `@${argumentsFile}`, "--overwrite-destination=true"],
          ],
          {
            stdio: ["ignore", "pipe", "pipe"],
            env: { ...process.env, NEO4J_HOME: home, NEO4J_CONF: join(home, "conf") },
          },
        ),
      ),
    stop: async () => {
      await end("SIGTERM");
      process.off("exit", kill);
      if (measured === undefined) removeFolder(home);
    },
  };
}

/** Below those that the machine gives to connections: it must be free still when Java has started, and started again. */
const PORTS = { from: 12_000, to: 30_000 } as const;

const isFree = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const server = createServer().once("error", () => resolve(false));
    server.listen(port, "127.0.0.1", () => server.close(() => resolve(true)));
  });

async function findFreePort(): Promise<number> {
  for (;;) {
    const port = PORTS.from + Math.floor(Math.random() * (PORTS.to - PORTS.from));
    if (await isFree(port)) return port;
  }
}

function untilStarted(child: ChildProcess): Promise<void> {
  let said = "";
  return new Promise((resolve, reject) => {
    const fail = (why: string): void => reject(new Error(`Neo4j did not start: ${why}\n${said}`));
    const impatience = setTimeout(() => fail("it took too long"), LONGEST_START);
    child.once("error", (error) => fail(error.message));
    child.once("exit", (status) => fail(`it ended with ${status}`));
    const listen = (text: Buffer): void => {
      said += text.toString();
      if (!said.includes("Started.")) return;
      clearTimeout(impatience);
      resolve();
    };
    child.stdout?.on("data", listen);
    child.stderr?.on("data", listen);
  });
}

function untilEnded(child: ChildProcess): Promise<Filled> {
  let said = "";
  const listen = (text: Buffer): void => {
    said += text.toString();
  };
  child.stdout?.on("data", listen);
  child.stderr?.on("data", listen);
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (exit) => resolve({ exit, said }));
  });
}

/** A new server lets its first user in only to choose a password. */
async function setPassword(url: string): Promise<void> {
  const driver = neo4j.driver(url, neo4j.auth.basic("neo4j", "neo4j"), { telemetryDisabled: true });
  try {
    await driver.executeQuery(
      "ALTER CURRENT USER SET PASSWORD FROM 'neo4j' TO $password",
      { password: PASSWORD },
      { database: "system" },
    );
  } finally {
    await driver.close();
  }
}
