import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";
import { PAGES_AHEAD } from "../pages-ahead.ts";

const WEB = join(import.meta.dirname, "..");

/** What is taken of a chunk of the build. */
interface Built {
  readonly type: "chunk";
  readonly fileName: string;
  readonly isEntry: boolean;
  readonly facadeModuleId: string | null;
  readonly imports: readonly string[];
}

/** `/terms/:id` as a pattern of paths. */
const patternOf = (route: string): string => `^${route.replaceAll(/:\w+/g, "[^/]+")}$`;

/**
 * Writes `ahead.json`: for each route a pattern of paths and the script files that its page needs beside those of the
 * document. The server names them in the header `Link`.
 */
export const filesAhead: Plugin = {
  name: "scribeline:files-ahead",
  apply: "build",
  writeBundle({ dir = "" }, bundle) {
    const chunks = new Map(
      Object.values(bundle).flatMap((file) =>
        file.type === "chunk" ? [[file.fileName, file as Built]] : [],
      ),
    );
    const withImports = (file: string, found = new Set<string>()): Set<string> => {
      if (found.has(file)) return found;
      found.add(file);
      for (const imported of chunks.get(file)?.imports ?? []) withImports(imported, found);
      return found;
    };
    const all = [...chunks.values()];
    const first = new Set(
      all.filter((chunk) => chunk.isEntry).flatMap(({ fileName }) => [...withImports(fileName)]),
    );
    const filesOf = (module: string): string[] => {
      const chunk = all.find(({ facadeModuleId }) => facadeModuleId === join(WEB, module));
      if (chunk === undefined)
        throw new Error(`pages-ahead.ts names ${module}, which the build has no file for.`);
      return [...withImports(chunk.fileName)].filter((file) => !first.has(file));
    };
    const ahead = Object.entries(PAGES_AHEAD).map(([route, modules]) => ({
      path: patternOf(route),
      files: [...new Set(modules.flatMap(filesOf))].map((file) => `/${file}`),
    }));
    writeFileSync(join(dir, "ahead.json"), JSON.stringify(ahead));
  },
};
