import type { LeaningInWords, LeaningLine } from "../../domain/leaning-words.ts";
import type { Finding, RuleOut, Sign } from "../../domain/report.ts";
import type { Leaning } from "../lean.ts";
import { findingInShort } from "./finding-in-words.ts";
import { headline } from "./headline.ts";
import { capitalise } from "./list-in-words.ts";
import { type ReportReader, subjectInWords } from "./report-reader.ts";
import { ruleOutInWords } from "./rule-out-in-words.ts";
import { signInWords } from "./sign-in-words.ts";
import { yearsOfFinding } from "./years-left-in-words.ts";

const ROLES = { contradictory: "contradiction", consistent: "agreement", silent: "silence" } as const;

/** What leans on a claim, each thing as it stands and as it would without the claim. The readers are of the two reports. */
export function leaningInWords(
  leaning: Leaning,
  reader: ReportReader,
  without: ReportReader,
): LeaningInWords {
  const [now, then] = [headline(reader), headline(without)];
  return {
    headline: now,
    ...(now === then ? {} : { headlineWithout: then }),
    lines: [
      ...leaning.findings.map(
        (each): LeaningLine => ({
          strip: each.now.id,
          role: each.now.hardness === "practice" ? "unusual" : ROLES[each.now.label],
          says: capitalise(subjectInWords(each.now, reader)),
          ...sides(each.now, each.differs ? each.without : undefined, reader),
        }),
      ),
      ...leaning.ruleOuts.map((each) => ruleOutLine(each, reader)),
      ...leaning.signs.map((each) => signLine(each, reader)),
    ],
  };
}

/** Both in short; with the years where the short words are the same. */
function sides(
  now: Finding,
  without: Finding | undefined,
  reader: ReportReader,
): Pick<LeaningLine, "now" | "without"> {
  const short = findingInShort(now);
  if (without === undefined) return { now: short };
  const then = findingInShort(without);
  if (short !== then) return { now: short, without: then };
  return { now: `${short}: ${yearsOf(now, reader)}`, without: `${then}: ${yearsOf(without, reader)}` };
}

const yearsOf = (finding: Finding, reader: ReportReader): string =>
  `${yearsOfFinding("possible", finding, reader)}; ${yearsOfFinding("usual", finding, reader)}`;

function ruleOutLine(
  { now, falls }: { readonly now: RuleOut; readonly falls: boolean },
  reader: ReportReader,
): LeaningLine {
  return {
    strip: now.findings[0] ?? "",
    role: now.hardness === "physical" ? "rule-out" : "unusual",
    says: ruleOutInWords(now, reader).says,
    now: now.hardness === "physical" ? "cannot be" : "unusual",
    ...(falls ? { without: "falls" } : {}),
  };
}

const STANDING: Readonly<Record<Sign["standing"], string>> = { stands: "stands", "set-aside": "set aside" };

function signLine(
  { now, without }: { readonly now: Sign; readonly without?: Sign },
  reader: ReportReader,
): LeaningLine {
  const then = without === undefined ? "falls" : STANDING[without.standing];
  return {
    strip: now.observation,
    role: "sign",
    says: signInWords(now, reader).says,
    now: STANDING[now.standing],
    ...(then === STANDING[now.standing] ? {} : { without: then }),
  };
}
