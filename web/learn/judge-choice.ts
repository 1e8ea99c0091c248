import { holdsEverywhere } from "#server/domain/holds-everywhere.ts";
import type { Report } from "#server/domain/report.ts";
import type { StripGroup, StripRow } from "../strips/strip-row.ts";
import type { Condition, Lesson, LessonChoice, Whole } from "./lesson.ts";

/** What a lesson is judged by: the report and its strips. */
export interface Judged {
  readonly report: Report;
  readonly groups: readonly StripGroup[];
}

/** What a piece with observations comes to, by the rules its headline is made by. */
export function wholeOf(report: Report): Whole {
  const isAgainst = (hardness: "physical" | "practice") =>
    report.ruleOuts.some(
      (one) => one.hardness === hardness && one.against === "attribution" && holdsEverywhere(one, report),
    );
  if (isAgainst("physical")) return "cannot-be";
  if (isAgainst("practice")) return "unusual";
  return report.findings.every((finding) => finding.label === "silent")
    ? "does-not-discriminate"
    : "nothing-against";
}

const findRow = ({ groups }: Judged, observation: string): StripRow | undefined =>
  groups.flatMap((group) => group.rows).find((row) => row.observation === observation);

function holds(condition: Condition, judged: Judged): boolean {
  const { report } = judged;
  if ("whole" in condition) return wholeOf(report) === condition.whole;
  if ("part" in condition)
    return report.parts.find(({ part }) => part === condition.part)?.speaks === condition.speaks;
  const row = findRow(judged, condition.observation);
  if ("voidedBy" in condition)
    return row?.voidIf.some((exception) => exception.condition === condition.voidedBy) ?? false;
  if (row?.mark !== condition.mark) return false;
  if (condition.disputed === undefined) return true;
  const finding = report.findings.find(({ id }) => id === row.id);
  return (finding?.openOnlyBy.length ?? 0) > 0 === condition.disputed;
}

/** Whether the engine says all that a choice says. */
export const isRight = (choice: Pick<LessonChoice, "holds">, judged: Judged): boolean =>
  choice.holds.every((condition) => holds(condition, judged));

/**
 * The choice that the engine agrees with: the one the lesson was written for, where it and no other is right. Undefined
 * where another one is, or none, or several: then the evidence is not what the lesson was written on.
 */
export function findAnswer(
  lesson: Pick<Lesson, "choices" | "answer">,
  judged: Judged,
): LessonChoice | undefined {
  const right = lesson.choices.filter((choice) => isRight(choice, judged));
  const [only] = right;
  return right.length === 1 && only?.id === lesson.answer ? only : undefined;
}
