import { describe, expect, it } from "vitest";
import type { ReportWords } from "#server/domain/report-words.ts";
import { examine } from "#server/reasoning/examine.ts";
import { reportInWords } from "#server/reasoning/explain/words.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { aTerm, aTree, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "#tests/support/build-piece.ts";
import { briefSign } from "#web/strips/brief-sign.ts";

const REGIONS = aTree("region", { World: { Colony: { Port: {} }, Home: {} } });
const TERMS = [
  ...REGIONS,
  aTerm("chest", "form"),
  aTerm("arcs"),
  aTerm("disc saw", "tool"),
  aTerm("old hole"),
];

/** What is said of a piece of 1765/1775 from the Port with arcs on its drawers, unless the sketch says otherwise. */
function wordsOf(sketches: readonly ClaimSketch[], piece: PieceSketch = {}): ReportWords {
  const claims = sketches.map(aClaim);
  const looked = aPiece({
    ...{ date: "1765/1775", region: "Port", observations: [{ id: "o", part: "drawers", feature: "arcs" }] },
    ...piece,
  });
  const report = examine(looked, neighbourhoodOf(TERMS, claims));
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  return reportInWords(report, looked, { labelOf: (term) => term, claimOf: (claim) => byId.get(claim) });
}
const spoken = (words: ReportWords): string => JSON.stringify(words);
const saysOf = (words: ReportWords, id = "o"): string => words.findings.find((f) => f.id === id)?.says ?? "";

const sawInColony: ClaimSketch = {
  id: "saw",
  relation: "introduced",
  subject: "disc saw",
  region: "Colony",
  when: "1815",
};
const needsSaw: ClaimSketch = { id: "needs", relation: "requires", subject: "arcs", ways: [["disc saw"]] };
const fashion: ClaimSketch = { id: "fashion", relation: "current", subject: "arcs", when: "1780/1800" };

describe("a report in words", () => {
  it("[W1] says cannot be of what did not exist", () => {
    const words = wordsOf([needsSaw, sawInColony]);
    expect(words.headline).toBe(
      "The drawers cannot be of 1765 to 1775. Either that part is not of the first making, or the piece is not of those years.",
    );
    expect(saysOf(words)).toBe(
      "Arcs on the drawers cannot be of 1765 to 1775: possible 1815 or later, 40 years too late.",
    );
  });

  it("[W1] says unusual, and not impossible, of what was only out of its time", () => {
    const words = wordsOf([fashion]);
    expect(spoken(words)).not.toContain("cannot be");
    expect(words.headline).toBe(
      "Nothing rules 1765 to 1775 out, but the drawers would be unusual for those years.",
    );
    expect(saysOf(words)).toContain("by 5 years: usual 1780 to 1800. Unusual, not impossible.");
    expect(words.findings[0]?.short).toBe("unusual by 5 years");
  });

  it("[W1] never says cannot be for what only some sources say", () => {
    const rival: ClaimSketch = { ...sawInColony, id: "rival", when: "1770" };
    const words = wordsOf([needsSaw, sawInColony, rival]);
    expect(spoken(words)).not.toContain("cannot be");
    expect(saysOf(words)).toContain("It is open only because sources disagree.");
  });

  it("[W9] tells the years in which there was none, and of the rest neither possible nor usual", () => {
    const none: ClaimSketch = {
      ...{ id: "none", relation: "not found in", subject: "arcs", region: "Port", when: "1700/1799" },
    };
    expect(saysOf(wordsOf([{ ...none, hardness: "practice" }]))).toBe(
      "Arcs on the drawers would be out of its time in 1765 to 1775 by 25 years: not found there 1700 to 1799. Unusual, not impossible.",
    );
    const hard = wordsOf([{ ...none, hardness: "physical" }]);
    expect(saysOf(hard)).toContain("cannot be of 1765 to 1775: not found there 1700 to 1799, in a gap");
    expect(hard.ruleOuts[0]?.says).toBe(saysOf(hard));
    const later = wordsOf([{ ...none, hardness: "practice" }], { date: "1820" });
    expect(saysOf(later)).toBe("Arcs on the drawers agrees with 1820: not found there 1700 to 1799.");
    expect(saysOf(wordsOf([{ ...none, hardness: "practice", when: "../1790" }]))).toContain(
      "not found there up to 1790",
    );
  });

  it("[W9] tells what is left where another claim bounds it too", () => {
    const none: ClaimSketch = {
      ...{ id: "none", relation: "not found in", subject: "arcs", region: "Port", when: "1760/1799" },
      hardness: "practice",
    };
    const until: ClaimSketch = { id: "until", relation: "common until", subject: "arcs", when: "1750" };
    expect(saysOf(wordsOf([none, until]))).toContain("usual up to 1750");
  });

  it("[W2] says in the same breath what it only holds by", () => {
    const words = wordsOf([needsSaw, sawInColony], { region: "Home" });
    expect(words.headline).toContain("cannot be of 1765 to 1775, as far as this graph knows.");
    expect(saysOf(words)).toContain(
      "This holds only as far as this graph knows the earliest date of disc saw anywhere.",
    );
    expect(words.findings[0]?.steps.some(({ assumed, says }) => assumed && says.startsWith("Assumed"))).toBe(
      true,
    );
  });

  it("[W3] says that the evidence does not discriminate where nothing speaks", () => {
    const words = wordsOf([]);
    expect(words.headline).toBe(
      "The evidence does not discriminate: nothing recorded so far says anything of 1765 to 1775.",
    );
    expect(words.reasons).toEqual([]);
  });

  it("[W3] does not count what says nothing as being of the claimed years", () => {
    const formInUse: ClaimSketch = { id: "form", relation: "current", subject: "chest", when: "1700/1800" };
    const headline = (...seen: ("present" | "absent")[]) =>
      wordsOf([formInUse], {
        form: "chest",
        observations: seen.map((each, i) => ({ id: `o${i}`, part: "drawers", feature: "arcs", seen: each })),
      }).headline;
    const start = "Nothing recorded rules 1765 to 1775 out: ";
    expect(headline("absent")).toBe(`${start}nothing was seen that says anything of the date.`);
    expect(headline("present")).toBe(`${start}the one thing seen says nothing of the date.`);
    expect(headline("present", "present")).toBe(
      `${start}none of the two things seen says anything of the date.`,
    );
  });

  it("[W3] asks for a first observation where there is none, and gives no score anywhere", () => {
    expect(wordsOf([], { observations: [] }).headline).toBe(
      "Nothing is recorded yet. Begin with one part and what you see on it.",
    );
    expect(spoken(wordsOf([needsSaw, sawInColony, fashion]))).not.toMatch(/%|score|probab|confiden/i);
  });

  it("[W4] names the claim of each step, or says that it is assumed or drawn from those below it", () => {
    const { steps } = wordsOf([needsSaw, sawInColony]).findings[0] ?? { steps: [] };
    expect(steps.map(({ claim }) => claim)).toEqual(["needs", "saw"]);
    const twoWays = wordsOf([
      { ...needsSaw, ways: [["disc saw"], ["old jig"]] },
      sawInColony,
      { id: "jig", relation: "discontinued", subject: "old jig", hardness: "physical", when: "1745" },
    ]);
    const [first, ...below] = twoWays.findings[0]?.steps ?? [];
    expect(first?.says).toMatch(/by one of these ways\.$/);
    expect(below.every(({ depth, claim }) => depth === 1 && claim !== undefined)).toBe(true);
  });

  it.each<[string, readonly ClaimSketch[], string]>([
    ["undated", [], "no date for it in this graph"],
    ["open list", [{ ...needsSaw, closed: false }, sawInColony], "it can come about in ways not listed"],
    ["another form", [{ ...fashion, form: "chest" }], "no claim covers this place, form or part"],
  ])("[W5] gives the reason of silence: %s", (_, claims, reason) => {
    const words = wordsOf(claims);
    expect(words.findings.find(({ id }) => id === "o")?.short).toBe(`says nothing: ${reason}`);
  });

  it("[W6] says what was seen that excuses, or what to look for", () => {
    const late: ClaimSketch = { id: "late", relation: "introduced", subject: "arcs", when: "1846" };
    const unless: ClaimSketch = { id: "unless", relation: "void when", of: "late", condition: "old hole" };
    const hole = { id: "h", part: "drawers", feature: "old hole" };
    const arcs = { id: "o", part: "drawers", feature: "arcs" };
    expect(saysOf(wordsOf([late, unless], { observations: [arcs, hole] }))).toContain(
      "Set aside, since there is old hole.",
    );
    const open = wordsOf([late, unless]);
    expect(saysOf(open)).toContain("Would count for nothing if found with old hole: look for it.");
    expect(open.headline).toContain("An exception that was not looked for would excuse it.");
  });

  it("[W1] says of several parts that they may be later, of one that it may", () => {
    const arcs = (part: string) => ({ id: part, part, feature: "arcs" });
    const headline = (...parts: string[]) =>
      wordsOf([needsSaw, sawInColony], { parts, observations: parts.map(arcs) }).headline;
    expect(headline("drawers")).toContain("Either that part is not of the first making");
    expect(headline("drawers", "top")).toContain("Either those parts are not of the first making");
  });

  it("[W6] says of several reasons how many an exception would excuse", () => {
    const late = (subject: string): readonly ClaimSketch[] => [
      { id: `late ${subject}`, relation: "introduced", subject, when: "1846" },
      { id: `unless ${subject}`, relation: "void when", of: `late ${subject}`, condition: "old hole" },
    ];
    const seen = ["arcs", "pins", "flats"].map((feature) => ({ id: feature, part: "drawers", feature }));
    const headline = (...excusable: string[]) =>
      wordsOf(
        ["arcs", "pins", "flats"].flatMap((subject) =>
          late(subject).slice(0, excusable.includes(subject) ? 2 : 1),
        ),
        { observations: seen },
      ).headline;
    expect(headline("arcs")).toContain("One of the three reasons would fall to an exception");
    expect(headline("arcs", "pins")).toContain("Of the three reasons, two would fall to exceptions");
    expect(headline("arcs", "pins", "flats")).toContain("All three reasons would fall to exceptions");
  });

  it("[W6] says of a sign what sets it aside, and of an absence that it was looked for", () => {
    const sign: ClaimSketch = {
      id: "sign",
      relation: "indicates",
      subject: "arcs",
      states: ["later"],
      strength: "firm",
    };
    const unless: ClaimSketch = { id: "unless", relation: "void when", of: "sign", condition: "old hole" };
    const arcs = { id: "o", part: "drawers", feature: "arcs" };
    const aside = wordsOf([sign, unless], {
      observations: [arcs, { id: "h", part: "drawers", feature: "old hole" }],
    });
    expect(aside.signs[0]).toMatchObject({
      says: "Arcs on the drawers speaks strongly for a later part.",
      because: ["Set aside by old hole."],
      look: [],
    });
    const age: ClaimSketch = { ...sign, states: ["original"], strength: "usual" };
    const missing = wordsOf([age], { observations: [{ ...arcs, seen: "absent" }] });
    expect(missing.signs[0]?.says).toBe(
      "No arcs on the drawers, though looked for: speaks against an original part.",
    );
  });

  it("[W6] says of a sign for all states but one that it speaks against that one", () => {
    const ofAge: ClaimSketch = {
      ...{ id: "age", relation: "indicates", subject: "arcs", strength: "firm" },
      states: ["original", "reused", "reworked"],
    };
    const arcs = { id: "o", part: "drawers", feature: "arcs" };
    const saysOfSign = (seen: "present" | "absent") =>
      wordsOf([ofAge], { observations: [{ ...arcs, seen }] }).signs[0]?.says;
    expect(saysOfSign("present")).toBe("Arcs on the drawers speaks strongly against a later part.");
    expect(saysOfSign("absent")).toBe(
      "No arcs on the drawers, though looked for: speaks strongly for a later part.",
    );
    expect(briefSign({ speaks: "for", states: ["original", "reused", "reworked"] })).toBe(
      "speaks against a later part",
    );
    expect(briefSign({ speaks: "for", states: ["later", "reused"] })).toBe(
      "speaks for a later part or a part from another piece",
    );
  });

  it("[W7] says what was not searched, and for what", () => {
    const wide: ClaimSketch = { ...fashion, id: "wide", relation: "introduced", when: "1790" };
    const near: ClaimSketch = { ...wide, id: "near", region: "Port" };
    expect(wordsOf([wide, near]).notSearched).toEqual([
      "Not counted among the rule-outs of arcs on the drawers: giving up a claim can bring an older one back.",
    ]);
    const tools = [0, 1, 2, 3].map((n) => `tool ${n}`);
    const dates = tools.flatMap((subject) =>
      tools.map((n): ClaimSketch => ({ ...wide, id: `${subject} ${n}`, subject })),
    );
    expect(wordsOf([{ ...needsSaw, ways: tools.map((tool) => [tool]) }, ...dates]).notSearched).toEqual([
      "Not all rule-outs are known of arcs on the drawers: there are more ways to prove them than were followed.",
    ]);
  });

  it("[W8] says that the claim is ruled out where at each place something does, though nothing does at all", () => {
    const late = (region: string, subject: string): ClaimSketch => ({
      ...{ id: `${subject} in ${region}`, relation: "introduced", subject, region, when: "1815" },
    });
    const at = (...claims: ClaimSketch[]): string =>
      wordsOf(
        [...claims, { ...late("World", "arcs"), when: "1700" }, { ...late("World", "pins"), when: "1700" }],
        {
          region: "World",
          observations: [
            { id: "o", part: "drawers", feature: "arcs" },
            { id: "p", part: "top", feature: "pins" },
          ],
        },
      ).headline;
    expect(at(late("Home", "arcs"))).toContain("Nothing recorded rules 1765 to 1775 out");
    const split: ClaimSketch = {
      id: "out",
      relation: "confined to",
      subject: "pins",
      regions: ["Home"],
      hardness: "physical",
    };
    expect(at(late("Home", "arcs"), split)).toBe(
      "Wherever it was made, something rules 1765 to 1775 out, though not the same everywhere. Either those parts are not of the first making, or the piece is not of those years.",
    );
  });
});

describe("[W4] the steps of a rule-out", () => {
  const fromHabit: ClaimSketch = { ...fashion, id: "habit", when: "1830/1850" };

  it("are those of the way it rests on, where the finding's own chain tells another", () => {
    const { ruleOuts } = wordsOf([needsSaw, sawInColony, fromHabit]);
    const claimsOf = ruleOuts.map(({ steps }) => steps.map(({ claim }) => claim).sort());
    expect(claimsOf).toEqual([["needs", "saw"], ["habit"]]);
    expect(ruleOuts[1]?.steps[0]?.says).toMatch(/1830 to 1850/);
  });

  it("name every claim and assumption among its atoms, whatever the piece", () => {
    const looked: PieceSketch = {
      observations: [
        { id: "o", part: "drawers", feature: "arcs" },
        { id: "p", part: "top", feature: "old hole" },
      ],
    };
    const old: ClaimSketch = { id: "old", relation: "current", subject: "old hole", when: "1700/1770" };
    const elsewhere: ClaimSketch = { ...sawInColony, id: "home", region: "Home", when: "1810" };
    const { ruleOuts } = wordsOf([needsSaw, elsewhere, fromHabit, old], looked);
    expect(ruleOuts.length).toBeGreaterThan(2);
    const told = ruleOuts.map(({ steps }) =>
      steps.map(({ claim, assumed }) => (assumed ? "assumed" : claim)).sort(),
    );
    expect(told).toContainEqual(["assumed", "home", "needs"]);
    expect(told).toContainEqual(["habit", "old"]);
    expect(told).toContainEqual(["assumed", "home", "needs", "old"]);
  });
});

describe("[W8] a rule-out at some places only", () => {
  const soft: readonly ClaimSketch[] = [
    { ...fashion, id: "habit", region: "Colony", when: "1830/1850" },
    { ...fashion, id: "old habit", region: "Home", when: "1700/1780" },
  ];
  const hard: readonly ClaimSketch[] = [
    { ...sawInColony, id: "late", subject: "arcs" },
    { ...sawInColony, id: "early", subject: "arcs", region: "Home", when: "1700" },
  ];

  it("names them, and not the years that are left over all places", () => {
    expect(wordsOf(soft, { region: "World" }).ruleOuts.map(({ says }) => says)).toEqual([
      "If made in Colony: arcs on the drawers would not usually be of 1765 to 1775.",
    ]);
  });

  it("does not condemn the piece in the headline, which says where it would be so", () => {
    expect(wordsOf(hard, { region: "World" }).headline).toBe(
      "Nothing recorded rules 1765 to 1775 out: the one thing seen can be of those years. But if it was made in Colony, the drawers cannot be of those years.",
    );
    expect(wordsOf(soft, { region: "World" }).headline).toMatch(
      /^The evidence does not discriminate: .* But if it was made in Colony, the drawers would be unusual for those years\.$/,
    );
  });

  it("condemns it where each place has a reason of its own", () => {
    const late = hard.map((claim) => ({ ...claim, when: claim.id === "late" ? "1815" : "1800" }));
    expect(wordsOf(late, { region: "World" }).headline).toMatch(/^The drawers cannot be of 1765 to 1775/);
    expect(wordsOf(hard, { region: "Port" }).headline).toMatch(/^The drawers cannot be of 1765 to 1775/);
  });
});
