import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const SEED = fileURLToPath(new URL("../../seed-data", import.meta.url));

export const FOLDERS = ["terms", "claims", "sources", "tables"] as const;
export type Folder = (typeof FOLDERS)[number];

/** One line of the seed data as it stands in its file; `at` is `claims/nails.jsonl:12`. */
export interface SeedLine {
  readonly folder: Folder;
  readonly at: string;
  readonly text: string;
}

/** Every line of every JSON Lines file, blank ones too: a blank line is a mistake here. */
export function readSeedLines(): readonly SeedLine[] {
  return FOLDERS.flatMap((folder) =>
    readdirSync(join(SEED, folder))
      .filter((file) => file.endsWith(".jsonl"))
      .sort()
      .flatMap((file) =>
        readFileSync(join(SEED, folder, file), "utf8")
          .replace(/\n$/, "")
          .split("\n")
          .map((text, i) => ({ folder, at: `${folder}/${file}:${i + 1}`, text })),
      ),
  );
}
