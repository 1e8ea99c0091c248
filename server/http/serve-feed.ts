import type { IncomingMessage } from "node:http";
import { answerError, type Handler } from "./answer.ts";
import { compressAnswer } from "./compress-answer.ts";
import { isReachedByHttps } from "./is-own-request.ts";
import { refuseForeign } from "./refuse-foreign.ts";

/** Below which the feeds stand, each as `all.atom` or `<id of a region>.atom`. */
export const FEED_PATH = "/feeds/";

/** What a request for a feed is answered with. */
export type FeedAnswer =
  | { readonly text: string; readonly hash: string; readonly updated: string }
  | { readonly refused: readonly [{ readonly code: string; readonly message: string }, ...unknown[]] };

const STATUS: Readonly<Record<string, number>> = { NOT_SIGNED_IN: 401, NOT_ALLOWED: 403, TRY_LATER: 503 };

/** Serves the feeds as Atom, with what lets a reader ask only for what is new (RFC 9110, 13). */
export const serveFeed =
  (
    read: (
      request: IncomingMessage,
      asked: { readonly region: string | undefined; readonly page: number | undefined },
      origin: string,
    ) => Promise<FeedAnswer>,
    { origins }: { readonly origins: readonly string[] },
  ): Handler =>
  async (request, response) => {
    const { headers, method } = request;
    if (refuseForeign(request, response, origins)) return;
    if (method !== "GET" && method !== "HEAD") {
      response.setHeader("Allow", "GET, HEAD");
      return answerError(response, 405, "METHOD_NOT_ALLOWED", "Feeds can only be read.");
    }
    const { pathname, searchParams } = new URL(request.url ?? "/", "http://localhost");
    const name = /^\/feeds\/([\w.-]{1,120})\.atom$/.exec(pathname)?.[1];
    const page = searchParams.get("page");
    if (name === undefined || (page !== null && !/^\d{1,9}$/.test(page)))
      return answerError(response, 404, "NOT_FOUND", "There is no such feed.");
    const asked = {
      region: name === "all" ? undefined : name,
      page: page === null ? undefined : Number(page),
    };
    const scheme = isReachedByHttps(headers, origins) ? "https" : "http";
    const answer = await read(request, asked, `${scheme}://${headers.host}`);
    if ("refused" in answer) {
      const [{ code, message }] = answer.refused;
      if (code === "NOT_SIGNED_IN") response.setHeader("WWW-Authenticate", 'Bearer realm="Scribeline"');
      if (code === "TRY_LATER") response.setHeader("Retry-After", "1");
      const status = STATUS[code] ?? 404;
      return answerError(response, status, code, message);
    }
    const tag = `W/"${answer.hash.slice(0, 32)}"`;
    response.setHeader("ETag", tag);
    response.setHeader("Last-Modified", new Date(answer.updated).toUTCString());
    response.setHeader("Cache-Control", "private, no-cache");
    response.setHeader("Vary", "Accept-Encoding, Authorization, Cookie");
    if (isKnown(headers, tag, answer.updated)) {
      response.writeHead(304);
      response.end();
      return;
    }
    const packed = await compressAnswer(answer.text, headers);
    response.writeHead(200, {
      ...packed.headers,
      Vary: "Accept-Encoding, Authorization, Cookie",
      "Content-Type": "application/atom+xml; charset=utf-8",
      "Content-Length": packed.body.length,
    });
    response.end(method === "HEAD" ? undefined : packed.body);
  };

/** Whether whoever asks has it already: by its tag where one is sent, else by the second of its last change. */
function isKnown(headers: IncomingMessage["headers"], tag: string, updated: string): boolean {
  const tags = headers["if-none-match"];
  const bare = (text: string) => text.trim().replace(/^W\//, "");
  if (tags !== undefined) return tags.trim() === "*" || tags.split(",").map(bare).includes(bare(tag));
  const since = Date.parse(headers["if-modified-since"] ?? "");
  return Math.floor(Date.parse(updated) / 1000) <= Math.floor(since / 1000);
}
