import { spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import type { Problem } from "./domain/problem.ts";
import { findJson } from "./formats/find-json.ts";
import type { Verify } from "./ports/verify.ts";

const COMMAND = fileURLToPath(new URL("./verify-store.ts", import.meta.url));

/** A line of the command with `--tell`. */
type Told =
  | { readonly progress: string }
  | { readonly verified: { readonly revisions: number; readonly head: string } }
  | { readonly refused: Problem };

/** Verifies the store of the settings in a process of its own, so that nobody waits for it. */
export const verifyApart: Verify = async (progress) => {
  const child = spawn(process.execPath, [COMMAND, "--tell"], { stdio: ["ignore", "pipe", "ignore"] });
  const failed = new Promise<never>((_, reject) => child.once("error", reject));
  const read = async () => {
    for await (const line of createInterface({ input: child.stdout })) {
      const told = findJson(line) as Told | undefined;
      if (told === undefined) continue;
      if ("progress" in told) progress(() => told.progress);
      else return "verified" in told ? told.verified : told.refused;
    }
    throw new Error("The command that verifies the store ended without a word");
  };
  return Promise.race([read(), failed]);
};
