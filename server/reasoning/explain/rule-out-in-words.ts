import type { RuleOut } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import { findingSays } from "./finding-in-words.ts";
import { capitalise, listInWords } from "./list-in-words.ts";
import { placeInWords, type ReportReader, subjectInWords } from "./report-reader.ts";
import { ruleOutSteps } from "./rule-out-steps.ts";
import { yearsOfFinding } from "./years-left-in-words.ts";

function where(ruleOut: RuleOut, reader: ReportReader): string {
  const all = reader.report.attribution.places.length;
  if (ruleOut.places.length === 0 || ruleOut.places.length >= all) return "";
  return `If made in ${listInWords(
    ruleOut.places.map((place) => placeInWords(place, reader)),
    "or",
  )}: `;
}

function sentence(ruleOut: RuleOut, reader: ReportReader): string {
  const findings = ruleOut.findings.flatMap((finding) => reader.findingOf(finding) ?? []);
  const windows = findings.map((finding) => {
    const word = ruleOut.hardness === "physical" ? "possible" : "usual";
    const left = yearsOfFinding(word, finding, reader);
    return `${subjectInWords(finding, reader)} (${left.replace(`${word} `, "")})`;
  });
  const [first] = findings;
  const never = ruleOut.hardness === "physical" ? "cannot be" : "would not usually be";
  switch (ruleOut.against) {
    case "attribution": {
      if (first === undefined || findings.length > 1)
        return `${capitalise(listInWords(windows))} ${never} together of ${reader.claimed}.`;
      // At some places only: what is left over all of them is not what is meant.
      if (first.label !== "contradictory")
        return `${capitalise(subjectInWords(first, reader))} ${never} of ${reader.claimed}.`;
      if (ruleOut.hardness === first.hardness) return findingSays(first, reader);
      const usual = yearsOfFinding("usual", first, reader);
      return `${capitalise(subjectInWords(first, reader))} would be out of its time by habit too: ${usual}.`;
    }
    case "parts":
      return windows.length < 2
        ? `The ${listInWords(ruleOut.parts.map(reader.partOf))} cannot be of one making, as recorded.`
        : `${capitalise(listInWords(windows))} ${never} of one making.`;
    case "observation":
      return `${capitalise(listInWords(windows))}: no year is left, so a sighting or a claim must be wrong.`;
  }
}

/** A rule-out as a sentence, and the steps it rests on. */
export function ruleOutInWords(ruleOut: RuleOut, reader: ReportReader): ReportWords["ruleOuts"][number] {
  const said = sentence(ruleOut, reader);
  const condition = where(ruleOut, reader);
  return {
    id: ruleOut.id,
    says: condition === "" ? said : condition + said.charAt(0).toLowerCase() + said.slice(1),
    steps: ruleOutSteps(ruleOut, reader),
  };
}
