import { isProblem, type Problem, type ProblemCode } from "#server/domain/problem.ts";

/** The answer, where a refusal would be a failure of the test. */
export function answered<Answer>(answer: Answer | Problem): Answer {
  if (isProblem(answer)) throw new Error(`Refused with ${answer.code}: ${answer.message}`);
  return answer;
}

/** The code of a refusal, where an answer would be a failure of the test. */
export function refusedWith(answer: unknown): ProblemCode {
  if (!isProblem(answer)) throw new Error(`Answered instead of refusing: ${JSON.stringify(answer)}`);
  return answer.code;
}
