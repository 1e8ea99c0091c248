import type { IncomingMessage, ServerResponse } from "node:http";
import type { ChronicleAnswer } from "../api/chronicle/answer-chronicle.ts";
import { answerError, answerJson, type Handler } from "./answer.ts";
import { compressAnswer } from "./compress-answer.ts";
import { readPosted } from "./read-posted.ts";

/** Below which the history of the house and its proof are asked for, by POST. */
export const CHRONICLE_PATH = "/chronicle/";
/** Bytes of a file that is sent: a signed report, or the changes of another house; of anything else. */
const LARGEST_FILE = 20_000_000;
const LARGEST = 256_000;
const WITH_FILE: readonly string[] = ["take", "examine-again", "check-checkpoint"].map(
  (action) => CHRONICLE_PATH + action,
);

/** What there is to be asked, for whoever asks. */
export interface Chronicle {
  /** Why they may ask for nothing of it. */
  readonly refused: ChronicleAnswer | undefined;
  readonly answer: (action: string, value: unknown) => Promise<ChronicleAnswer | undefined>;
  /** Proves the history; each object goes out as a line of JSON at once, the last one says what came of it. */
  readonly prove: (tell: (line: object) => void) => Promise<ChronicleAnswer | undefined>;
}

/** Serves it: JSON in and out, but for the proof, which is lines of JSON while it goes on. */
export const serveChronicle =
  (
    open: (request: IncomingMessage) => Promise<Chronicle>,
    { origins }: { readonly origins: readonly string[] },
  ): Handler =>
  async (request, response) => {
    const isFile = WITH_FILE.includes((request.url ?? "").split("?", 1)[0] ?? "");
    // Much is read of nobody who may not ask at all.
    const opened = isFile ? await open(request) : undefined;
    if (opened?.refused !== undefined) {
      response.setHeader("Connection", "close");
      answerJson(response, opened.refused.status, opened.refused.body);
      request.resume();
      return;
    }
    const largest = isFile ? LARGEST_FILE : LARGEST;
    const asked = { path: CHRONICLE_PATH, largest, origins, what: "The chronicle is asked" };
    const posted = await readPosted(request, response, asked);
    if (posted === undefined) return;
    const { action, value } = posted;
    const chronicle = opened ?? (await open(request));
    if (action === "prove") return prove(chronicle, response);
    const answered = await chronicle.answer(action, value);
    if (answered === undefined)
      return answerError(response, 404, "NOT_FOUND", "There is no such thing to do.");
    if (answered.retryAfter !== undefined) response.setHeader("Retry-After", `${answered.retryAfter}`);
    const packed = await compressAnswer(`${JSON.stringify(answered.body)}\n`, request.headers);
    response.writeHead(answered.status, {
      ...packed.headers,
      "Content-Type": "application/json; charset=utf-8",
      "Cache-Control": "no-store",
    });
    response.end(packed.body);
  };

async function prove({ prove: proveIt }: Chronicle, response: ServerResponse): Promise<void> {
  const refused = await proveIt((line) => {
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
