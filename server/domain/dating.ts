import type { Span, Year, Years } from "./years.ts";

/** A date string means nothing until its role is fixed: one event in an unknown year, or a span of use. */
export type Role = "event" | "period";

/** stated: a bound is given. open: asserted to have none (`..`). unknown: nobody says (empty). */
export type End = "stated" | "open" | "unknown";

/**
 * An EDTF string (ISO 8601-2:2019, years 0001-9999 CE) in its role: docs/spec/1-dates.md.
 * event: `begin` and `end` are both the hull of the possible years, but for a list of all (`{1750,1760}`), where they
 * are the first and the last. period: begin of the begin .. end of the begin, begin of the end .. end of the end
 * (CIDOC CRM P82a, P81a, P81b, P82b). An open end is infinite in both its years, an unknown one in the outer.
 */
export interface Dating {
  readonly role: Role;
  /** The string as written, trimmed of nothing: what was read. */
  readonly text: string;
  readonly begin: Span;
  readonly end: Span;
  readonly beginIs: End;
  readonly endIs: End;
  /**
   * Years by which `~` or `%` widens each end (engine assumption: 5, or 25 where two or more digits are masked). An event
   * has one pad, so both are the same; an unknown end has that of the other end.
   */
  readonly padBegin: number;
  readonly padEnd: number;
  /** Years that can be meant, gaps kept; for a period the hull. */
  readonly members: Years;
  /** `?` or `%` stands in the year part. */
  readonly doubtful: boolean;
  /** From a significant-digits suffix (`1750S2`). */
  readonly estimate?: Year;
}

export { printDating } from "./print-dating.ts";
export { readDating } from "./read-dating.ts";
