interface Told {
  readonly label: string;
  readonly otherLabels: readonly string[];
  readonly note: string | null;
}

const wordsOf = (text: string): readonly string[] =>
  text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/** Whether each word that was asked for begins a word of what is told of a term. */
export function holdsAllWords({ label, otherLabels, note }: Told, asked: string): boolean {
  const told = wordsOf([label, ...otherLabels, note ?? ""].join(" "));
  return wordsOf(asked).every((word) => told.some((each) => each.startsWith(word)));
}
