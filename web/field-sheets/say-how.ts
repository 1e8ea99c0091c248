/** Whole sentences of a note, from its beginning, as long as they fit in about a line and a half; the first in any case. */
export function sayHow(how: string, atMost = 150): string {
  const sentences = how.split(/(?<=[.?!])\s+/);
  let said = sentences[0] ?? "";
  for (const sentence of sentences.slice(1)) {
    if (said.length + 1 + sentence.length > atMost) break;
    said = `${said} ${sentence}`;
  }
  return said;
}
