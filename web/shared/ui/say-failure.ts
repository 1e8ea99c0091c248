import { CombinedGraphQLErrors, ServerError } from "@apollo/client/errors";

export interface FailureInWords {
  readonly title: string;
  readonly what: string;
  readonly next: string;
}

/** Says in a person's words what went wrong with a page, and what to do. */
export function sayFailure(failure: unknown): FailureInWords {
  if (CombinedGraphQLErrors.is(failure))
    return {
      title: "The answer could not be given",
      what: `The server says: ${failure.errors.map((error) => error.message).join("; ")}`,
      next: "Nothing was changed. If trying again does not help, look at what the server printed.",
    };
  if (ServerError.is(failure))
    return {
      title: "The server refused",
      what: `It answered with status ${failure.statusCode}.`,
      next: "Nothing was changed. Look at what the server printed, then try again.",
    };
  if (failure instanceof TypeError && /fetch|network|load/i.test(failure.message))
    return {
      title: "The server cannot be reached",
      what: "This page got no answer. What is stored there is safe.",
      next: "See that Scribeline is still running, then try again.",
    };
  return {
    title: "This page failed",
    what: failure instanceof Error ? failure.message : String(failure),
    next: "The other pages still work. Nothing stored is lost.",
  };
}
