import type { Finding, Path, SilenceReason } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import { assumedTerm } from "./assumption-in-words.ts";
import { claimInWords } from "./claim-in-words.ts";
import { capitalise, listInWords } from "./list-in-words.ts";
import { type ReportReader, subjectInWords } from "./report-reader.ts";
import { voidIfInWords } from "./sign-in-words.ts";
import { stepsInWords } from "./steps-in-words.ts";
import { yearsOfFinding } from "./years-left-in-words.ts";

const years = (count: number): string => (count === 1 ? "1 year" : `${count} years`);

/** Why a finding says nothing of the date, to follow "says nothing: ". */
const SILENCE_IN_WORDS: Readonly<Record<SilenceReason, string>> = {
  defeated: "an exception holds",
  "out-of-scope": "no claim covers this place, form or part",
  overridden: "a claim closer to this place stands in its stead",
  "open-list": "it can come about in ways not listed",
  "unknown-end": "its end is not known",
  undated: "no date for it in this graph",
  "looked-for-absent": "looked for and not there",
  "could-not-be-seen": "could not be seen",
};

function distance(finding: Finding): string {
  if (finding.gapYears === undefined) return "no year is left for it";
  switch (finding.direction) {
    case "late":
      return `${years(finding.gapYears)} too late`;
    case "early":
      return `${years(finding.gapYears)} too early`;
    default:
      return `in a gap, ${years(finding.gapYears)} from the nearest`;
  }
}

/** A few words for the end of a strip. */
export function findingInShort(finding: Finding): string {
  switch (finding.label) {
    case "contradictory":
      if (finding.hardness === "physical") return distance(finding);
      return finding.gapYears === undefined
        ? "unusual here at any time"
        : `unusual by ${years(finding.gapYears)}`;
    case "consistent":
      return finding.certain ? "agrees" : finding.marginal ? "only just possible" : "can be";
    case "silent":
      return `says nothing: ${SILENCE_IN_WORDS[finding.reason ?? "undated"]}`;
  }
}

function asFarAsKnown(finding: Finding, reader: ReportReader): string {
  const terms = finding.support.assumptions.flatMap((assumption) => assumedTerm(assumption) ?? []);
  if (terms.length === 0) return "";
  const known = listInWords(terms.map(reader.labelOf), "or");
  return ` This holds only as far as this graph knows the earliest date of ${known} anywhere.`;
}

/** Exceptions not made sure of, which would void what a contradiction rests on. */
const unless = (finding: Finding, reader: ReportReader): string =>
  finding.voidIf.map((voidIf) => ` ${voidIfInWords(voidIf, reader)}`).join("");

/** What was seen that sets a claim aside. */
function excused(finding: Finding, reader: ReportReader): string {
  const seen = finding.setAside.flatMap(({ reason, by }) => {
    const exception = reason === "defeated" && by !== undefined ? reader.claimOf(by) : undefined;
    return exception?.relation === "void when" ? [reader.labelOf(exception.condition)] : [];
  });
  return seen.length === 0 ? "" : ` Set aside, since there is ${listInWords([...new Set(seen)])}.`;
}

/** A finding as a few whole sentences. */
export function findingSays(finding: Finding, reader: ReportReader): string {
  const subject = capitalise(subjectInWords(finding, reader));
  const doubt = finding.doubtful ? " A date it rests on is itself marked doubtful." : "";
  switch (finding.label) {
    case "contradictory": {
      if (finding.hardness === "physical") {
        const known = yearsOfFinding("possible", finding, reader);
        return `${subject} cannot be of ${reader.claimed}: ${known}, ${distance(finding)}.${asFarAsKnown(finding, reader)}${unless(finding, reader)}${doubt}`;
      }
      const usual = yearsOfFinding("usual", finding, reader);
      const by = finding.gapYears === undefined ? "" : ` by ${years(finding.gapYears)}`;
      return `${subject} would be out of its time in ${reader.claimed}${by}: ${usual}. Unusual, not impossible.${unless(finding, reader)}${doubt}`;
    }
    case "consistent": {
      const known = yearsOfFinding("usual", finding, reader);
      const how = finding.certain ? "agrees with" : finding.marginal ? "can only just be of" : "can be of";
      const open = finding.openOnlyBy.length === 0 ? "" : " It is open only because sources disagree.";
      return `${subject} ${how} ${reader.claimed}: ${known}.${open}${doubt}`;
    }
    case "silent": {
      if (finding.reason === "looked-for-absent") return `${subject}: looked for and not there.`;
      if (finding.reason === "could-not-be-seen") return `${subject}: could not be seen.`;
      return `${subject} says nothing of the date: ${SILENCE_IN_WORDS[finding.reason ?? "undated"]}.${excused(finding, reader)}`;
    }
  }
}

const PATH_LABEL: Readonly<Record<Path["label"], string>> = {
  contradictory: "against",
  consistent: "agrees",
  silent: "says nothing",
  "way-excluded": "this way is excluded",
};

/** A path as one line: the terms passed, the claim it ends in, and what that says here. */
function pathInWords(path: Path, reader: ReportReader): string {
  const claim = path.dated === undefined ? undefined : reader.claimOf(path.dated);
  const end =
    claim === undefined
      ? `${SILENCE_IN_WORDS[path.reason ?? "undated"]}.`
      : claimInWords(claim, reader.labelOf);
  const passed = claim === undefined ? path.terms : path.terms.slice(0, -1);
  const assumed = path.assumptions.length === 0 ? "" : ", taken as the earliest anywhere";
  const gap = path.gapYears === undefined || path.gapYears === 0 ? "" : `, ${years(path.gapYears)} away`;
  return `${[...passed.map(reader.labelOf), end].join(" → ")} (${PATH_LABEL[path.label]}${gap}${assumed})`;
}

/** Everything said of one finding. */
export const findingInWords = (finding: Finding, reader: ReportReader): ReportWords["findings"][number] => ({
  id: finding.id,
  says: findingSays(finding, reader),
  short: findingInShort(finding),
  steps: stepsInWords(finding.derivation, reader),
  paths: finding.paths.map((path) => pathInWords(path, reader)),
});
