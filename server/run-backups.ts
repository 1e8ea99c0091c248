import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Config } from "./config.ts";
import { scheduleBackups } from "./keeping/schedule-backups.ts";
import type { Log } from "./ports/log.ts";

const COMMAND = fileURLToPath(new URL("./back-up-store.ts", import.meta.url));

/**
 * Makes backups beside the server as the settings say, each in a process of its own, so that nobody waits for it. Gives what
 * ends that; a backup under way is broken off, and what it leaves is cleared by the next.
 */
export function runBackups({ backups }: Pick<Config, "backups">, log: Log): () => void {
  const { folder, hours } = backups;
  if (folder === undefined) return () => {};
  const stop = new AbortController();
  const run = (): Promise<void> =>
    new Promise((resolve) => {
      const child = spawn(process.execPath, [COMMAND, folder, "--if-due", String(hours)], {
        ...{ stdio: "ignore", signal: stop.signal },
      });
      child.once("error", (failure) => {
        if (!stop.signal.aborted)
          log({ level: "error", event: "backup", code: "FAILED", message: failure.message });
        resolve();
      });
      child.once("close", () => resolve());
    });
  const end = scheduleBackups({ folder, hours, run, now: () => new Date(), log });
  return () => {
    end();
    stop.abort();
  };
}
