import { id } from "#server/domain/ids.ts";
import type { ReportWords, StepInWords } from "#server/domain/report-words.ts";
import type { AnswerFragment } from "./Answer.graphql.ts";

type WordsAsGiven = AnswerFragment["words"];

const readSteps = (steps: WordsAsGiven["ruleOuts"][number]["steps"]): StepInWords[] =>
  steps.map(({ depth, says, claim, assumed }) => ({
    depth,
    says,
    assumed,
    ...(claim === null ? {} : { claim: id<"claim">(claim) }),
  }));

/** The report in words, as a value of the domain, from how the server gives it. */
export const readWords = (words: WordsAsGiven): ReportWords => ({
  headline: words.headline,
  reasons: words.reasons,
  findings: words.findings.map((finding) => ({ ...finding, steps: readSteps(finding.steps) })),
  ruleOuts: words.ruleOuts.map((ruleOut) => ({ ...ruleOut, steps: readSteps(ruleOut.steps) })),
  signs: words.signs.map((sign) => ({
    ...sign,
    observation: id<"observation">(sign.observation),
    claim: id<"claim">(sign.claim),
  })),
  parts: words.parts.map((part) => ({ ...part, part: id<"part">(part.part) })),
  gaps: words.gaps,
  notSearched: words.notSearched,
});
