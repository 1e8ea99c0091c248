import { type ChildProcess, execFileSync, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const CONFIGURATION = join(ROOT, "docs/deploy/haproxy.cfg");
/** Milliseconds, as the files of docs/deploy set it. */
export const DRAIN = 4000;
/** How long a server may take until it is ready on a busy machine, in milliseconds. */
const LONGEST_START = 120_000;

export interface TwoBehindAProxy {
  /** Where the proxy is reached; with the name it has in its certificate. */
  readonly port: number;
  readonly host: string;
  readonly authorization: string;
  readonly certificate: Buffer;
  /** Of the store, if it is a file. */
  readonly folder: string;
  /** Stops one of the two by a signal, until it is gone; its number is 0 or 1. Gives how long it took, in milliseconds. */
  end(which: number, signal: "SIGTERM" | "SIGKILL"): Promise<number>;
  /** Starts it again, until the proxy sends requests there. */
  startAgain(which: number): Promise<void>;
  /** The numbers that one of the two tells, as text. */
  numbersOf(which: number): Promise<string>;
  /** What the proxy logged, a line each. */
  readonly log: () => readonly Readonly<Record<string, unknown>>[];
  stop(): Promise<void>;
}

/** The proxy's program: `HAPROXY` names it, else the one on the path. Undefined where there is none. */
export function findProxy(): string | undefined {
  const program = process.env["HAPROXY"] || "haproxy";
  return spawnSync(program, ["-v"]).status === 0 ? program : undefined;
}

/** Two Scribelines over one store, behind a proxy with the configuration of docs/deploy but for its ports and how many it takes. */
export async function openTwo(
  proxy: string,
  settings: Readonly<Record<string, string>>,
): Promise<TwoBehindAProxy> {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-two-"));
  const host = "graph.museum.example";
  const [a = 0, b = 0, https = 0, http = 0, numbers = 0] = await freePorts(5);
  const certificate = makeCertificate(folder, host);
  const configuration = readFileSync(CONFIGURATION, "utf8")
    .replace("127.0.0.1:4820", `127.0.0.1:${a}`)
    .replace("127.0.0.1:4821", `127.0.0.1:${b}`)
    .replace("127.0.0.1:8405", `127.0.0.1:${numbers}`)
    // Two descriptors a connection: more than a machine may give a program that was started by hand.
    .replace("maxconn 10000", "maxconn 1000");
  writeFileSync(join(folder, "haproxy.cfg"), configuration);
  const hash = execFileSync("openssl", ["passwd", "-5", "-salt", "0123456789", "correct"], {
    encoding: "utf8",
  });
  writeFileSync(join(folder, "people.cfg"), `userlist people\n    user anna password ${hash.trim()}\n`);
  const children: (ChildProcess | undefined)[] = [];
  const startOne = async (which: number): Promise<void> => {
    const port = which === 0 ? a : b;
    const child = spawn(process.execPath, ["server/start.ts", "--no-build"], {
      cwd: ROOT,
      env: {
        ...process.env,
        ...{
          SCRIBELINE_PORT: String(port),
          SCRIBELINE_ORIGINS: `https://${host}:${https}`,
          SCRIBELINE_DATA: folder,
          SCRIBELINE_DRAIN: String(DRAIN),
        },
        ...settings,
      },
      stdio: ["ignore", "ignore", "inherit"],
    });
    children[which] = child;
    await until(async () => (await fetch(`http://127.0.0.1:${port}/readyz`)).ok);
  };
  const stop = async (): Promise<void> => {
    const all = children.filter((child) => child?.exitCode === null && child.signalCode === null);
    const ended = all.map((child) => new Promise((resolve) => child?.once("exit", resolve)));
    for (const child of all) child?.kill("SIGTERM");
    await Promise.all(ended);
    rmSync(folder, { recursive: true, force: true });
  };
  const orStop = async (starting: Promise<void>): Promise<void> => {
    try {
      await starting;
    } catch (failure) {
      await stop();
      throw failure;
    }
  };
  await orStop(startOne(0).then(() => startOne(1)));
  let logged = "";
  const front = spawn(proxy, ["-db", "-f", join(folder, "haproxy.cfg"), "-f", join(folder, "people.cfg")], {
    env: {
      ...process.env,
      PROXY_CERTIFICATE: join(folder, "certificate.pem"),
      PROXY_HTTPS: `127.0.0.1:${https}`,
      PROXY_HTTP: `127.0.0.1:${http}`,
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  children.push(front);
  front.stdout.setEncoding("utf8").on("data", (text: string) => {
    logged += text;
  });
  await orStop(
    until(async () => {
      if (front.exitCode !== null) throw new HasEnded(`The proxy ended with ${front.exitCode}`);
      return (await fetch(`http://127.0.0.1:${numbers}/metrics`)).ok;
    }),
  );
  return {
    ...{ folder, port: https, host, certificate, authorization: `Basic ${btoa("anna:correct")}` },
    end: async (which, signal) => {
      const begun = performance.now();
      const child = children[which];
      const ended = new Promise((resolve) => child?.once("exit", resolve));
      child?.kill(signal);
      await ended;
      return performance.now() - begun;
    },
    numbersOf: async (which) => (await fetch(`http://127.0.0.1:${which === 0 ? a : b}/metrics`)).text(),
    startAgain: async (which) => {
      await startOne(which);
      // The proxy wants two good answers, a second apart, before it sends anything there again.
      await pause(3000);
    },
    log: () =>
      logged
        .split("\n")
        .filter((line) => line.startsWith("{"))
        .map((line) => JSON.parse(line) as Record<string, unknown>),
    stop,
  };
}

function makeCertificate(folder: string, host: string): Buffer {
  const [key, certificate] = [join(folder, "key.pem"), join(folder, "cert.pem")];
  execFileSync(
    "openssl",
    [
      ...["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", `/CN=${host}`],
      ...["-addext", `subjectAltName=DNS:${host}`, "-keyout", key, "-out", certificate],
    ],
    { stdio: "ignore" },
  );
  const pem = readFileSync(certificate);
  writeFileSync(join(folder, "certificate.pem"), `${pem.toString()}${readFileSync(key, "utf8")}`);
  return pem;
}

async function freePorts(count: number): Promise<readonly number[]> {
  const servers = await Promise.all(
    Array.from({ length: count }, async () => {
      const server = createServer();
      await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
      return server;
    }),
  );
  return Promise.all(
    servers.map((server) => {
      const address = server.address();
      return new Promise<number>((resolve) =>
        server.close(() => resolve(typeof address === "object" && address ? address.port : 0)),
      );
    }),
  );
}

/** Is waited for no longer. */
class HasEnded extends Error {}

async function until(isSo: () => Promise<boolean>): Promise<void> {
  const end = performance.now() + LONGEST_START;
  const isSoNow = async (): Promise<boolean> => {
    try {
      return await isSo();
    } catch (failure) {
      if (failure instanceof HasEnded) throw failure;
      return false;
    }
  };
  while (!(await isSoNow())) {
    if (performance.now() > end) throw new Error("A server was not ready in time");
    await pause(100);
  }
}
