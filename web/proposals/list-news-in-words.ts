interface Row {
  readonly id: string;
  readonly name: string;
  readonly isMine: boolean;
  /** How it stands, as the rest of a sentence that begins with its name. */
  readonly stands: string;
}
/** A list as it is seen at one moment. */
export interface SeenList {
  readonly rows: readonly Row[];
  readonly count: number;
}

const MOST_NAMED = 3;

/** What became of a list between two moments, as sentences; what came or went by one's own hand is not told as new. */
export function listNewsInWords(before: SeenList, now: SeenList): readonly string[] {
  const was = new Map(before.rows.map((row) => [row.id, row]));
  const is = new Set(now.rows.map(({ id }) => id));
  const come = now.count > before.count ? now.rows.filter(({ id }) => !was.has(id)) : [];
  const gone = now.count < before.count + come.length ? before.rows.filter(({ id }) => !is.has(id)) : [];
  const words = [
    ...come.filter(({ isMine }) => !isMine).map(({ name }) => `New here: “${name}”.`),
    ...gone.map(({ name }) => `No longer here: “${name}”.`),
    ...now.rows.flatMap(({ id, name, stands }) => {
      const earlier = was.get(id);
      return earlier === undefined || earlier.stands === stands ? [] : [`“${name}” ${stands}.`];
    }),
  ];
  const unread = Math.max(0, now.count - before.count - come.length);
  const more = words.length - MOST_NAMED + unread;
  if (words.length >= MOST_NAMED && more > 0)
    return [...words.slice(0, MOST_NAMED), `And ${more} more changed.`];
  return unread > 0 ? [...words, `${unread} more came further down.`] : words;
}
