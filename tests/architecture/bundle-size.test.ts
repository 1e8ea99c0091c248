import { existsSync, globSync, readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";

const dist = fileURLToPath(new URL("../../web/dist/", import.meta.url));
/** Bytes after gzip, without fonts, for the first page a person opens. */
const MOST_FIRST_ROUTE = 200_000;
/** Bytes of the font files that a page in English fetches. */
const MOST_FONTS = 140_000;

interface Chunk {
  readonly file: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
}
type Manifest = Readonly<Record<string, Chunk>>;

function readBuilt(path: string): string {
  if (!existsSync(dist + path)) throw new Error(`web/dist/${path} is missing: run npm run build first`);
  return readFileSync(dist + path, "utf8");
}

/** Everything that has to arrive before the chunks run: they, what they import, and their styles. */
function filesOf(manifest: Manifest, keys: readonly string[]): Set<string> {
  const files = new Set<string>();
  const visit = (key: string): void => {
    const chunk = manifest[key];
    if (!chunk) throw new Error(`The build has no chunk ${key}`);
    if (files.has(chunk.file)) return;
    files.add(chunk.file);
    for (const css of chunk.css ?? []) files.add(css);
    for (const imported of chunk.imports ?? []) visit(imported);
  };
  for (const key of keys) visit(key);
  return files;
}

const zipped = (files: Iterable<string>): number =>
  [...files].reduce((sum, file) => sum + gzipSync(readBuilt(file), { level: 9 }).length, 0);

describe("the built client", () => {
  const firstRoute = () =>
    filesOf(JSON.parse(readBuilt(".vite/manifest.json")) as Manifest, ["index.html", "start/StartPage.tsx"]);

  it(`[P1] sends at most ${MOST_FIRST_ROUTE} bytes of script and style for the first page`, () => {
    expect(zipped(firstRoute())).toBeLessThanOrEqual(MOST_FIRST_ROUTE);
  });

  it("[P1] leaves the graph library to the page that needs it", () => {
    const scripts = [...firstRoute()].filter((file) => file.endsWith(".js"));
    expect(scripts.length).toBeGreaterThan(1);
    expect(scripts.filter((file) => readBuilt(file).includes("cytoscape"))).toEqual([]);
  });

  it(`[P1] sends at most ${MOST_FONTS} bytes of fonts for Latin text`, () => {
    const latin = globSync("assets/*-latin-wght-*.woff2", { cwd: dist });
    expect(latin.length).toBeGreaterThan(0);
    expect(latin.reduce((sum, file) => sum + statSync(dist + file).size, 0)).toBeLessThanOrEqual(MOST_FONTS);
  });

  it("[P2] has no script or style inside the page, so that only files of its own run", () => {
    const page = readBuilt("index.html");
    const scripts = page.match(/<script\b[^>]*>[^<]*/g) ?? [];
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((script) => !/\bsrc="\/assets\/[^"]+">$/.test(script))).toEqual([]);
    expect(page).not.toMatch(/<style|\sstyle="|\son[a-z]+="/);
  });

  it("[P2] fetches nothing from elsewhere", () => {
    const styles = globSync("assets/*.css", { cwd: dist });
    expect(styles.length).toBeGreaterThan(0);
    const addresses = styles.flatMap((file) => readBuilt(file).match(/url\([^)]*\)/g) ?? []);
    expect(addresses.length).toBeGreaterThan(0);
    expect(addresses.filter((address) => !/^url\("?\/assets\//.test(address))).toEqual([]);
  });
});
