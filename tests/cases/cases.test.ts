import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Expected } from "./expected.ts";
import { judge } from "./judge.ts";
import {
  type CaseAnswer,
  caseFile,
  caseNames,
  isOnSeed,
  readExpected,
  reportAsLines,
  runCase,
  weighingAsLines,
  wordsAsLines,
} from "./run-case.ts";

const kept = (name: string, file: string): string => readFileSync(caseFile(name, file), "utf8");
const onSeed = caseNames().filter(isOnSeed);

function complaintsOf(as: string, { report, weighed }: CaseAnswer): readonly string[] {
  if (weighed === undefined) throw new Error(`${as} was not weighed`);
  const { weighing, words } = weighed;
  return judge(readExpected(as), { report, weighing, headline: words.headline ?? "" });
}

describe("golden cases", () => {
  it("are there", () => {
    expect(caseNames().length - onSeed.length).toBeGreaterThan(10);
  });

  for (const name of caseNames().filter((one) => !isOnSeed(one)))
    it(`${name}: the report and its words are those that were reviewed`, async () => {
      const { report, words } = await runCase(name);
      expect(reportAsLines(report)).toBe(kept(name, "report.json"));
      expect(wordsAsLines(words)).toBe(kept(name, "words.txt"));
    });
});

describe("the trade's cases, on the seed graph", () => {
  it("are at least forty, and at least twelve of them honest or silent", () => {
    expect(onSeed.length).toBeGreaterThanOrEqual(40);
    const fair = onSeed.filter((name) => readExpected(name).verdict !== "at odds");
    expect(fair.length).toBeGreaterThanOrEqual(12);
  });

  for (const name of onSeed)
    it(`${name}: the answer is what an honest expert would say, in the words that were reviewed`, async () => {
      const answer = await runCase(name);
      expect(complaintsOf(name, answer)).toEqual([]);
      expect(wordsAsLines(answer.words)).toBe(kept(name, "words.txt"));
      expect(answer.weighed && weighingAsLines(answer.weighed.words)).toBe(kept(name, "weighed.txt"));
    });
});

describe("what judges an answer", () => {
  const OLD_AND_IMPROVED = "improved-a-century-later";

  it("tells a bad piece that is called honest, on every count", async () => {
    const { report, weighed } = await runCase("everything-too-late");
    if (weighed === undefined) throw new Error("not weighed");
    const { weighing, words } = weighed;
    const answered = { report, weighing, headline: words.headline ?? "" };
    const expected = readExpected("everything-too-late");
    expect(judge(expected, answered)).toEqual([]);
    const condemned = judge({ ...expected, verdict: "honest" }, answered);
    expect(condemned.map((complaint) => complaint.split(" (")[0])).toEqual([
      "condemned: cannot be as claimed",
      "condemned: the headline speaks against it",
      "condemned: revival does better by far",
      "condemned: made-up does better by far",
      "condemned: assembled does better by far",
    ]);
  });

  it("tells each thing that is not as expected", async () => {
    const { report, weighed } = await runCase(OLD_AND_IMPROVED);
    if (weighed === undefined) throw new Error("not weighed");
    const answered = { report, weighing: weighed.weighing, headline: weighed.words.headline ?? "" };
    const right = readExpected(OLD_AND_IMPROVED);
    const wrong: readonly Partial<Expected>[] = [
      { headline: "against" },
      { findings: { o3: "silent" } },
      { ruledOut: { physical: [], practice: right.ruledOut.practice } },
      { ruledOut: { physical: right.ruledOut.physical, practice: [] } },
      { signs: { "claim.J57": "set aside by o10" } },
      { wouldVoid: { "claim.J57": "feature.damaged-edge-cleaned-up" } },
      { states: { gallery: "original" } },
      { statesIfClaimed: { gallery: "reused or original" } },
      { made: { gallery: 1700 } },
      { worked: { top: 1700 } },
      { mends: { possible: { screws: "altered" } } },
      { origins: { atLeast: 5 } },
      { ahead: [["as-claimed", "later-parts"]] },
    ];
    for (const part of wrong)
      expect(judge({ ...right, ...part }, answered), JSON.stringify(part)).toHaveLength(1);
  });
});
