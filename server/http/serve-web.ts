import { existsSync } from "node:fs";
import type { ServerResponse } from "node:http";
import { join } from "node:path";
import sirv from "sirv";
import { answerError, type Handler } from "./answer.ts";
import { linksAhead } from "./links-ahead.ts";

/** Names of built files carry a hash of their content: they never change. All else is asked for anew each time. */
const cacheControl = (path: string): string =>
  path.startsWith("/assets/") ? "public, max-age=31536000, immutable" : "no-cache";

/** Files stand at the top or in assets/. Pages can have a dot too: `/terms/tool.circular-saw`. */
export const isFile = (path: string): boolean => path.startsWith("/assets/") || /^\/[^/]*\.[^/]*$/.test(path);

/** Serves the built web client. A path that can name no file is a page of the client, which index.html opens. */
export function serveWeb(folder: string): Handler {
  if (!existsSync(join(folder, "index.html")))
    return (_, response) =>
      answerError(
        response,
        404,
        "NO_WEB_CLIENT",
        "The web client is not built; run npm run build, or npm start.",
      );
  const serve = (single: boolean) =>
    sirv(folder, {
      etag: true,
      // The build leaves each text file compressed beside itself; who does not take it gets the file.
      brotli: true,
      gzip: true,
      single,
      ignores: false,
      setHeaders: (response, path) => response.setHeader("Cache-Control", cacheControl(path)),
      onNoMatch: (_, response) => answerError(response, 404, "NOT_FOUND", "There is no such file."),
    });
  const [serveFile, servePage] = [serve(false), serve(true)];
  const linksOf = linksAhead(folder);
  return (request, response) => {
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.setHeader("Allow", "GET, HEAD");
      return answerError(response, 405, "METHOD_NOT_ALLOWED", "Pages and files can only be read.");
    }
    delete request.headers.range;
    endIfGone(response);
    const [path = "/"] = (request.url ?? "/").split("?", 1);
    if (isFile(path)) return serveFile(request, response);
    const links = linksOf(path);
    if (links) response.setHeader("Link", links);
    return servePage(request, response);
  };
}

/** A file that was taken away since the start, as by another build, ends its own answer and nothing else. */
function endIfGone(response: ServerResponse): void {
  response.once("pipe", (file) => file.once("error", () => response.destroy()));
}
