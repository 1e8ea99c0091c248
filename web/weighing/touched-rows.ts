import type { StripGroup, StripRow } from "#web/strips/strip-row.ts";
import type { Touch, Touched } from "./tell-story.ts";

const OF_PART: Readonly<Record<"later" | "reused", string>> = {
  later: "the part was made later",
  reused: "the part comes from an earlier piece",
};
const OF_THING: Readonly<Record<Touch, string>> = {
  ...OF_PART,
  reworked: "later work on an old part",
  doubted: "it was misread",
};

function noteOn(row: StripRow, { parts, observations }: Touched): string | undefined {
  const own = row.observation === undefined ? undefined : observations.get(row.observation);
  if (own !== undefined) return OF_THING[own];
  const ofPart = row.part === undefined ? undefined : parts.get(row.part);
  if (ofPart === "later" || ofPart === "reused") return OF_PART[ofPart];
  const isAgainst = row.mark === "against-hard" || row.mark === "against-soft";
  return ofPart === "doubted" && isAgainst ? "what is known of it is wrong" : undefined;
}

/** The strips that the story chosen touches, by the id of the row, each with what it makes of it. */
export const touchedRows = (groups: readonly StripGroup[], touched: Touched): ReadonlyMap<string, string> =>
  new Map(
    groups.flatMap(({ rows }) =>
      rows.flatMap((row) => {
        const note = noteOn(row, touched);
        return note === undefined ? [] : [[row.id, note] as const];
      }),
    ),
  );
