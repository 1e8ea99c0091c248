import type { PartSummary } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import type { ReportReader } from "./report-reader.ts";

const counted = ({ counts }: PartSummary): string => {
  const said = [
    counts.seen > 0 ? `${counts.seen} seen` : "",
    counts.absent > 0 ? `${counts.absent} looked for and not there` : "",
    counts.unseen > 0 ? `${counts.unseen} could not be seen` : "",
  ].filter((text) => text !== "");
  return said.length === 0 ? "not looked at" : said.join(", ");
};

/** A part in one line: what speaks, and how much was looked at. */
export function partInWords(summary: PartSummary, reader: ReportReader): ReportWords["parts"][number] {
  const verdict: Readonly<Record<PartSummary["speaks"], string>> = {
    "against-hard": `cannot be of ${reader.claimed}`,
    "against-soft": `unusual for ${reader.claimed}`,
    sign: "shows a sign of alteration",
    for: `can be of ${reader.claimed}`,
    nothing: "says nothing of the date",
    "not-looked": "not looked at",
  };
  const says =
    summary.speaks === "not-looked"
      ? verdict["not-looked"]
      : `${verdict[summary.speaks]}; ${counted(summary)}`;
  return { part: summary.part, says };
}
