import type { AccountAnswer } from "../api/account/answer-account.ts";
import { answerError, answerJson, type Handler } from "./answer.ts";
import { addressOf, readShown, type Shown, sessionCookie } from "./credentials.ts";
import { isOwnOrigin } from "./is-own-request.ts";
import { readBody } from "./read-body.ts";

const LARGEST = 16_384;
/** Below which the addresses of accounts stand; all of them are asked by POST. */
export const ACCOUNT_PATH = "/account/";

/** Serves what has to do with accounts: JSON in and out, apart from the API of the graph, so that no secret passes through that. */
export const serveAccount =
  (
    answer: (
      action: string,
      value: unknown,
      from: { readonly shown: Shown; readonly address: string | undefined },
    ) => Promise<AccountAnswer | undefined>,
    { origins }: { readonly origins: readonly string[] },
  ): Handler =>
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
      return answerError(response, 405, "METHOD_NOT_ALLOWED", "Accounts are asked by POST.");
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
    const action = (request.url ?? "").split("?", 1)[0]?.slice(ACCOUNT_PATH.length) ?? "";
    const read = parse(body.text);
    if (read === undefined) return answerError(response, 400, "BAD_REQUEST", "The body is not JSON.");
    const answered = await answer(action, read.value, {
      shown: readShown(headers, origins),
      address: addressOf(request.socket.remoteAddress, headers),
    });
    if (answered === undefined)
      return answerError(response, 404, "NOT_FOUND", "There is no such thing to do.");
    if (answered.session !== undefined)
      response.setHeader("Set-Cookie", sessionCookie(headers, origins, answered.session));
    answerJson(response, answered.status, answered.body);
  };

function parse(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: text === "" ? {} : JSON.parse(text) };
  } catch {
    return undefined;
  }
}
