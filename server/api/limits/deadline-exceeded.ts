import { GraphQLError } from "graphql";

/** Thrown where a request took longer than it may. */
export class DeadlineExceeded extends GraphQLError {
  constructor(deadline: number) {
    super(`This took longer than ${deadline} ms and was given up; ask for less at a time.`, {
      extensions: { code: "DEADLINE_EXCEEDED" },
    });
  }
}
