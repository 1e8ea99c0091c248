import type { IncomingHttpHeaders } from "node:http";
import { answerError, type Handler } from "./answer.ts";
import { isLoopbackHost } from "./is-own-request.ts";

/** Signs that somebody else's request was passed on. */
const PASSED_ON = [
  "forwarded",
  "x-forwarded-for",
  "x-forwarded-host",
  "x-forwarded-proto",
  "via",
  "x-real-ip",
];

/** Numbers about the running program, for programs of this machine alone: to others there is nothing here. */
export const serveMetrics =
  (print: (accept: string) => Promise<{ readonly type: string; readonly text: string }>): Handler =>
  async (request, response) => {
    if (!isOfThisMachine(request.headers) || !isLoopback(request.socket.remoteAddress))
      return answerError(response, 404, "NOT_FOUND", "There is no such page.");
    if (request.method !== "GET") {
      response.setHeader("Allow", "GET");
      return answerError(response, 405, "METHOD_NOT_ALLOWED", "Metrics can only be read.");
    }
    const { type, text } = await print(request.headers.accept ?? "");
    response.writeHead(200, { "Content-Type": type, "Cache-Control": "no-store" });
    response.end(text);
  };

const isLoopback = (address: string | undefined): boolean => /^(?:::ffff:)?127\.|^::1$/.test(address ?? "");

const isOfThisMachine = (headers: IncomingHttpHeaders): boolean =>
  isLoopbackHost(headers) &&
  headers.origin === undefined &&
  PASSED_ON.every((name) => headers[name] === undefined);
