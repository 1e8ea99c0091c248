import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { caseFile, caseNames, reportAsLines, runCase, wordsAsLines } from "./run-case.ts";

describe("golden cases", () => {
  it("are there", () => {
    expect(caseNames().length).toBeGreaterThan(10);
  });

  for (const name of caseNames())
    it(`${name}: the report and its words are those that were reviewed`, async () => {
      const { report, words } = await runCase(name);
      expect(reportAsLines(report)).toBe(readFileSync(caseFile(name, "report.json"), "utf8"));
      expect(wordsAsLines(words)).toBe(readFileSync(caseFile(name, "words.txt"), "utf8"));
    });
});
