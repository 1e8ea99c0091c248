import { describe, expect, it } from "vitest";
import type { Finding, Sign } from "#server/domain/report.ts";
import { countFindings } from "#web/start/count-findings.ts";

const finding = (rest: Partial<Finding>) =>
  ({ label: "silent", observation: "o1", seen: "present", ...rest }) as unknown as Finding;
const sign = (standing: Sign["standing"], states: Sign["states"] = ["later"]) =>
  ({ standing, speaks: "for", states }) as unknown as Sign;

describe("[P9] what is counted below the strips of a piece", () => {
  it("is what each thing seen says, what cannot be apart from what is only unusual", () => {
    const findings = [
      finding({ label: "contradictory", hardness: "physical" }),
      finding({ label: "contradictory", hardness: "practice" }),
      finding({ label: "contradictory", hardness: "practice" }),
      finding({ label: "consistent" }),
      finding({ label: "silent" }),
    ];
    expect(countFindings({ findings, signs: [] })).toEqual({
      cannot: 1,
      unusual: 2,
      agree: 1,
      silent: 1,
      signs: 0,
    });
  });

  it("leaves out what is absent or could not be seen, and the form, style or maker claimed", () => {
    const { observation: _, ...ofAttribution } = finding({ label: "contradictory", hardness: "physical" });
    const findings = [finding({ seen: "absent" }), finding({ seen: "unseen" }), ofAttribution];
    expect(countFindings({ findings, signs: [] })).toEqual({
      cannot: 0,
      unusual: 0,
      agree: 0,
      silent: 0,
      signs: 0,
    });
  });

  it("counts the signs of alteration that stand, not those of age", () => {
    const signs = [sign("stands"), sign("set-aside"), sign("stands"), sign("stands", ["original"])].map(
      (each, at) => ({ ...each, observation: `o${at}` }) as Sign,
    );
    expect(countFindings({ findings: [], signs }).signs).toBe(2);
  });
});
