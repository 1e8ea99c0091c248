import { atEnd } from "./at-end.ts";
import { post } from "./open-http.ts";
import { type Ended, runNode } from "./run-node.ts";

export interface ServerProcess {
  readonly url: string;
  readonly said: () => string;
  readonly ended: Promise<Ended>;
  kill(signal: "SIGTERM" | "SIGKILL"): void;
}

/** Milliseconds that a start may take on a busy machine. */
const LONGEST_START = 90_000;

type Env = Readonly<Record<string, string>>;

/** `npm start` as a process of its own, on a free port; resolves when it says where it is. It does not outlive the tests. */
export async function startServerProcess(env: Env): Promise<ServerProcess> {
  const { child, ended, said } = runNode(["server/start.ts", "--no-build"], { SCRIBELINE_PORT: "0", ...env });
  atEnd(() => child.kill("SIGKILL"));
  const address = /Scribeline is at (http:\S+)/;
  let hasEnded = false;
  void ended.then(() => {
    hasEnded = true;
  });
  for (const since = performance.now(); !address.test(said()); ) {
    if (hasEnded || performance.now() - since > LONGEST_START) throw new Error(`No server: ${said()}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  const url = said().match(address)?.[1] ?? "";
  return { url, said, ended, kill: (signal) => void child.kill(signal) };
}

export interface Told {
  // What is asked for is the test's to know.
  // biome-ignore lint/suspicious/noExplicitAny: see above
  readonly data: any;
  readonly status: number;
  /** The number of the newest write that the process knew of. */
  readonly sequence: number;
}

/** Asks a server; `sequence` is the write that it has to know of. */
export async function askServer(
  url: string,
  query: string,
  variables: object = {},
  sequence?: number,
): Promise<Told> {
  const headers: Record<string, string> =
    sequence === undefined ? {} : { "Scribeline-Sequence": `${sequence}` };
  const { status, text, headers: told } = await post(url, { query, variables }, headers);
  return { data: JSON.parse(text).data, status, sequence: Number(told["scribeline-sequence"]) };
}
