import { describe, expect, it } from "vitest";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Rivals } from "#server/domain/weighing/rivals.ts";
import { readRivals } from "#server/reasoning/rival-stories/read-rivals.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import type { ObservationSketch } from "#tests/support/build-piece.ts";
import { subjectOf } from "#tests/support/weigh-sketch.ts";

const terms = aTree("region", { "region.world": { "region.north": {}, "region.south": {} } });
const claims: readonly ClaimSketch[] = [
  { id: "old", relation: "current", subject: "feature.old", when: "1720/1790", strength: "firm" },
  { id: "new", relation: "introduced", subject: "feature.new", when: "1840", strength: "certain" },
  {
    id: "there",
    relation: "typical of",
    subject: "feature.local",
    object: "region.south",
    strength: "certain",
  },
  { id: "sign", relation: "indicates", subject: "feature.sign", states: ["later"], strength: "certain" },
];
const seen = (feature: string, part: string): ObservationSketch => ({
  ...{ id: `${part}.${feature}`, part, feature: `feature.${feature}` },
});
const ask = (observations: readonly ObservationSketch[], odds = ASSUMED_ODDS): Rivals =>
  readRivals(subjectOf(claims, { date: "1760/1775", region: "region.north", observations }, terms), odds);
const find = ({ weighed }: Rivals, kind: string) => {
  const found = weighed.find((one) => one.kind === kind);
  if (found === undefined) throw new Error(`${kind} is not told`);
  return found;
};

describe("[V6] stories held against each other", () => {
  const rivals = ask([seen("old", "side"), seen("new", "back"), seen("local", "leg"), seen("sign", "foot")]);

  it("have probabilities that add up to 1, the likeliest first", () => {
    const odds = rivals.weighed.map(({ posterior }) => posterior);
    expect(odds.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 4);
    expect(odds).toEqual(odds.toSorted((a, b) => b - a));
  });

  it("follow from prior and evidence, and the Bayes factor against the story as claimed with them", () => {
    const base = find(rivals, "as-claimed");
    expect(base).toMatchObject({ against: 0, told: [] });
    for (const { against, evidence, prior, posterior } of rivals.weighed) {
      expect(against).toBeCloseTo((evidence as number) - (base.evidence as number), 4);
      const ratio = Math.log10((posterior / base.posterior / prior) * base.prior);
      expect(ratio).toBeCloseTo(against as number, 3);
    }
  });

  it("[V4] [V5] have the region that a habit suggests among them, which it speaks for", () => {
    const elsewhere = find(rivals, "another-region");
    expect(elsewhere.region).toBe("region.south");
    const whole = find(rivals, "later-parts");
    expect((elsewhere.evidence as number) - (whole.evidence as number)).toBeGreaterThan(0.5);
    expect(elsewhere.told[0]).toMatchObject({ observation: "leg.local" });
  });

  it("[V7] name the parts that are then not of the first making", () => {
    expect(find(rivals, "later-parts").parts).toEqual(["back", "foot"]);
    expect(find(rivals, "as-claimed").parts).not.toContain("side");
    expect(find(rivals, "assembled").parts).toContain("side");
  });
});

describe("[V8] what tells stories apart", () => {
  const observations = [seen("old", "side"), seen("new", "back"), seen("sign", "foot")];
  const whole = ask(observations);

  it("is what the Bayes factor is other without, as weighing without it shows", () => {
    for (const { kind, told, against } of whole.weighed)
      for (const { observation, log10 } of told) {
        const without = ask(observations.filter(({ id }) => id !== observation));
        expect((against as number) - (find(without, kind).against as number)).toBeCloseTo(log10, 4);
      }
    expect(find(whole, "later-parts").told.map(({ observation }) => observation)).toContain("back.new");
  });

  it("has the largest first, and nothing that makes no difference", () => {
    for (const { told } of whole.weighed) {
      const sizes = told.map(({ log10 }) => Math.abs(log10));
      expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
      expect(Math.min(1, ...sizes)).toBeGreaterThanOrEqual(0.05);
    }
  });
});

describe("[V9] whether the evidence discriminates", () => {
  it("is denied where nothing was seen that tells", () => {
    expect(ask([]).discriminates).toBe(false);
    expect(ask([{ id: "o", part: "side", feature: "feature.unknown" }]).discriminates).toBe(false);
  });

  it("is said where the first is ahead by half a decade of odds, and not below", () => {
    const late = ["a", "b", "c"].flatMap((part) => [seen("new", part), seen("sign", part)]);
    for (const observations of [late, late.slice(0, 2), late.slice(0, 1), []]) {
      const { weighed, discriminates } = ask(observations);
      const [first, second] = weighed.map(({ posterior }) => posterior) as [number, number];
      expect(discriminates).toBe(Math.log10(first / second) >= 0.5);
    }
  });
});

describe('[V3] "made later to look old"', () => {
  it("is shown with its prior if asked for, and else neither told nor shown", () => {
    const asked = ask([seen("old", "side")], { ...ASSUMED_ODDS, madeToDeceive: 0.1 });
    expect(asked.madeToDeceive).toBe(0.1);
    expect(find(asked, "to-look-old").prior).toBe(0.1);
    const plain = ask([seen("old", "side")]);
    expect(plain).not.toHaveProperty("madeToDeceive");
    expect(plain.weighed.map(({ kind }) => kind)).not.toContain("to-look-old");
  });
});
