import { once } from "node:events";
import { type Ended, runNode } from "#tests/support/run-node.ts";

/** Where a running server takes requests, and where changes of the graph. */
export interface Doors {
  readonly url: string;
  readonly commits: string;
}

/** A server in a process of its own. */
export interface ScribelineProcess extends Doors {
  readonly pid: number;
  /** kill -9, until it is gone. */
  kill(): Promise<void>;
  /** SIGTERM; the exit status. */
  stop(): Promise<number | null>;
  readonly ended: Promise<Ended>;
  readonly said: () => string;
}

const SCRIPT = "tests/faults/serve-scribeline.ts";

/** Starts a server over the store that the settings name; `preload` are modules for Node to load first. */
export async function startScribeline(
  settings: Readonly<Record<string, string>>,
  preload: readonly string[] = [],
  stderr: "pipe" | number = "pipe",
): Promise<ScribelineProcess> {
  const begun = beginScribeline(settings, preload, stderr);
  const doors = await begun.ready;
  if ("exit" in doors) throw new Error(`The server did not start (${doors.exit}): ${doors.err}${doors.out}`);
  return { ...doors, ...begun.process };
}

/** The same without waiting until it serves; `ready` says how it ended if it never did. */
export function beginScribeline(
  settings: Readonly<Record<string, string>>,
  preload: readonly string[] = [],
  stderr: "pipe" | number = "pipe",
): { readonly ready: Promise<Doors | Ended>; readonly process: Omit<ScribelineProcess, keyof Doors> } {
  const args = preload.flatMap((file) => ["--import", file]);
  const { child, ended, said } = runNode([...args, SCRIPT], { SCRIBELINE_PORT: "0", ...settings }, stderr);
  const end = async (signal: "SIGKILL" | "SIGTERM"): Promise<number | null> => {
    if (child.exitCode === null && child.signalCode === null) {
      child.kill(signal);
      if (child.exitCode === null && child.signalCode === null) await once(child, "exit");
    }
    return child.exitCode;
  };
  const kill = (): void => void child.kill("SIGKILL");
  process.once("exit", kill);
  child.once("exit", () => process.off("exit", kill));
  const ready = new Promise<Doors | Ended>((resolve, reject) => {
    child.stdout?.on("data", () => {
      const line = said().match(/^\{"url".*\}$/m)?.[0];
      if (line !== undefined) resolve(JSON.parse(line) as Doors);
    });
    ended.then(resolve, reject);
  });
  return {
    ready,
    process: {
      ...{ pid: child.pid ?? 0, ended, said },
      kill: async () => void (await end("SIGKILL")),
      stop: () => end("SIGTERM"),
    },
  };
}
