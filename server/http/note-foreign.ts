import type { Handler } from "./answer.ts";
import { isOwnOrigin } from "./is-own-request.ts";

/** Tells of each request that a foreign page sends; the handler refuses it. */
export const noteForeign =
  (handler: Handler, origins: readonly string[], note: () => Promise<void>): Handler =>
  async (request, response) => {
    if (!isOwnOrigin(request.headers, origins)) await note();
    return handler(request, response);
  };
