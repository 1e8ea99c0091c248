import type { Year } from "#server/domain/years.ts";
import type { Relation } from "../apollo/schema-types.graphql.ts";
import type { ClaimYears } from "./claim-spans.ts";

const sayEnd = (earliest: Year | null, latest: Year | null): string => {
  if (earliest === null && latest === null) return "a time nobody states";
  if (earliest === null) return `${latest} at the latest`;
  if (latest === null) return `${earliest} at the earliest`;
  return earliest === latest ? `${earliest}` : `some year between ${earliest} and ${latest}`;
};

const sayEvent = (years: ClaimYears): string => {
  const [earliest = null] = years.begin;
  const latest = years.end[1] ?? null;
  if (earliest === null || latest === null) return sayEnd(earliest, latest);
  return earliest === latest ? `in ${earliest}` : `between ${earliest} and ${latest}`;
};

const sayPeriod = (years: ClaimYears): string => {
  const [begin0 = null, begin1 = null] = years.begin;
  const [end0 = null, end1 = null] = years.end;
  const begun = begin0 !== null || begin1 !== null;
  const ended = end0 !== null || end1 !== null;
  if (begun && ended) return `from ${sayEnd(begin0, begin1)} to ${sayEnd(end0, end1)}`;
  if (begun) return `from ${sayEnd(begin0, begin1)} on; no end is stated`;
  return ended ? `until ${sayEnd(end0, end1)}; no beginning is stated` : "at a time nobody states";
};

const verbs: Readonly<Partial<Record<Relation, string>>> = {
  INTRODUCED: "introduced",
  ATTESTED: "recorded",
  COMMON_FROM: "common from a year",
  COMMON_UNTIL: "common until a year",
  DISCONTINUED: "last made",
  CURRENT: "in use",
  ACTIVE: "at work",
  NOT_FOUND_IN: "not found",
};

/** The years of a claim in words, by the role its date has: "introduced between 1810 and 1820, give or take 5 years". */
export function sayClaimYears(relation: Relation, years: ClaimYears | null): string | undefined {
  const verb = verbs[relation];
  if (verb === undefined) return undefined;
  if (years === null) return relation === "NOT_FOUND_IN" ? "not found in any year" : undefined;
  const isPeriod = relation === "CURRENT" || relation === "ACTIVE" || relation === "NOT_FOUND_IN";
  const pad = Math.max(years.padBegin, years.padEnd);
  return [
    `${verb} ${isPeriod ? sayPeriod(years) : sayEvent(years)}`,
    ...(pad > 0 ? [`give or take ${pad} years`] : []),
    ...(years.doubtful ? ["marked as doubtful"] : []),
  ].join(", ");
}

const sayRange = (earliest: Year | null, latest: Year | null): string =>
  earliest === latest ? `${earliest}` : `${earliest ?? "?"}–${latest ?? "?"}`;

/** The same in the fewest characters, for the label of a drawing: "1810–1820", "1780 to 1810", "from 1815". */
export function sayYearsBriefly(relation: Relation, years: ClaimYears | null): string {
  if (years === null) return relation === "NOT_FOUND_IN" ? "any year" : "";
  const [begin0 = null] = years.begin;
  const end1 = years.end[1] ?? null;
  const about = years.padBegin > 0 || years.padEnd > 0 ? "about " : "";
  return (
    about +
    sayRange(begin0, end1)
      .replace(/^\?–/, "until ")
      .replace(/^(.+)–\?$/, "from $1")
  );
}
