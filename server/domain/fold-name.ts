/** Letters and figures alone, accents and capitals aside; empty for what is no text. */
export const foldName = (name: unknown): string =>
  typeof name === "string"
    ? name
        .normalize("NFD")
        .replaceAll(/\p{M}/gu, "")
        .toLowerCase()
        .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
        .trim()
    : "";
