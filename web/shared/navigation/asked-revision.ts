/** Pages that can be read as of a revision. */
const READABLE = /^\/(terms|claims|sources)\/[^/?#]+(?:\/around)?(?=$|[?#])/;
/** As far as the server counts. */
const HIGHEST = 2 ** 31 - 1;

/**
 * The revision that an address asks for: its number, the text where it is none, undefined where none is asked for or the
 * page is not one that can be read so.
 */
export function askedRevision(path: string, search: string): number | string | undefined {
  const text = READABLE.test(path) ? new URLSearchParams(search).get("revision") : null;
  if (text === null) return undefined;
  const number = Number(text);
  return /^\d{1,10}$/.test(text) && number <= HIGHEST ? number : text;
}

/** The address of a page as of a revision; another page than can be read so, or one that names its revision, stays as it is. */
export function addressAsOf(to: string, revision: number | undefined): string {
  if (revision === undefined || !READABLE.test(to) || /[?&]revision=/.test(to)) return to;
  return `${to}${to.includes("?") ? "&" : "?"}revision=${revision}`;
}
