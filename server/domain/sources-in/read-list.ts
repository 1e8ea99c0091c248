import { readBibtex } from "../bibtex/read-bibtex.ts";
import { judgeItems } from "./judge-items.ts";
import { readCsl } from "./read-csl.ts";
import type { KnownItem, ReadItem } from "./read-item.ts";

/** Longest text that is read as a list. */
export const MOST_LETTERS_OF_LIST = 5_000_000;

/**
 * Reads a text as a list of sources, BibTeX or CSL-JSON, and says of each item what would become of it beside those that
 * are known. A text that is neither is refused as a whole: the sentence says what to do.
 */
export function readList(text: string, known: readonly KnownItem[]): readonly ReadItem[] | string {
  if (text.length > MOST_LETTERS_OF_LIST)
    return `This is longer than ${MOST_LETTERS_OF_LIST.toLocaleString("en")} letters; take it in parts.`;
  if (NO_TEXT.test(text))
    return "This is not a text; choose a file of BibTeX or of CSL-JSON, such as sources.bib.";
  const written = text.replace(/^\uFEFF/, "");
  const drafts = /^\s*[[{]/.test(written) ? readCsl(written) : readBibtex(written);
  if (typeof drafts === "string") return drafts;
  return drafts.length === 0 ? NO_LIST : judgeItems(drafts, known);
}

const NO_LIST =
  "There is no entry in this; a list of BibTeX has entries such as @book{key, title = {...}}, one of CSL-JSON begins with [.";

/** Signs that stand in no text, so that a picture or a packed file is told from one. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const NO_TEXT = /[\u0000-\u0008\u000e-\u001f\ufffe\uffff]/;
