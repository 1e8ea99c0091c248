import { MOST_LETTERS_OF_LIST } from "#server/domain/sources-in/read-list.ts";

/** A file that a person chose, as text; or why it cannot be looked through and what to do. */
export type ChosenFile =
  | { readonly name: string; readonly text: string }
  | { readonly name: string; readonly refusal: string };

/** Reads a file as UTF-8. One that is too long is not opened. */
export async function readChosenFile(file: File): Promise<ChosenFile> {
  const { name } = file;
  if (file.size > MOST_LETTERS_OF_LIST)
    return {
      name,
      refusal: `${name} is larger than ${MOST_LETTERS_OF_LIST / 1_000_000} MB; split it and choose its parts.`,
    };
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer());
    return { name, text };
  } catch (error) {
    // The decoder refuses with a TypeError; anything else is the disk's.
    return {
      name,
      refusal:
        error instanceof TypeError
          ? `${name} is no text in UTF-8; choose a .bib or .json file, or save it again as UTF-8.`
          : `${name} could not be read; choose it again.`,
    };
  }
}
