import { type Problem, problem } from "../../domain/problem.ts";

/** The fields of what was sent, each of the kind that is wanted; what is wrong is told all at once. */
export function readInput(value: unknown) {
  const fields = (typeof value === "object" && value !== null ? value : {}) as Readonly<
    Record<string, unknown>
  >;
  const problems: Problem[] = [];
  const wrong = <Otherwise>(name: string, what: string, otherwise: Otherwise): Otherwise => {
    problems.push(problem("WRONG_FORMAT", `${name} has to be ${what}.`, [name]));
    return otherwise;
  };
  const field = (name: string): unknown => (Object.hasOwn(fields, name) ? fields[name] : undefined);
  const text = (name: string): string => {
    const given = field(name);
    return typeof given === "string" && given.length <= 4000 && given.isWellFormed()
      ? given
      : wrong(name, "a text of at most 4,000 characters", "");
  };
  return {
    problems,
    has: (name: string): boolean => field(name) !== undefined && field(name) !== null,
    /** Whatever was sent. */
    value: field,
    text,
    optional: (name: string): string | undefined =>
      (field(name) ?? undefined) === undefined ? undefined : text(name),
    number: (name: string): number => {
      const given = field(name);
      return Number.isSafeInteger(given) ? (given as number) : wrong(name, "a whole number", 0);
    },
    oneOf: <Choice extends string>(name: string, choices: readonly [Choice, ...Choice[]]): Choice =>
      choices.find((choice) => choice === field(name)) ??
      wrong(name, `one of ${choices.join(", ")}`, choices[0]),
  };
}
export type Input = ReturnType<typeof readInput>;
