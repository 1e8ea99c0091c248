import type { AccountAnswer } from "../api/account/answer-account.ts";
import { answerError, answerJson, type Handler } from "./answer.ts";
import { addressOf, readShown, type Shown, sessionCookie } from "./credentials.ts";
import { readPosted } from "./read-posted.ts";

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
    const asked = { path: ACCOUNT_PATH, largest: LARGEST, origins, what: "Accounts are asked" };
    const posted = await readPosted(request, response, asked);
    if (posted === undefined) return;
    const answered = await answer(posted.action, posted.value, {
      shown: readShown(headers, origins),
      address: addressOf(request.socket.remoteAddress, headers),
    });
    if (answered === undefined)
      return answerError(response, 404, "NOT_FOUND", "There is no such thing to do.");
    if (answered.session !== undefined)
      response.setHeader("Set-Cookie", sessionCookie(headers, origins, answered.session));
    answerJson(response, answered.status, answered.body);
  };
