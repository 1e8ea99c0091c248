import { readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { AROUND, BETWEEN, type BulkFile, openBulkFile } from "./bulk-file.ts";

/** The files of one bulk import, a file for each label and each type of relationship. */
export interface BulkFiles {
  /** Adds a node. Gives its number, and the place of its first property in the file of its label. */
  node(label: string, ...properties: readonly object[]): { readonly number: number; readonly place: number };
  relationship(type: string, from: number, to: number, properties?: object): void;
  /** Writes over a property of a node at its place, with as many bytes. */
  patch(label: string, place: number, text: string): void;
  counts(): { readonly nodes: number; readonly relationships: number };
  /** Writes what is still held, the headers, and last the arguments that the import is called with. */
  end(): void;
  /** Takes all files away. */
  drop(): void;
}

/** The file that `neo4j-admin database import full neo4j @arguments` reads; without it the others are not whole. */
export const ARGUMENTS = "arguments";

/** What the import reads at once, unless a row is longer; in bytes. */
const READ_AT_ONCE = 4 << 20;

/** Begins the files in a folder that is there and empty. */
export function openBulkFiles(folder: string): BulkFiles {
  const nodes = new Map<string, BulkFile>();
  const relationships = new Map<string, BulkFile>();
  let last = 0;
  const fileOf = (files: Map<string, BulkFile>, name: string): BulkFile => {
    const open = files.get(name) ?? openBulkFile(join(folder, `${name}.csv`));
    files.set(name, open);
    return open;
  };
  const rowsOf = (files: Map<string, BulkFile>): number =>
    [...files.values()].reduce((sum, { rows }) => sum + rows, 0);
  const all = (): readonly BulkFile[] => [...nodes.values(), ...relationships.values()];
  const writeHeader = (name: string, fields: readonly string[]): string => {
    const header = join(folder, `${name}.header.csv`);
    writeFileSync(header, `${fields.join(BETWEEN)}\n`, { mode: 0o600 });
    return `${name}=${header},${join(folder, `${name}.csv`)}`;
  };

  return {
    node: (label, ...properties) => {
      const number = ++last;
      return { number, place: fileOf(nodes, label).put([number], ...properties) };
    },
    relationship: (type, from, to, properties = {}) => {
      fileOf(relationships, type).put([from, to], properties);
    },
    patch: (label, place, text) => fileOf(nodes, label).patch(place, text),
    counts: () => ({ nodes: rowsOf(nodes), relationships: rowsOf(relationships) }),
    end: () => {
      for (const file of all()) file.close();
      const longest = Math.max(...all().map((file) => file.longest));
      const lines = [
        ...[...nodes].map(([name, file]) => `--nodes=${writeHeader(name, [":ID", ...file.columns()])}`),
        ...[...relationships].map(
          ([name, file]) =>
            `--relationships=${writeHeader(name, [":START_ID", ":END_ID", ...file.columns()])}`,
        ),
        "--id-type=integer",
        `--delimiter=${codeOf(BETWEEN)}`,
        `--quote=${codeOf(AROUND)}`,
        ...(all().some(({ hasLineFeeds }) => hasLineFeeds) ? ["--multiline-fields=true"] : []),
        ...(longest > READ_AT_ONCE ? [`--read-buffer-size=${longest}`] : []),
        "--bad-tolerance=0",
        `--report-file=${join(folder, "report")}`,
      ];
      writeFileSync(join(folder, ARGUMENTS), `${lines.join("\n")}\n`, { mode: 0o600 });
    },
    drop: () => {
      for (const name of readdirSync(folder)) rmSync(join(folder, name));
    },
  };
}

const codeOf = (sign: string): string =>
  `U+${sign.codePointAt(0)?.toString(16).toUpperCase().padStart(4, "0")}`;
