import type { IncomingMessage, ServerResponse } from "node:http";
import type { ChronicleAnswer } from "../api/chronicle/answer-chronicle.ts";
import { answerError, answerJson, type Handler } from "./answer.ts";
import { compressAnswer } from "./compress-answer.ts";
import { isOwnOrigin } from "./is-own-request.ts";
import { readBody } from "./read-body.ts";

/** Below which the history of the house and its proof are asked for, by POST. */
export const CHRONICLE_PATH = "/chronicle/";
/** Bytes of a file that is sent: a signed report, or the changes of another house. */
const LARGEST = 20_000_000;

/** What there is to be asked. */
export interface Chronicle {
  readonly answer: (
    request: IncomingMessage,
    action: string,
    value: unknown,
  ) => Promise<ChronicleAnswer | undefined>;
  /** Proves the history; each object goes out as a line of JSON at once, the last one says what came of it. */
  readonly prove: (
    request: IncomingMessage,
    tell: (line: object) => void,
  ) => Promise<ChronicleAnswer | undefined>;
}

/** Serves it: JSON in and out, but for the proof, which is lines of JSON while it goes on. */
export const serveChronicle =
  (chronicle: Chronicle, { origins }: { readonly origins: readonly string[] }): Handler =>
  async (request, response) => {
    const { headers } = request;
    if (!isOwnOrigin(headers, origins))
      return answerError(
        response,
        403,
        "FOREIGN_ORIGIN",
        "Only Scribeline's own page may ask from a browser.",
      );
    if (request.method !== "POST") {
      response.setHeader("Allow", "POST");
      return answerError(response, 405, "METHOD_NOT_ALLOWED", "The chronicle is asked by POST.");
    }
    // A form of a foreign page cannot send this type.
    if (!/^application\/json\s*(?:;|$)/i.test(headers["content-type"] ?? ""))
      return answerError(response, 415, "BAD_REQUEST", "Send application/json.");
    const body = await readBody(request, LARGEST);
    if (typeof body === "string") {
      response.setHeader("Connection", "close");
      answerError(response, body === "too large" ? 413 : 400, "BAD_REQUEST", `The body is ${body}.`);
      request.resume();
      return;
    }
    const action = (request.url ?? "").split("?", 1)[0]?.slice(CHRONICLE_PATH.length) ?? "";
    const read = parse(body.text);
    if (read === undefined) return answerError(response, 400, "BAD_REQUEST", "The body is not JSON.");
    if (action === "prove") return prove(chronicle, request, response);
    const answered = await chronicle.answer(request, action, read.value);
    if (answered === undefined)
      return answerError(response, 404, "NOT_FOUND", "There is no such thing to do.");
    const packed = await compressAnswer(`${JSON.stringify(answered.body)}\n`, headers);
    response.writeHead(answered.status, {
      ...packed.headers,
      "Content-Type": "application/json; charset=utf-8",
      "Cache-Control": "no-store",
    });
    response.end(packed.body);
  };

async function prove(
  { prove: proveIt }: Chronicle,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const refused = await proveIt(request, (line) => {
    if (!response.headersSent)
      response.writeHead(200, {
        ...{ "Content-Type": "application/jsonl; charset=utf-8", "Cache-Control": "no-store" },
        "X-Accel-Buffering": "no",
      });
    response.write(`${JSON.stringify(line)}\n`);
  });
  if (refused === undefined) response.end();
  else answerJson(response, refused.status, refused.body);
}

function parse(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: text === "" ? {} : JSON.parse(text) };
  } catch {
    return undefined;
  }
}
