import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

export interface Ended {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** A script of the project as a process of its own; `ended` resolves when it has. `stderr` may be an open file instead. */
export function runNode(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
  stderr: "pipe" | number = "pipe",
): { readonly child: ChildProcess; readonly ended: Promise<Ended>; readonly said: () => string } {
  const child = spawn(process.execPath, args, {
    cwd: ROOT,
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", stderr],
  });
  let out = "";
  let err = "";
  child.stdout?.setEncoding("utf8").on("data", (text: string) => {
    out += text;
  });
  child.stderr?.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  const ended = new Promise<Ended>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (exit) => resolve({ exit, out, err }));
  });
  return { child, ended, said: () => out + err };
}
