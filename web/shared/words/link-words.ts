import type { LinkKind, TermKind } from "../apollo/schema-types.graphql.ts";

/** What a link says from either of its ends, to be read before the name of the other. */
const words: Readonly<Record<LinkKind, { readonly out: string; readonly in: string }>> = {
  REQUIRES: { out: "needs", in: "needed for" },
  TYPICAL_OF: { out: "typical of", in: "typical of it" },
  SPREAD_FROM: { out: "spread from", in: "spread from here" },
  SPREAD_TO: { out: "spread to", in: "spread to here" },
  CONFINED_TO: { out: "made only in", in: "made only here" },
  VOID_WHEN: { out: "sets aside claims on", in: "set aside by" },
  MISTAKEN_FOR: { out: "mistaken for", in: "mistaken for it" },
  BROADER: { out: "a kind of", in: "a kind of it" },
  LOOKED_FOR_ON: { out: "looked for on", in: "looked for on it" },
  HAS_PART: { out: "has as a part", in: "has it as a part" },
  DATED_IN: { out: "dated in", in: "dated here" },
  NOT_FOUND_IN: { out: "not found in", in: "not found here" },
  SAID_OF: { out: "described in", in: "described here" },
};

/** Of forms and kinds of part, which are not places; and of what lies in what rather than being a kind of it. */
const otherwise: Readonly<
  Partial<Record<`${LinkKind} ${"PLACE" | "PART" | "THING"}`, { out: string; in: string }>>
> = {
  "DATED_IN THING": { out: "dated on", in: "dated on it" },
  "NOT_FOUND_IN THING": { out: "not found on", in: "not found on it" },
  "SAID_OF THING": { out: "described on", in: "described on it" },
  "BROADER PART": { out: "belongs to", in: "belongs to it" },
  "BROADER PLACE": { out: "lies in", in: "lies in it" },
  "TYPICAL_OF PLACE": { out: "typical of", in: "typical here" },
};

/** What a link says, seen from the end it goes out from or from the other. `to` is the kind of the term it leads to. */
export function sayLink(kind: LinkKind, isOutgoing: boolean, to: TermKind): string {
  const said =
    (to === "PART" ? otherwise[`${kind} PART`] : undefined) ??
    otherwise[`${kind} ${to === "REGION" ? "PLACE" : "THING"}`] ??
    words[kind];
  return isOutgoing ? said.out : said.in;
}
