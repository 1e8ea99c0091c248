import { describe, expect, it } from "vitest";
import type { ReportWords } from "#server/domain/report-words.ts";
import { wordsAsText } from "#server/words-as-text.ts";

const nothing: ReportWords = {
  ...{ headline: "Nothing speaks against it.", reasons: [], findings: [], ruleOuts: [], signs: [] },
  ...{ parts: [], gaps: [], notSearched: [] },
};
const step = (depth: number, says: string, claim?: string) =>
  ({ depth, says, assumed: claim === undefined, ...(claim ? { claim } : {}) }) as never;

describe("a report in words on a terminal", () => {
  it("has no heading without something under it", () => {
    expect(wordsAsText(nothing)).toBe("Nothing speaks against it.\n");
  });

  it("indents each step below what it supports, with its claim or as assumed", () => {
    const text = wordsAsText({
      ...nothing,
      reasons: ["The saw came later."],
      findings: [
        {
          id: "o1",
          says: "Too late.",
          short: "",
          steps: [step(0, "Needs a saw.", "claim.a"), step(1, "As elsewhere.")],
          paths: [],
        },
      ],
      gaps: ["No date for the style."],
    });
    expect(text).toBe(
      [
        "Nothing speaks against it.",
        "  The saw came later.",
        "",
        "Findings",
        "  Too late.",
        "    Needs a saw. [claim.a]",
        "      As elsewhere. (assumed)",
        "",
        "What the graph does not know",
        "  No date for the style.",
        "",
      ].join("\n"),
    );
  });

  it("gives each part of the report its heading", () => {
    const text = wordsAsText({
      ...nothing,
      ruleOuts: [{ id: "r1", says: "These cannot stand together.", steps: [] }],
      signs: [
        {
          observation: "o1" as never,
          claim: "claim.s" as never,
          says: "Carved later.",
          because: ["Gesso."],
          look: ["Look below."],
        },
      ],
      parts: [{ part: "top" as never, says: "The top: nothing." }],
      notSearched: ["Windows with gaps."],
    });
    expect(text.split("\n").filter((line) => line !== "" && !line.startsWith(" "))).toEqual([
      "Nothing speaks against it.",
      "Rule-outs",
      "Signs of alteration",
      "Parts",
      "Not searched",
    ]);
    expect(text).toContain("  Carved later. [claim.s]\n    Gesso.\n    Look below.\n");
  });
});
