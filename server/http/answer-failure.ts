import type { ServerResponse } from "node:http";
import { DeadlineExceeded } from "../api/limits/deadline-exceeded.ts";
import type { Log } from "../ports/log.ts";
import { StoreFailed } from "../ports/store-failed.ts";
import { answerError } from "./answer.ts";

/** Seconds after which what took too long, or could not be read, may be asked for again. */
const AGAIN_AFTER = "5";

/**
 * Answers a request whose handler threw: what took longer than it may, and a store that fails, with their codes (503), anything else
 * without its text (500). What is no deadline is logged.
 */
export function answerFailure(response: ServerResponse, failure: unknown, route: string, log: Log): void {
  const isLate = failure instanceof DeadlineExceeded;
  if (!isLate) log({ level: "error", event: "request failed", route, error: textOf(failure) });
  if (response.headersSent) response.destroy();
  else if (isLate) answerLater(response, "DEADLINE_EXCEEDED", failure.message);
  else if (failure instanceof StoreFailed)
    answerLater(response, failure.problem.code, failure.problem.message);
  else answerError(response, 500, "INTERNAL_SERVER_ERROR", "Something went wrong here; the log says what.");
}

function answerLater(response: ServerResponse, code: string, message: string): void {
  response.setHeader("Retry-After", AGAIN_AFTER);
  answerError(response, 503, code, message);
}

function textOf(failure: unknown): string {
  if (failure instanceof StoreFailed) return `${failure.problem.code}: ${String(failure.cause)}`;
  return String(failure instanceof Error ? failure.stack : failure);
}
