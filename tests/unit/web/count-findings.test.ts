import { describe, expect, it } from "vitest";
import type { Finding } from "#server/domain/report.ts";
import { countFindings } from "#web/start/count-findings.ts";

const finding = (label: Finding["label"], observation: string | undefined = "o1") =>
  ({ label, observation }) as unknown as Finding;

describe("[P9] what is counted below the strips of a piece", () => {
  it("is what was seen, by what it says", () => {
    const findings = [
      finding("contradictory"),
      finding("consistent"),
      finding("consistent"),
      finding("silent"),
    ];
    expect(countFindings(findings)).toEqual({ against: 1, fits: 2, silent: 1 });
  });

  it("is not the form, style or maker of the attribution", () => {
    const ofAttribution = { label: "contradictory" } as unknown as Finding;
    expect(countFindings([ofAttribution])).toEqual({ against: 0, fits: 0, silent: 0 });
  });
});
