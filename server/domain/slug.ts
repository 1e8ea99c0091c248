/** Small letters, figures and hyphens; accents left out. */
export const slug = (text: string): string =>
  [...text.toLowerCase().normalize("NFD").replaceAll(/\p{M}/gu, "")]
    .map(
      (letter) => ({ ß: "ss", æ: "ae", œ: "oe", ø: "o", ł: "l", đ: "d", ð: "d", þ: "th" })[letter] ?? letter,
    )
    .join("")
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "");
