/** Words before a number that say what is counted. */
const LABEL =
  /^(?:(?:patent|report|catalogue|article|posts?|weblog|newspaper|document|contribution|item|records?|lots?|ref\.|pages?|pp?\.|vol\.|nos?\.?|letter)\s+)+(?:of\s+)?/i;

/**
 * The locator of a citation as far as its source, cited in words, does not say it already: "p. 21" of an article of
 * that one page is not said twice. Undefined if nothing is left to say.
 */
export function locatorBeside(text: string, locator: string): string | undefined {
  const said = ` ${plain(text)} `;
  const pieces = locator.split(/[,;] (?=\p{L}|\d{1,2} \p{Lu})/u);
  const left = pieces.filter((piece) => !isSaid(said, piece));
  if (left.length === 0) return undefined;
  return left.length === pieces.length ? locator : left.join(", ");
}

function isSaid(said: string, piece: string): boolean {
  const label = LABEL.exec(piece)?.[0] ?? "";
  const number = plain(piece.slice(label.length));
  if (!/\d/.test(number) && !/^[ivxlc]+$/.test(number)) return false;
  // A page is one only where it is called so, and a year only where it is the date.
  if (/\bpp?\.|\bpage/i.test(label) && /^\d/.test(number))
    return said.includes(` p ${number} `) || said.includes(` pp ${number} `);
  if (/^\d{4}$/.test(number) && /\bof\s+$/.test(label)) return said.endsWith(` ${number} `);
  if (label === "" && /^\d{1,4}$/.test(number)) return false;
  return said.includes(` ${number} `);
}

/** Small letters, one kind of dash, no signs around words. */
const plain = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(/[–—]/g, "-")
    .replaceAll(/ and /g, " ")
    .replaceAll(/[“”‘’"();:]/g, " ")
    .replaceAll(/(?<!\d),|,(?!\d)|\.(?=\s|$)/g, " ")
    .replaceAll(/\s+/g, " ")
    .trim();
