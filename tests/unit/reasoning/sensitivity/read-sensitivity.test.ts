import { describe, expect, it } from "vitest";
import type { Citations } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { AssumedOdds } from "#server/domain/weighing/odds.ts";
import type { Sensitivity, Varied } from "#server/domain/weighing/weights.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { shareWithin } from "#server/reasoning/dates/share-within.ts";
import { moreLater } from "#server/reasoning/sensitivity/more-later.ts";
import { readSensitivity } from "#server/reasoning/sensitivity/read-sensitivity.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import type { PieceSketch } from "#tests/support/build-piece.ts";
import { subjectOf, weighSubject } from "#tests/support/weigh-sketch.ts";

const from = (...sources: readonly string[]) =>
  sources.map((source) => ({ basis: "published", source, locator: "p. 1" })) as unknown as Citations;
const claims: readonly ClaimSketch[] = [
  {
    ...{ id: "old", relation: "current", subject: "feature.old", when: "1740/1790" },
    ...{ strength: "firm", citations: from("source.a") },
  },
  {
    ...{ id: "new", relation: "introduced", subject: "feature.new", when: "1840" },
    ...{ strength: "certain", citations: from("source.b", "source.c") },
  },
  { id: "sign", relation: "indicates", subject: "feature.sign", states: ["later"], strength: "usual" },
];
const seen = (feature: string, part: string) => ({
  id: `${part}.${feature}`,
  part,
  feature: `feature.${feature}`,
});

function read(piece: PieceSketch, odds: AssumedOdds = ASSUMED_ODDS): Sensitivity {
  const subject = subjectOf(claims, { date: "1760/1775", ...piece });
  return readSensitivity(subject, odds, weighSubject(subject, odds));
}
const nameOf = (what: Varied["what"]) => Object.values(what).join(" ");
const names = (all: readonly Varied["what"][]) => all.map(nameOf);

const PIECE: PieceSketch = { date: "1760/1775", observations: [seen("old", "side"), seen("new", "back")] };

describe("[B13] what is varied", () => {
  const found = read(PIECE);

  it("is each prior but the one taken, half and twice of three odds, and each source that alone stands behind claims", () => {
    expect(names(found.varied.map(({ what }) => what))).toEqual([
      "date-prior as claimed",
      ...["later-parts 0.5", "leak 0.5", "wrong-claims 0.5"],
      ...["later-parts 2", "leak 2", "wrong-claims 2"],
      "without-source source.a",
    ]);
    const asClaimed = read({}, { ...ASSUMED_ODDS, datePrior: "as claimed" });
    expect(names(asClaimed.varied.map(({ what }) => what))[0]).toBe("date-prior uniform");
  });

  it("spans a range that holds the answer as it stands, for the claim and for each part", () => {
    const subject = subjectOf(claims, PIECE);
    const { years, model } = weighSubject(subject).posterior;
    const claimed = shareWithin(years, model.from, subject.claimed);
    expect(found.claimed[0]).toBeLessThanOrEqual(claimed * 1.00001);
    expect(found.claimed[1]).toBeGreaterThanOrEqual(claimed * 0.99999);
    for (const { range } of found.original) expect(range[0]).toBeLessThanOrEqual(range[1]);
    expect(found.original.map(({ part }) => part)).toEqual(["side", "back"]);
  });

  it("has the source left out as if its claims were wrong", () => {
    const subject = subjectOf(claims, PIECE);
    const wrong = weighModel(weighSubject(subject).read(new Map([[id<"claim">("old"), 0]])));
    const without = found.varied.find(({ what }) => what.kind === "without-source");
    const claimed = shareWithin(wrong.years, wrong.model.from, subject.claimed);
    expect(without?.claimed).toBeCloseTo(claimed, 5);
    expect(without?.parts[0]?.odds.later).toBeCloseTo(statesOf(wrong, 0).later, 5);
    expect(claimed).not.toBeCloseTo(found.claimed[1], 3);
  });
});

describe("[B13] twice as many later parts", () => {
  it("are taken from those that are original, which stop at none", () => {
    const otherwise = { original: 0.3, later: 0.4, reused: 0.3 };
    const more = moreLater({ ...ASSUMED_ODDS, otherwise }, 2).otherwise;
    expect(more.later).toBeCloseTo(0.7, 12);
    expect(more.original).toBe(0);
    expect(more.reused).toBe(0.3);
    const half = moreLater({ ...ASSUMED_ODDS, otherwise }, 0.5).otherwise;
    expect(half.later).toBeCloseTo(0.2, 12);
    expect(half.original).toBeCloseTo(0.5, 12);
  });
});

describe("[B13] what the answer depends on", () => {
  it("is named where the likeliest state of a part becomes another", () => {
    // Twice as often later, the back is likelier so; the sign on it speaks for that.
    const odds = { ...ASSUMED_ODDS, otherwise: { original: 0.91, later: 0.06, reused: 0.03 } };
    const { dependsOn, varied } = read({ observations: [seen("sign", "back")] }, odds);
    expect(names(dependsOn)).toEqual(["later-parts 2"]);
    const likelier = varied.map(({ parts }) => (parts[0]?.odds.later ?? 0) > (parts[0]?.odds.original ?? 0));
    expect(likelier.filter(Boolean)).toHaveLength(1);
  });

  it("is nothing that a part decides on which nothing was seen: its odds are its prior, and no answer", () => {
    const odds = { ...ASSUMED_ODDS, otherwise: { original: 0.6, later: 0.37, reused: 0.03 } };
    const { dependsOn, varied } = read({ parts: ["handle"] }, odds);
    const twice = varied.find(({ what }) => nameOf(what) === "later-parts 2");
    expect(twice?.parts[0]?.odds.later).toBeGreaterThan(twice?.parts[0]?.odds.original as number);
    expect(dependsOn).toEqual([]);
    const unseen = { ...seen("sign", "handle"), seen: "unseen" as const };
    expect(read({ observations: [unseen] }, odds).dependsOn).toEqual([]);
    const undated = seen("undated", "handle");
    expect(read({ observations: [undated] }, odds).dependsOn).toEqual([]);
  });

  it("is nothing where no word changes, however the numbers move", () => {
    const { dependsOn, varied } = read({ observations: [seen("undated", "side")] });
    expect(varied.length).toBeGreaterThan(5);
    expect(dependsOn).toEqual([]);
  });
});
