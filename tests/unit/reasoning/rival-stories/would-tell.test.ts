import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Look } from "#server/domain/weighing/looks.ts";
import { readRivals } from "#server/reasoning/rival-stories/read-rivals.ts";
import { withWouldTell } from "#server/reasoning/rival-stories/would-tell.ts";
import { subjectOf } from "#tests/support/weigh-sketch.ts";

const look = (feature: string): Look => ({
  ...{ part: id<"part">("top"), feature: id<"term">(feature), move: "nothing" },
  ...{ bits: 0, bitsOfState: 0, pSeen: 0, pUnseen: 0, ifSeen: 0, ifAbsent: 0, alsoOn: [], wouldVoid: [] },
});
const subject = subjectOf(
  [
    { id: "late", relation: "introduced", subject: "late", when: "1860" },
    { id: "then", relation: "current", subject: "then", when: "1740/1790" },
  ],
  { date: "1760/1770", observations: [{ id: "o", part: "top", feature: "then" }] },
);
const rivals = readRivals(subject, ASSUMED_ODDS);
const told = withWouldTell(rivals, subject, [look("late"), look("unheard-of")], ASSUMED_ODDS);
const of = (kind: string) => told.weighed.find((rival) => rival.kind === kind)?.wouldTell ?? [];

describe("[V10] what would tell a rival from the story as claimed", () => {
  it("is what could be there under the one and not under the other", () => {
    expect(of("revival").map(({ feature }) => feature)).toEqual(["late"]);
    expect(of("revival")[0]?.bits).toBeGreaterThan(0.05);
    expect(of("revival")[0]?.bits).toBeLessThan(1);
    expect(of("provincial")).toEqual([]);
  });

  it("is not asked of the story as claimed, and changes nothing else", () => {
    expect(of("as-claimed")).toEqual([]);
    expect(told.weighed.map((rival) => ({ ...rival, wouldTell: [] }))).toEqual(rivals.weighed);
  });

  it("is nothing where there is nothing to look at", () => {
    expect(withWouldTell(rivals, subject, [], ASSUMED_ODDS)).toEqual(rivals);
  });
});
