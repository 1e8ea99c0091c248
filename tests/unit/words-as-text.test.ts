import { describe, expect, it } from "vitest";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords, StepInWords } from "#server/domain/report-words.ts";
import { wordsAsText } from "#server/words-as-text.ts";
import { aPiece } from "#tests/support/build-piece.ts";

const nothing: ReportWords = {
  ...{ headline: "Nothing speaks against it.", reasons: [], findings: [], ruleOuts: [], signs: [] },
  ...{ parts: [], gaps: [], notSearched: [] },
};
const report = (
  ruleOuts: readonly { id: string; hardness: string; findings: string[] }[] = [],
  signs: readonly { speaks: string; states: string[] }[] = [],
): Report =>
  ({
    ...{ revision: 7, attribution: { date: "1760/1775" }, signs },
    ruleOuts: ruleOuts.map((ruleOut) => ({ ...ruleOut, against: "attribution" })),
  }) as unknown as Report;
const piece = { ...aPiece({ parts: ["top"] }), title: "A chest", invented: false };
const step = (depth: number, says: string, claim?: string): StepInWords =>
  ({ depth, says, assumed: claim === undefined, ...(claim ? { claim } : {}) }) as StepInWords;
const headings = (text: string) => text.split("\n").filter((line) => line !== "" && !line.startsWith(" "));

describe("a report in words on a terminal", () => {
  it("has no heading without something under it", () => {
    expect(wordsAsText(report(), nothing, piece)).toBe(
      [
        "A chest",
        "Claimed: 1760/1775. Knowledge as of revision 7.",
        "",
        "Nothing speaks against it.",
        "",
        "A finding is evidence to weigh, not a certificate or a valuation.",
        "",
      ].join("\n"),
    );
  });

  it("says of an invented piece that it is invented", () => {
    expect(wordsAsText(report(), nothing, { ...piece, invented: true })).toMatch(/^A chest \(invented: /);
  });

  it("indents each step below what it supports, with its claim or as assumed", () => {
    const steps = [step(0, "Needs a saw.", "claim.a"), step(1, "As elsewhere.")];
    const text = wordsAsText(
      report(),
      { ...nothing, findings: [{ id: "o1", says: "Too late.", short: "", steps, paths: [] }] },
      piece,
    );
    expect(text).toContain(
      "\nFindings\n  Too late.\n    Needs a saw. [claim.a]\n      As elsewhere. (assumed)\n",
    );
  });

  it("tells a finding once, among the reasons or among the other findings", () => {
    const finding = (id: string, says: string) => ({ id, says, short: "", steps: [], paths: [] });
    const text = wordsAsText(
      report([{ id: "r1", hardness: "physical", findings: ["o1"] }]),
      {
        ...nothing,
        findings: [finding("o1", "Cannot be."), finding("o2", "Agrees.")],
        ruleOuts: [{ id: "r1", says: "Cannot be.", steps: [step(0, "Needs a saw.", "claim.a")] }],
      },
      piece,
    );
    expect(text).toContain(
      "\nWhat rules it out\n  Cannot be.\n    Needs a saw. [claim.a]\n\nOther findings\n  Agrees.\n",
    );
    expect(text.split("Cannot be.")).toHaveLength(2);
  });

  it("keeps what cannot be apart from what would be unusual", () => {
    const text = wordsAsText(
      report([
        { id: "r1", hardness: "practice", findings: ["o1"] },
        { id: "r2", hardness: "physical", findings: ["o2"] },
        { id: "r3", hardness: "practice", findings: ["o2"] },
      ]),
      {
        ...nothing,
        ruleOuts: [
          { id: "r1", says: "Unusual.", steps: [] },
          { id: "r2", says: "Cannot be.", steps: [] },
          { id: "r3", says: "By habit too.", steps: [] },
        ],
      },
      piece,
    );
    expect(text).toContain(
      "\nWhat rules it out\n  Cannot be.\n\nWhat would be unusual\n  Unusual.\n  1 more that follows from what is told already.\n",
    );
  });

  it("gives each part of the report its heading, and names the parts of the piece", () => {
    const sign = {
      ...{ observation: "o1", claim: "claim.s", says: "Carved later." },
      ...{ because: ["Gesso."], look: ["Look below."] },
    } as unknown as ReportWords["signs"][number];
    const text = wordsAsText(
      report(
        [],
        [
          { speaks: "for", states: ["later"] },
          { speaks: "for", states: ["original"] },
        ],
      ),
      {
        ...nothing,
        signs: [sign, { ...sign, says: "Dark inside.", because: [], look: [] }],
        parts: [{ part: "top" as never, says: "not looked at" }],
        gaps: ["No date for the style."],
        notSearched: ["Windows with gaps."],
      },
      piece,
    );
    expect(headings(text).slice(3, -1)).toEqual([
      "Signs of alteration",
      "Signs that a part is original",
      "Parts",
      "What the graph does not know",
      "Not searched",
    ]);
    expect(text).toContain("  Carved later. [claim.s]\n    Gesso.\n    Look below.\n");
    expect(text).toContain("\nSigns that a part is original\n  Dark inside. [claim.s]\n");
    expect(text).toContain("  top: not looked at\n");
  });

  it("cites the source of each claim it names, and of no other", () => {
    const findings = [
      { id: "o1", says: "Too late.", short: "", steps: [step(0, "Needs a saw.", "claim.a")], paths: [] },
    ];
    const text = wordsAsText(report(), { ...nothing, findings }, piece, [
      "claim.a: A. Writer, Saws, p. 3 (published)",
      "claim.ab: common practice",
    ]);
    expect(text).toContain(
      "\nSources of the claims named above\n  claim.a: A. Writer, Saws, p. 3 (published)\n",
    );
    expect(text).not.toContain("claim.ab");
  });
});
