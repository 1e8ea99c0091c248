import { ACCENTS, LOOKS, SIGNS } from "./tex-signs.ts";

/** Braces in braces that are followed. */
const DEEPEST = 40;

/** A value of BibTeX as plain text. */
export interface TexText {
  readonly text: string;
  /** Commands that were not understood; the text is not to be used if there are any. */
  readonly unread: readonly string[];
}

/**
 * A value of BibTeX as plain Unicode text: accents and signs of TeX as letters, braces left out with the capitals that
 * they protect as they stand, dashes and quotation marks as signs, white space as single spaces. What commands mean is
 * that of L. Lamport, LaTeX: A Document Preparation System, 2nd ed. 1994, tables 3.1-3.3.
 */
export function readTex(value: string): TexText {
  const unread: string[] = [];
  let at = 0;

  /** Up to the end, or to the brace that closes the group. */
  function group(depth: number): string {
    if (depth > DEEPEST) {
      unread.push("{".repeat(3));
      at = value.length;
      return "";
    }
    let text = "";
    while (at < value.length) {
      const sign = value[at] as string;
      if (sign === "}") {
        at += 1;
        break;
      }
      text += sign === "\\" ? command(depth) : sign === "{" ? braced(depth) : plain();
    }
    return text;
  }

  function braced(depth: number): string {
    at += 1;
    return group(depth + 1);
  }

  /** Signs that mean themselves, and those that TeX joins. */
  function plain(): string {
    const [run = ""] = match(/---?|``|''|[^\\{}~$`'-]+|[\s\S]/y);
    at += run.length;
    return JOINED[run] ?? run;
  }

  function command(depth: number): string {
    const [all = "\\", word, other = ""] = match(/\\(?:([A-Za-z]+)\*?|([\s\S]?))/y);
    at += all.length;
    const name = word ?? other;
    const accent = ACCENTS[name];
    if (accent !== undefined) return accented(argument(depth), accent);
    if (word === undefined) return SPACES[other] ?? other;
    skipSpace();
    if (word === "href") {
      argument(depth);
      return argument(depth);
    }
    if (word === "enquote") return `“${argument(depth)}”`;
    const meant = LOOKS.has(word) ? "" : SIGNS[word];
    if (meant === undefined) unread.push(`\\${word}`);
    return meant ?? "";
  }

  /** What a command is about: a group, another command, or one letter. */
  function argument(depth: number): string {
    skipSpace();
    const sign = value[at];
    if (sign === undefined || sign === "}") return "";
    if (sign === "{") return braced(depth);
    if (sign === "\\") return command(depth + 1);
    const letter = String.fromCodePoint(value.codePointAt(at) as number);
    at += letter.length;
    return letter;
  }

  function skipSpace(): void {
    at += match(/\s*/y)[0]?.length ?? 0;
  }

  function match(pattern: RegExp): readonly (string | undefined)[] {
    pattern.lastIndex = at;
    return pattern.exec(value) ?? [];
  }

  let text = "";
  while (at < value.length) text += group(0);
  return {
    text: text
      .replaceAll(/[ \t\r\n]+/g, " ")
      .trim()
      .normalize("NFC"),
    unread,
  };
}

const JOINED: Readonly<Record<string, string>> = {
  ...{ "---": "—", "--": "–", "``": "“", "''": "”", "~": " ", $: "" },
};

/** Commands of one sign that are no accent and do not stand for the sign itself. */
const SPACES: Readonly<Record<string, string>> = {
  ...{ "-": "", "/": "", "@": "", "\\": " ", ",": " ", ";": " ", ":": " ", "!": "", "(": "", ")": "" },
};

/** The mark goes behind the first letter, which loses its dot only to be dotted again. */
function accented(letters: string, mark: string): string {
  const [first = "", ...rest] = letters;
  const base = { ı: "i", ȷ: "j" }[first] ?? first;
  return base === "" ? "" : `${base}${mark}${rest.join("")}`.normalize("NFC");
}
