import { spawn } from "node:child_process";
import { readdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
/** What the built client follows from. */
const SOURCES = ["web", "server/domain", "package-lock.json"];
/** Folders of a source folder that the build makes or does not read. */
const LEFT_OUT = new Set(["dist", "node_modules"]);

function changedAt(path: string): number {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (!stats?.isDirectory()) return stats?.mtimeMs ?? 0;
  const inside = readdirSync(path).filter((name) => !LEFT_OUT.has(name));
  return Math.max(0, ...inside.map((name) => changedAt(join(path, name))));
}

/** The built client is missing, or older than what it is built from. */
export function isWebStale(webFolder: string): boolean {
  const built = changedAt(join(webFolder, "index.html"));
  return built === 0 || SOURCES.some((source) => changedAt(join(ROOT, source)) > built);
}

/** Builds the web client into `web/dist`. A build that fails is not taken for a client afterwards. */
export function buildWeb(webFolder: string): Promise<void> {
  const vite = join(ROOT, "node_modules/vite/bin/vite.js");
  return new Promise((resolve, reject) => {
    const build = spawn(
      process.execPath,
      [vite, "build", "--config", "web/vite.config.ts", "--logLevel", "warn"],
      {
        cwd: ROOT,
        stdio: ["ignore", "inherit", "inherit"],
      },
    );
    build.once("error", reject);
    build.once("exit", (code) => {
      if (code === 0) return resolve();
      rmSync(join(webFolder, "index.html"), { force: true });
      reject(new Error(`The web client could not be built (exit ${code}); what went wrong stands above.`));
    });
  });
}
