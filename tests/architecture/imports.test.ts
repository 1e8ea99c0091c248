import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The table of DEVELOPERS.md, "Who may import whom": the first row whose folder holds the file decides. */
const RULES: readonly { from: string; folders: readonly string[]; packages: readonly string[] }[] = [
  { from: "server/domain/", folders: ["server/domain/"], packages: [] },
  { from: "server/reasoning/", folders: ["server/domain/", "server/reasoning/"], packages: [] },
  { from: "server/ports/", folders: ["server/domain/", "server/ports/"], packages: [] },
  {
    from: "server/use-cases/",
    folders: ["server/domain/", "server/reasoning/", "server/ports/", "server/use-cases/"],
    packages: [],
  },
  {
    from: "server/weigher/",
    folders: ["server/domain/", "server/reasoning/", "server/ports/", "server/solver/", "server/weigher/"],
    packages: ["node:worker_threads"],
  },
  {
    from: "server/metrics/",
    folders: ["server/domain/", "server/ports/", "server/metrics/"],
    packages: [],
  },
  {
    from: "server/again/",
    folders: ["server/domain/", "server/reasoning/", "server/ports/", "server/chain/", "server/again/"],
    packages: [],
  },
  { from: "server/solver/", folders: ["server/domain/", "server/solver/"], packages: ["highs"] },
  {
    from: "server/passkeys/",
    folders: ["server/domain/", "server/ports/", "server/passkeys/"],
    packages: ["@simplewebauthn/server"],
  },
  {
    from: "server/providers/",
    folders: ["server/domain/", "server/ports/", "server/providers/"],
    packages: ["openid-client"],
  },
  { from: "server/chain/", folders: ["server/domain/", "server/chain/"], packages: ["node:crypto"] },
  {
    from: "server/follower/",
    folders: ["server/domain/", "server/ports/", "server/follower/"],
    packages: [],
  },
  {
    from: "server/search/",
    folders: ["server/domain/", "server/ports/", "server/search/"],
    packages: [],
  },
  {
    from: "server/stores/memory/",
    folders: ["server/domain/", "server/ports/", "server/chain/", "server/search/", "server/stores/memory/"],
    packages: [],
  },
  {
    from: "server/stores/sqlite/",
    folders: ["server/domain/", "server/ports/", "server/chain/", "server/search/", "server/stores/sqlite/"],
    packages: ["node:sqlite", "node:events", "node:fs", "node:path", "node:worker_threads"],
  },
  {
    from: "server/stores/neo4j/",
    folders: ["server/domain/", "server/ports/", "server/chain/", "server/search/", "server/stores/neo4j/"],
    packages: ["neo4j-driver", "node:crypto", "node:fs", "node:path", "node:zlib"],
  },
  {
    from: "server/stores/mirror/",
    folders: ["server/domain/", "server/ports/", "server/stores/mirror/"],
    packages: ["node:util"],
  },
  {
    from: "server/dump/",
    folders: [
      "server/domain/",
      "server/ports/",
      "server/chain/",
      "server/formats/",
      "server/dump/",
      "docs/formats/",
    ],
    packages: ["ajv/dist/2020.js", "node:stream", "node:stream/promises"],
  },
  {
    from: "server/importing/",
    folders: ["server/domain/", "server/ports/", "server/formats/", "server/importing/"],
    packages: [],
  },
  {
    from: "server/keeping/",
    folders: ["server/domain/", "server/ports/", "server/chain/", "server/dump/", "server/keeping/"],
    packages: [
      "node:sqlite",
      "node:fs",
      "node:fs/promises",
      "node:path",
      "node:stream",
      "node:stream/promises",
      "node:zlib",
    ],
  },
  {
    from: "server/seed/",
    folders: ["server/domain/", "server/ports/", "server/formats/", "server/seed/"],
    packages: ["node:fs/promises", "node:path"],
  },
  {
    from: "server/generator/",
    folders: ["server/domain/", "server/ports/", "server/generator/"],
    packages: [],
  },
  {
    from: "server/formats/",
    folders: ["server/domain/", "server/formats/", "docs/formats/"],
    packages: [
      ...["ajv", "ajv/dist/2020.js", "csv-parse/sync"],
      ...["node:fs", "node:fs/promises", "node:stream", "node:util", "node:zlib"],
    ],
  },
  {
    from: "server/api/",
    folders: ["server/domain/", "server/ports/", "server/use-cases/", "server/formats/", "server/api/"],
    packages: [
      ...["graphql", "@pothos/core", "dataloader", "node:fs"],
      ...["@apollo/server", "@apollo/server/errors", "@apollo/server/plugin/disabled"],
    ],
  },
  {
    from: "server/proof/",
    folders: ["server/domain/", "server/ports/", "server/chain/", "server/proof/"],
    packages: ["node:crypto", "node:fs/promises", "node:path"],
  },
  {
    from: "server/secrets/",
    folders: ["server/domain/", "server/ports/", "server/secrets/"],
    packages: ["node:crypto", "node:util"],
  },
  {
    from: "server/live/",
    folders: ["server/domain/", "server/ports/", "server/live/"],
    packages: [],
  },
  {
    from: "server/http/live/",
    folders: ["server/ports/", "server/api/", "server/http/"],
    packages: ["graphql", "graphql-ws", "ws", "node:http", "node:stream"],
  },
  {
    from: "server/http/",
    folders: ["server/ports/", "server/api/", "server/http/"],
    packages: [
      ...["@apollo/server", "sirv"],
      ...["node:fs", "node:http", "node:net", "node:path", "node:util", "node:zlib"],
    ],
  },
  { from: "web/shared/", folders: ["web/shared/", "server/domain/"], packages: ["*"] },
  { from: "web/strips/", folders: ["web/strips/", "web/shared/", "server/domain/"], packages: ["*"] },
  { from: "web/graph/", folders: ["web/graph/", "web/shared/", "server/domain/"], packages: ["*"] },
  { from: "web/drawings/", folders: ["web/drawings/", "web/shared/", "server/domain/"], packages: ["*"] },
  { from: "web/actions/", folders: ["web/actions/", "web/shared/", "server/domain/"], packages: ["*"] },
  {
    from: "web/answers/",
    folders: ["web/answers/", "web/strips/", "web/drawings/", "web/shared/", "server/domain/"],
    packages: ["*"],
  },
  {
    from: "web/weighing/",
    folders: ["web/weighing/", "web/strips/", "web/drawings/", "web/shared/", "server/domain/"],
    packages: ["*"],
  },
  ...[
    "examination",
    "evidence",
    "start",
    "learn",
    "method",
    "regional-forms",
    "field-sheets",
    "account",
    "chronicle",
  ].map((task) => ({
    from: `web/${task}/`,
    folders: [
      `web/${task}/`,
      "web/shared/",
      "web/strips/",
      "web/answers/",
      "web/graph/",
      "web/drawings/",
      "web/actions/",
      ...(task === "examination" ? ["web/weighing/"] : []),
      "server/domain/",
    ],
    packages: ["*"],
  })),
];

interface Import {
  readonly file: string;
  readonly of: string;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .filter((file) => !file.includes("dist/"));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), "utf8");
  const found = [
    ...text.matchAll(
      /(?:^|\n)\s*(?:import|export)[^"'`;]*?from\s+["']([^"']+)["']|import\(\s*["']([^"']+)["']\s*\)|(?:^|\n)import\s+["']([^"']+)["']/g,
    ),
  ];
  return found.map((match) => ({ file, of: match[1] ?? match[2] ?? match[3] ?? "" }));
}

/** A path inside the project, or the name of a package. */
function target({ file, of }: Import): { path: string } | { name: string } {
  if (of.startsWith(".")) return { path: normalize(join(dirname(file), of)) };
  if (of.startsWith("#server/")) return { path: of.replace("#server/", "server/") };
  if (of.startsWith("#web/")) return { path: of.replace("#web/", "web/") };
  return { name: of };
}

function isAllowed(imported: Import): boolean {
  const rule = RULES.find(({ from }) => imported.file.startsWith(from));
  if (rule === undefined) return true;
  const to = target(imported);
  if ("path" in to) return rule.folders.some((folder) => to.path.startsWith(folder));
  return rule.packages.includes("*") ? !to.name.startsWith("node:") : rule.packages.includes(to.name);
}

describe("who may import whom", () => {
  const imports = ["server", "web"].flatMap(sourceFiles).flatMap(importsOf);

  it("finds the imports it is meant to judge", () => {
    expect(imports.length).toBeGreaterThan(300);
    for (const { from } of RULES.filter((rule) => existsSync(join(root, rule.from))))
      expect(
        imports.some(({ file }) => file.startsWith(from)),
        `no import found below ${from}`,
      ).toBe(true);
  });

  it("keeps the table of DEVELOPERS.md", () => {
    const broken = imports
      .filter((imported) => !isAllowed(imported))
      .map(({ file, of }) => `${file} imports ${of}`);
    expect(broken).toEqual([]);
  });

  it("would see a layer reach upwards", () => {
    expect(isAllowed({ file: "server/domain/x.ts", of: "../stores/memory/open-memory-store.ts" })).toBe(
      false,
    );
    expect(isAllowed({ file: "server/reasoning/x.ts", of: "node:fs" })).toBe(false);
    expect(isAllowed({ file: "web/start/x.tsx", of: "#server/reasoning/examine.ts" })).toBe(false);
    expect(isAllowed({ file: "web/start/x.tsx", of: "../evidence/TermPage.tsx" })).toBe(false);
  });
});
