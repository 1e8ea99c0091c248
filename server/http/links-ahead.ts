import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** One route of the built client: a pattern of paths, and the script files its page needs beside the document's own. */
interface Ahead {
  readonly path: string;
  readonly files: readonly string[];
}

/**
 * The header `Link` for the document at a path, by the `ahead.json` of a built client: a page's own scripts are on their
 * way before the first one runs. None where the build has left no such file or knows no such page.
 */
export function linksAhead(folder: string): (path: string) => string | undefined {
  const file = join(folder, "ahead.json");
  if (!existsSync(file)) return () => undefined;
  const routes = (JSON.parse(readFileSync(file, "utf8")) as readonly Ahead[]).map(({ path, files }) => ({
    pattern: new RegExp(path),
    links: files.map((name) => `<${name}>; rel=modulepreload`).join(", "),
  }));
  return (path) => routes.find(({ pattern }) => pattern.test(path))?.links;
}
