import type { Problem } from "../domain/problem.ts";

/** Thrown by a read of a store whose medium fails: what went wrong, as a problem, with what the medium said as cause. */
export class StoreFailed extends Error {
  readonly problem: Problem;
  constructor(problem: Problem, cause: unknown) {
    super(problem.message, { cause });
    this.name = "StoreFailed";
    this.problem = problem;
  }
}
