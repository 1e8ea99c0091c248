import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** Quiet, without a network of its own, and able to run as root in a container. */
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
const NAMES = ["chromium", "chromium-browser"];

const canRun = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** The program at CHROMIUM_PATH, else one on the PATH, else the one that its npm package unpacks. */
export async function chromiumPath(): Promise<string> {
  const named = process.env["CHROMIUM_PATH"];
  if (named) {
    if (canRun(named)) return named;
    throw new Error(
      `CHROMIUM_PATH is ${named}, and no program can be run there. Correct it or leave it out.`,
    );
  }
  const folders = (process.env["PATH"] ?? "").split(delimiter);
  const installed = folders.flatMap((folder) => NAMES.map((name) => join(folder, name))).find(canRun);
  if (installed) return installed;
  const { default: packaged } = await import("@sparticuz/chromium");
  return packaged.executablePath();
}

/** Opens a browser for the tests; the caller closes it. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await chromiumPath(), args: FLAGS });
}
