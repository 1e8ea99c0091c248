/** A published example: the string, its first and its last year, or "none" where it has no such bound. */
export type Published = readonly [text: string, first: number | "none", last: number | "none"];
