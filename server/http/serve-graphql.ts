import type { IncomingHttpHeaders, IncomingMessage, ServerResponse } from "node:http";
import { type ApolloServer, HeaderMap } from "@apollo/server";
import type { Context } from "../api/context.ts";
import { answerError, type Handler } from "./answer.ts";
import { type Reached, reachAsked, SEQUENCE_HEADER } from "./asked-sequence.ts";
import { compressAnswer } from "./compress-answer.ts";
import { openDoor } from "./open-door.ts";
import { readBody } from "./read-body.ts";
import { refuseForeign } from "./refuse-foreign.ts";

/** Serves GraphQL over HTTP (the specification of that name) from an Apollo Server that has been started. */
export function serveGraphql(
  apollo: ApolloServer<Context>,
  createContext: (request: IncomingMessage, stop: AbortSignal) => Promise<Context>,
  { largestBody, origins }: { readonly largestBody: number; readonly origins: readonly string[] },
  reached: Reached,
): Handler {
  const inTurn = openDoor();
  return async (request, response) => {
    if (refuseForeign(request, response, origins)) return;
    const body = await readBody(request, largestBody);
    if (body === "too large") return answerTooLarge(request, response, largestBody);
    if (body === "not UTF-8") return answerError(response, 400, "BAD_REQUEST", "The body is not UTF-8 text.");
    await inTurn(request.socket);
    const parsed = parseBody(request.headers, body.text);
    if (parsed === undefined) return answerError(response, 400, "BAD_REQUEST", "The body is not JSON.");
    if (!(await reachAsked(request, response, reached))) return;
    const {
      status,
      headers,
      body: answer,
    } = await apollo.executeHTTPGraphQLRequest({
      httpGraphQLRequest: {
        method: (request.method ?? "GET").toUpperCase(),
        headers: headerMap(request.headers),
        search: new URL(request.url ?? "/", "http://localhost").search,
        body: parsed.value,
      },
      context: () => createContext(request, whenGone(response)),
    });
    for (const [name, value] of headers) response.setHeader(name, value);
    response.setHeader(SEQUENCE_HEADER, reached.sequence());
    response.statusCode = status ?? 200;
    if (answer.kind === "complete") return await endWith(response, answer.string, request.headers);
    for await (const chunk of answer.asyncIterator) response.write(chunk);
    response.end();
  };
}

async function endWith(response: ServerResponse, text: string, asked: IncomingHttpHeaders): Promise<void> {
  const { body, headers } = await compressAnswer(text, asked);
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  response.setHeader("Content-Length", body.length);
  response.end(body);
}

/** Fires when the client is gone before it has its answer. */
function whenGone(response: ServerResponse): AbortSignal {
  const gone = new AbortController();
  response.once("close", () => {
    if (!response.writableEnded) gone.abort();
  });
  return gone.signal;
}

/** The connection is closed: what is still on its way is not read. */
function answerTooLarge(request: IncomingMessage, response: ServerResponse, largest: number): void {
  response.setHeader("Connection", "close");
  answerError(
    response,
    413,
    "TOO_LARGE",
    `The request is larger than ${largest} bytes; send less at a time.`,
  );
  request.resume();
}

/** The value of a JSON body; for another media type there is none, and Apollo Server says what it wants. */
function parseBody(headers: IncomingHttpHeaders, text: string): { readonly value: unknown } | undefined {
  if (!/^application\/json\s*(?:;|$)/i.test(headers["content-type"] ?? "")) return { value: undefined };
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

function headerMap(headers: IncomingHttpHeaders): HeaderMap {
  const map = new HeaderMap();
  for (const [name, value] of Object.entries(headers)) {
    if (value !== undefined) map.set(name, Array.isArray(value) ? value.join(", ") : value);
  }
  return map;
}
