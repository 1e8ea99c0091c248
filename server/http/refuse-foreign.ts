import type { IncomingMessage, ServerResponse } from "node:http";
import { answerError } from "./answer.ts";
import { isOwnOrigin } from "./is-own-request.ts";

/** Answers a request that a page of another site makes in a browser with why not, and says whether it did. */
export function refuseForeign(
  { headers }: IncomingMessage,
  response: ServerResponse,
  origins: readonly string[],
): boolean {
  if (isOwnOrigin(headers, origins)) return false;
  answerError(response, 403, "FOREIGN_ORIGIN", "Only Scribeline's own page may ask from a browser.");
  return true;
}
