import { printBibtex } from "#server/domain/bibtex/print-bibtex.ts";
import type { CslItem } from "#server/domain/source.ts";
import { saveFile } from "../shared/ui/save-file.ts";

/** Hands over items as a file of CSL-JSON. */
export const saveCsl = (name: string, items: readonly CslItem[]): void =>
  saveFile(
    `${name}.csl.json`,
    `${JSON.stringify(items, null, 2)}\n`,
    "application/vnd.citationstyles.csl+json",
  );

/** Hands over items as a file of BibTeX. */
export const saveBibtex = (name: string, items: readonly CslItem[]): void =>
  saveFile(`${name}.bib`, printBibtex(items), "application/x-bibtex");
