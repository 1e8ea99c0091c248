import { createServer, type IncomingMessage, type Server } from "node:http";
import type { Log } from "../ports/log.ts";
import { answerError, answerJson, type Handler } from "./answer.ts";
import { answerFailure } from "./answer-failure.ts";
import { isOwnHost } from "./is-own-request.ts";
import { type Check, readReadiness } from "./readiness.ts";
import { setSecurityHeaders } from "./security-headers.ts";
import { ACCOUNT_PATH } from "./serve-account.ts";
import { CHRONICLE_PATH } from "./serve-chronicle.ts";
import { FEED_PATH } from "./serve-feed.ts";
import { isFile } from "./serve-web.ts";

/** What answers which paths. */
export interface Handlers {
  readonly graphql: Handler;
  readonly web: Handler;
  readonly metrics: Handler;
  readonly account: Handler;
  readonly chronicle: Handler;
  readonly feed: Handler;
  /** Told of each request that begins; what it gives is told the status at the end, 0 if the asker was gone first. */
  readonly begin: (kind: "api" | "page" | "file" | "health" | "metrics") => (status: number) => void;
  /** What has to be so before requests are sent here, by name. */
  readonly checks: Readonly<Record<string, Check>>;
  readonly isStopping: () => boolean;
}

/** An HTTP server over the handlers, not listening yet. What a handler throws is answered as `answerFailure` says. */
export function createHttpServer(
  handlers: Handlers,
  log: Log,
  { deadline, origins }: { readonly deadline: number; readonly origins: readonly string[] },
): Server {
  const server = createServer({ shouldUpgradeCallback: asksToBeLive }, async (request, response) => {
    setSecurityHeaders(response);
    if (handlers.isStopping()) response.setHeader("Connection", "close");
    const path = (request.url ?? "/").split("?", 1)[0] ?? "/";
    const ended = handlers.begin(kindOf(path));
    response.once("close", () => ended(response.writableFinished ? response.statusCode : 0));
    try {
      if (!isOwnHost(request.headers, origins))
        answerError(
          response,
          421,
          "FOREIGN_HOST",
          `This server answers as ${["127.0.0.1", "localhost", ...origins].join(", ")} only.`,
        );
      else if (path === "/graphql") await handlers.graphql(request, response);
      else if (path.startsWith(ACCOUNT_PATH)) await handlers.account(request, response);
      else if (path.startsWith(CHRONICLE_PATH)) await handlers.chronicle(request, response);
      else if (path.startsWith(FEED_PATH)) await handlers.feed(request, response);
      else if (path === "/metrics") await handlers.metrics(request, response);
      else if (path === "/healthz") answerJson(response, 200, { alive: true });
      else if (path === "/readyz") {
        const readiness = await readReadiness(handlers.checks);
        answerJson(response, readiness.ready ? 200 : 503, readiness);
      } else await handlers.web(request, response);
    } catch (error) {
      if (request.destroyed && !request.complete) return;
      answerFailure(response, error, `/${path.split("/", 2)[1] ?? ""}`, log);
    }
  });
  // A client that dawdles over its request is cut off; an idle connection stays longer than a proxy keeps it.
  server.requestTimeout = Math.max(deadline, 1000);
  server.headersTimeout = Math.max(deadline, 1000);
  server.keepAliveTimeout = 65_000;
  return server;
}

function kindOf(path: string): Parameters<Handlers["begin"]>[0] {
  if (path === "/graphql" || path.startsWith(ACCOUNT_PATH) || path.startsWith(CHRONICLE_PATH)) return "api";
  if (path === "/metrics") return "metrics";
  if (path === "/healthz" || path === "/readyz") return "health";
  return isFile(path) ? "file" : "page";
}

/** Any other wish to change the protocol is not heard, and what was asked is answered. */
const asksToBeLive = ({ url, headers }: IncomingMessage): boolean =>
  url?.split("?", 1)[0] === "/graphql" && headers.upgrade?.toLowerCase() === "websocket";
