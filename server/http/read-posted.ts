import type { IncomingMessage, ServerResponse } from "node:http";
import { answerError } from "./answer.ts";
import { readBody } from "./read-body.ts";
import { refuseForeign } from "./refuse-foreign.ts";

/** What somebody asks to be done, and with what. */
export interface Posted {
  readonly action: string;
  readonly value: unknown;
}

/**
 * Reads what our own page or a script asks by POST with JSON at an address below `path`, `largest` bytes at most.
 * Anything else is answered here with why not, and `undefined` is left.
 */
export async function readPosted(
  request: IncomingMessage,
  response: ServerResponse,
  {
    path,
    largest,
    origins,
    what,
  }: {
    readonly path: string;
    readonly largest: number;
    readonly origins: readonly string[];
    readonly what: string;
  },
): Promise<Posted | undefined> {
  const refuse = (...why: readonly [status: number, code: string, message: string]): undefined => {
    answerError(response, ...why);
  };
  const { headers } = request;
  if (refuseForeign(request, response, origins)) return undefined;
  if (request.method !== "POST") {
    response.setHeader("Allow", "POST");
    return refuse(405, "METHOD_NOT_ALLOWED", `${what} by POST.`);
  }
  // A form of a foreign page cannot send this type.
  if (!/^application\/json\s*(?:;|$)/i.test(headers["content-type"] ?? ""))
    return refuse(415, "BAD_REQUEST", "Send application/json.");
  const body = await readBody(request, largest);
  if (typeof body === "string") {
    response.setHeader("Connection", "close");
    refuse(body === "too large" ? 413 : 400, "BAD_REQUEST", `The body is ${body}.`);
    request.resume();
    return undefined;
  }
  const action = (request.url ?? "").split("?", 1)[0]?.slice(path.length) ?? "";
  try {
    return { action, value: body.text === "" ? {} : JSON.parse(body.text) };
  } catch {
    return refuse(400, "BAD_REQUEST", "The body is not JSON.");
  }
}
