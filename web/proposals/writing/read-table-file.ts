/** Largest table that is read: as much as the server reads at once. */
export const MOST_BYTES_OF_TABLE = 100_000;

/** A file as text in UTF-8, or why it cannot be looked through and what to do; one that is too large is not opened. */
export async function readTableFile(
  file: File,
): Promise<{ readonly text: string } | { readonly refusal: string }> {
  const { name } = file;
  if (file.size > MOST_BYTES_OF_TABLE)
    return {
      refusal: `${name} is larger than ${MOST_BYTES_OF_TABLE / 1000} kB; divide it and choose its parts.`,
    };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer()) };
  } catch (error) {
    return {
      refusal:
        error instanceof TypeError
          ? `${name} is no text in UTF-8; save the table as CSV in UTF-8 and choose that.`
          : `${name} could not be read; choose it again.`,
    };
  }
}
