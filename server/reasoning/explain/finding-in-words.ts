import type { Finding, Path, SilenceReason } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import { assumedTerm } from "./assumption-in-words.ts";
import { capitalise, listInWords } from "./list-in-words.ts";
import { type ReportReader, subjectInWords } from "./report-reader.ts";
import { stepsInWords } from "./steps-in-words.ts";
import { yearsInWords } from "./years-in-words.ts";

const years = (count: number): string => (count === 1 ? "1 year" : `${count} years`);

/** Why a finding says nothing of the date, to follow "says nothing: ". */
export const SILENCE_IN_WORDS: Readonly<Record<SilenceReason, string>> = {
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
      return `${years(finding.gapYears)} outside its years`;
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
  const first = terms[0];
  return first === undefined
    ? ""
    : ` This holds only if ${reader.labelOf(first)} was nowhere older than this graph says.`;
}

/** A finding as one or two whole sentences. */
export function findingSays(finding: Finding, reader: ReportReader): string {
  const subject = capitalise(subjectInWords(finding, reader));
  const doubt = finding.doubtful ? " A date it rests on is itself marked doubtful." : "";
  switch (finding.label) {
    case "contradictory": {
      if (finding.hardness === "physical") {
        const known = yearsInWords(finding.possible.outer);
        return `${subject} cannot be of ${reader.claimed}: possible ${known}, ${distance(finding)}.${asFarAsKnown(finding, reader)}${doubt}`;
      }
      const usual = yearsInWords(finding.usual.outer);
      const by = finding.gapYears === undefined ? "" : ` by ${years(finding.gapYears)}`;
      return `${subject} would be out of its time in ${reader.claimed}${by}: usual ${usual}. Unusual, not impossible.${doubt}`;
    }
    case "consistent": {
      const known = yearsInWords(finding.usual.outer);
      const how = finding.certain ? "agrees with" : finding.marginal ? "can only just be of" : "can be of";
      const open = finding.openOnlyBy.length === 0 ? "" : " It is open only because sources disagree.";
      return `${subject} ${how} ${reader.claimed}: usual ${known}.${open}${doubt}`;
    }
    case "silent": {
      if (finding.reason === "looked-for-absent") return `${subject}: looked for and not there.`;
      if (finding.reason === "could-not-be-seen") return `${subject}: could not be seen.`;
      const reasons = finding.reasons.map((reason) => SILENCE_IN_WORDS[reason]);
      return `${subject} says nothing of the date: ${listInWords(reasons.length > 0 ? reasons : [SILENCE_IN_WORDS.undated])}.`;
    }
  }
}

const PATH_LABEL: Readonly<Record<Path["label"], string>> = {
  contradictory: "against",
  consistent: "agrees",
  silent: "says nothing",
  "way-excluded": "this way is excluded",
};

/** A path as one line: the terms passed, and where it ends. */
export function pathInWords(path: Path, reader: ReportReader): string {
  const chain = path.terms.map(reader.labelOf).join(" → ");
  const end = path.label === "silent" ? SILENCE_IN_WORDS[path.reason ?? "undated"] : yearsInWords(path.years);
  const gap = path.gapYears === undefined || path.gapYears === 0 ? "" : `, ${years(path.gapYears)} away`;
  return `${chain}: ${end} (${PATH_LABEL[path.label]}${gap})`;
}

/** Everything said of one finding. */
export const findingInWords = (finding: Finding, reader: ReportReader): ReportWords["findings"][number] => ({
  id: finding.id,
  says: findingSays(finding, reader),
  short: findingInShort(finding),
  steps: stepsInWords(finding.derivation, reader),
  paths: finding.paths.map((path) => pathInWords(path, reader)),
});
