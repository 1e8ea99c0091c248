import type { Report, RuleOut } from "../../domain/report.ts";
import type { ShiftLine, ShiftsInWords } from "../../domain/shift-words.ts";
import type { Shifts } from "../../domain/shifts.ts";
import { type RuleOutVerdict, ruleOutVerdictOf } from "../../domain/verdicts.ts";
import { findingInShort } from "./finding-in-words.ts";
import { headline } from "./headline.ts";
import { capitalise } from "./list-in-words.ts";
import { type ReportReader, subjectInWords } from "./report-reader.ts";
import { ruleOutInWords } from "./rule-out-in-words.ts";
import { type OddsOnBothSides, stateShiftsInWords } from "./weighing/state-shifts-in-words.ts";

const SPEAKS: Readonly<Record<Report["parts"][number]["speaks"], string>> = {
  "against-hard": "cannot be of the claimed years",
  "against-soft": "unusual for the claimed years",
  sign: "shows a sign of alteration",
  for: "can be of the claimed years",
  nothing: "says nothing of the date",
  "not-looked": "not looked at",
};

/** What changed between two answers on one piece: findings first, then what they alone do not tell, at last what parts probably are. */
export function shiftsInWords(
  shifts: Shifts,
  before: ReportReader,
  now: ReportReader,
  odds: OddsOnBothSides,
): ShiftsInWords {
  const [was, is] = [headline(before), headline(now)];
  const shifted = new Set(shifts.findings.map(({ id }) => id));
  const ofShifted = new Set(shifts.findings.flatMap(({ id }) => now.findingOf(id)?.part ?? []));
  return {
    ...(was === is ? {} : { headlineBefore: was, headline: is }),
    lines: [
      ...shifts.findings.flatMap(({ id }) => findingLine(id, before, now)),
      ...shifts.ruleOuts.came
        .filter((one) => !isTold(one, shifted))
        .flatMap((one) => ruleOutLine(one, now, true)),
      ...shifts.ruleOuts.went
        .filter((one) => !isTold(one, shifted))
        .flatMap((one) => ruleOutLine(one, before, false)),
      ...shifts.parts
        .filter(({ part }) => !ofShifted.has(part))
        .map(
          ({ part, from, to }): ShiftLine => ({
            ...{ kind: "part", says: capitalise(now.partOf(part)) },
            before: SPEAKS[from ?? "not-looked"],
            now: SPEAKS[to ?? "not-looked"],
          }),
        ),
      ...stateShiftsInWords(shifts.states, odds, now.partOf),
    ],
  };
}

/** A finding against what is claimed is told by the finding. */
const isTold = ({ against, findings }: RuleOutVerdict, shifted: ReadonlySet<string>): boolean =>
  against !== "parts" && findings.every((finding) => shifted.has(finding));

function findingLine(id: string, before: ReportReader, now: ReportReader): readonly ShiftLine[] {
  const [was, is] = [before.findingOf(id), now.findingOf(id)];
  if (was === undefined || is === undefined) return [];
  const says = capitalise(subjectInWords(is, now));
  return [{ kind: "finding", strip: id, says, before: findingInShort(was), now: findingInShort(is) }];
}

function ruleOutLine(one: RuleOutVerdict, reader: ReportReader, came: boolean): readonly ShiftLine[] {
  const text = JSON.stringify(one);
  const found = reader.report.ruleOuts.find(
    (ruleOut: RuleOut) => JSON.stringify(ruleOutVerdictOf(ruleOut, reader.report)) === text,
  );
  if (found === undefined) return [];
  const stands = one.hardness === "physical" ? "ruled out" : "unusual";
  const [strip] = one.findings;
  return [
    {
      ...{ kind: "rule-out", says: ruleOutInWords(found, reader).says.replace(/\.$/, "") },
      ...(strip === undefined ? {} : { strip }),
      before: came ? "nothing against it" : stands,
      now: came ? stands : "nothing against it",
    },
  ];
}
