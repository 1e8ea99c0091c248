import type { Examination } from "../domain/examination.ts";
import type { Problem } from "../domain/problem.ts";

/** Why nothing was done or answered; where somebody changed an examination meanwhile, how it stands now. */
export interface Refusal {
  readonly refused: readonly [Problem, ...Problem[]];
  readonly current?: Examination;
}

/** Tells a refusal from an answer. */
export function isRefusal(value: unknown): value is Refusal {
  return typeof value === "object" && value !== null && "refused" in value;
}

/** A refusal for all of the problems, if there are any. */
export function refusalFrom(problems: readonly Problem[]): Refusal | undefined {
  const [first, ...rest] = problems;
  return first === undefined ? undefined : { refused: [first, ...rest] };
}
