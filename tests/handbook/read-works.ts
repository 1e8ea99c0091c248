import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseCsv } from "./parse-csv.ts";

const HERE = fileURLToPath(new URL(".", import.meta.url));

export const ROLES = ["existed", "in use", "not before"] as const;
/** existed: some were made then. in use: through that span. not before: none before that year. */
export type Role = (typeof ROLES)[number];

/** How the graph reads a line: `cannot be` and `unusual` are contradictions, physical and of habit. */
export const READINGS = ["consistent", "silent", "unusual", "cannot be"] as const;
export type Reading = (typeof READINGS)[number];

/** One statement of a work, as a dating in EDTF and its role. */
export interface Line {
  readonly work: string;
  /** Source of the seed graph; empty where no claim cites the work. */
  readonly source: string;
  readonly section: string;
  readonly feature: string;
  readonly region: string;
  /** Form of the piece, where the work speaks of one. */
  readonly form: string;
  readonly states: string;
  readonly role: Role;
  /** What the graph is meant to say of a piece at the time the role asks about. */
  readonly expected: Reading;
}

/** A published work: what it is, where and when it was read, and what it states. */
export interface Work {
  readonly work: string;
  readonly about: Readonly<Record<string, string>>;
  readonly lines: readonly Line[];
}

const read = (file: string) => parseCsv(readFileSync(join(HERE, file), "utf8"), file);

/** Every work of the folder, by file name. */
export function readWorks(): readonly Work[] {
  return readdirSync(join(HERE, "works"))
    .sort()
    .map((file) => {
      const { about, rows } = read(join("works", file));
      const work = file.replace(/\.csv$/, "");
      return { work, about, lines: rows.map((row) => ({ ...row, work }) as unknown as Line) };
    });
}

/** A line in a few words; the same line of the same work has the same. */
export const nameOf = ({
  work,
  feature,
  region,
  role,
  states,
}: Omit<Line, "expected" | "source" | "section" | "form">) =>
  `${work}: ${feature} in ${region}, ${role} ${states}`;

export const readKnownDisagreements = () => read("known-disagreements.csv").rows;
export const readDocuments = () => read("documents.csv").rows;
