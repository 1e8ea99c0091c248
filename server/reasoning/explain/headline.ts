import { countSigns } from "../../domain/count-signs.ts";
import { holdsEverywhere } from "../../domain/holds-everywhere.ts";
import type { Finding, RuleOut } from "../../domain/report.ts";
import { speaksOfChange } from "../../domain/speaks-of-change.ts";

import { findingInShort } from "./finding-in-words.ts";
import { capitalise, listInWords } from "./list-in-words.ts";
import { numberInWords } from "./number-in-words.ts";
import { placeInWords, type ReportReader, subjectInWords } from "./report-reader.ts";

const NAMED = 4;

function partsOf(ruleOuts: readonly RuleOut[], reader: ReportReader): string {
  const parts = [...new Set(ruleOuts.flatMap((ruleOut) => ruleOut.parts))].map(reader.partOf);
  if (parts.length === 0) return "what is claimed";
  const named = parts.slice(0, NAMED).map((part) => `the ${part}`);
  const more = parts.length - named.length;
  return listInWords(more > 0 ? [...named, `${numberInWords(more)} other parts`] : named);
}

const against = (
  reader: ReportReader,
  hardness: RuleOut["hardness"],
  everywhere = true,
): readonly RuleOut[] =>
  reader.report.ruleOuts.filter(
    (ruleOut) =>
      ruleOut.hardness === hardness &&
      ruleOut.against === "attribution" &&
      holdsEverywhere(ruleOut, reader.report) === everywhere,
  );

/** What would be ruled out, else unusual, at some of the places that the claim leaves open, and is not at others. */
function atSomePlaces(reader: ReportReader): string {
  const hard = against(reader, "physical", false);
  const either = hard.length > 0 ? hard : against(reader, "practice", false);
  const ofParts = either.filter(({ parts }) => parts.length > 0);
  const told = ofParts.length > 0 ? ofParts : either;
  if (told.length === 0) return "";
  const places = [
    ...new Set(told.flatMap((ruleOut) => ruleOut.places.map((place) => placeInWords(place, reader)))),
  ];
  const isOneThing = new Set(told.map(({ parts }) => parts.join(" "))).size === 1;
  const where =
    isOneThing && places.length <= NAMED
      ? `if it was made in ${listInWords(places, "or")}`
      : "at some of the places it can be from";
  const what = hard.length > 0 ? "cannot be of those years" : "would be unusual for those years";
  return ` But ${where}, ${partsOf(told, reader)} ${what}.`;
}

/** Physical rule-outs none of which holds everywhere, where at each of the places there is one; else none. */
function atEachPlace(reader: ReportReader): readonly RuleOut[] {
  const hard = against(reader, "physical", false);
  const covered = new Set(hard.flatMap(({ places }) => places.map((place) => placeInWords(place, reader))));
  return covered.size === reader.report.attribution.places.length ? hard : [];
}

function agreement(reader: ReportReader): string {
  const seen = reader.report.findings.filter(
    (finding) => finding.observation !== undefined && finding.seen === "present",
  );
  const agree = seen.filter((finding) => finding.label === "consistent").length;
  const silent = seen.filter((finding) => finding.label === "silent").length;
  if (agree === 0 && seen.length === 0) return "nothing was seen that says anything of the date";
  if (seen.length === 1)
    return agree === 1
      ? "the one thing seen can be of those years"
      : "the one thing seen says nothing of the date";
  if (agree === 0) return `none of the ${numberInWords(seen.length)} things seen says anything of the date`;
  const rest =
    silent === 0
      ? ""
      : silent === 1
        ? ", one says nothing of the date"
        : `, ${numberInWords(silent)} say nothing of the date`;
  return `${numberInWords(agree)} of ${numberInWords(seen.length)} things seen can be of those years${rest}`;
}

/** Parts that cannot be of one making, whatever is claimed. */
function apart(reader: ReportReader): string {
  const clash = reader.report.ruleOuts.find(
    ({ hardness, against: what }) => hardness === "physical" && what === "parts",
  );
  if (clash === undefined) return "";
  return ` The ${listInWords(clash.parts.map(reader.partOf))} cannot be of one making.`;
}

/** What then follows of the parts, or of the claim alone. */
function eitherOr(ruleOuts: readonly RuleOut[]): string {
  const parts = new Set(ruleOuts.flatMap((ruleOut) => ruleOut.parts)).size;
  if (parts === 0) return "Either the date claimed is wrong, or something else that is claimed.";
  const later = parts === 1 ? "that part is" : "those parts are";
  return `Either ${later} not of the first making, or the piece is not of those years.`;
}

/** How many of the reasons an exception that nobody has made sure of would take away. */
function excusable(ruleOuts: readonly RuleOut[], reader: ReportReader): string {
  const open = ruleOuts.filter(({ findings }) =>
    findings.some((finding) => reader.findingOf(finding)?.voidIf.length),
  );
  if (open.length === 0) return "";
  if (ruleOuts.length === 1) return " An exception that was not looked for would excuse it.";
  if (open.length === ruleOuts.length)
    return ` ${open.length === 2 ? "Both" : `All ${numberInWords(open.length)}`} reasons would fall to exceptions that were not looked for.`;
  return open.length === 1
    ? ` One of the ${numberInWords(ruleOuts.length)} reasons would fall to an exception that was not looked for.`
    : ` Of the ${numberInWords(ruleOuts.length)} reasons, ${numberInWords(open.length)} would fall to exceptions that were not looked for.`;
}

/** The conclusion as one or two sentences; no score. */
export function headline(reader: ReportReader): string {
  const { report, claimed } = reader;
  if (report.findings.every((finding) => finding.observation === undefined))
    return "Nothing is recorded yet. Begin with one part and what you see on it.";
  const hard = against(reader, "physical");
  const soft = against(reader, "practice");
  const only = atSomePlaces(reader);
  const assumed = hard.some((ruleOut) => ruleOut.atoms.some((atom) => atom.kind === "assumption"));
  const standing = countSigns(
    report.signs.filter((sign) => sign.standing === "stands" && speaksOfChange(sign)),
  );
  const signs =
    standing === 0
      ? ""
      : ` ${standing === 1 ? "One sign of alteration stands" : `${capitalise(numberInWords(standing))} signs of alteration stand`}.`;
  if (hard.length > 0) {
    const known = assumed ? ", as far as this graph knows" : "";
    return `${capitalise(partsOf(hard, reader))} cannot be of ${claimed}${known}. ${eitherOr(hard)}${excusable(hard, reader)}`;
  }
  const eachByItself = atEachPlace(reader);
  if (eachByItself.length > 0)
    return `Wherever it was made, something rules ${claimed} out, though not the same everywhere. ${eitherOr(eachByItself)}`;
  if (soft.length > 0)
    return `Nothing rules ${claimed} out, but ${partsOf(soft, reader)} would be unusual for those years.${only}${apart(reader)}${signs}`;
  if (report.findings.every((finding) => finding.label === "silent"))
    return `The evidence does not discriminate: nothing recorded so far says anything of ${claimed}.${only}${apart(reader)}${signs}`;
  return `Nothing recorded rules ${claimed} out: ${agreement(reader)}.${only}${apart(reader)}${signs}`;
}

const reason = (finding: Finding, reader: ReportReader): string =>
  `${capitalise(subjectInWords(finding, reader))}: ${findingInShort(finding)}.`;

/** The three findings that weigh most in the headline, largest first. */
export function reasons(reader: ReportReader): readonly string[] {
  const { findings } = reader.report;
  const contradictory = findings.filter((finding) => finding.label === "contradictory");
  const chosen =
    contradictory.length > 0 ? contradictory : findings.filter((finding) => finding.label === "consistent");
  return chosen.slice(0, 3).map((finding) => reason(finding, reader));
}
