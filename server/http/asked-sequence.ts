import type { IncomingMessage, ServerResponse } from "node:http";
import { answerError } from "./answer.ts";

/** Tells the number of the newest write that an answer knows of; sent along, that an answer is to know of that write. */
export const SEQUENCE_HEADER = "Scribeline-Sequence";

/** How far this process has come. */
export interface Reached {
  readonly sequence: () => number;
  /** Waits until it has come so far; false if that takes too long. */
  readonly reach: (sequence: number) => Promise<boolean>;
}

/** Waits for the write that a request names. Where that is none, or is not reached in time, it answers and gives false. */
export async function reachAsked(
  request: IncomingMessage,
  response: ServerResponse,
  reached: Reached,
): Promise<boolean> {
  const asked = request.headers[SEQUENCE_HEADER.toLowerCase()];
  if (asked === undefined) return true;
  if (typeof asked !== "string" || !/^\d{1,15}$/.test(asked)) {
    answerError(
      response,
      400,
      "BAD_REQUEST",
      `${SEQUENCE_HEADER} is the number of a write: send back the one that an answer had, or none.`,
    );
    return false;
  }
  if (await reached.reach(Number(asked))) return true;
  response.setHeader("Retry-After", "1");
  response.setHeader(SEQUENCE_HEADER, reached.sequence());
  answerError(
    response,
    503,
    "NOT_REACHED_YET",
    `This server knows of the writes up to ${reached.sequence()}, and ${asked} was asked for. Ask again in a second; or without ${SEQUENCE_HEADER}, for what it knows now.`,
  );
  return false;
}
