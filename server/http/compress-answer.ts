import type { IncomingHttpHeaders } from "node:http";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

/** Bytes from which on it pays: a shorter answer goes out in one packet anyway. */
const WORTH_IT = 1024;
/** Quick rather than small: about a millisecond for 100 KB of JSON, an eighth of which is left. */
const BROTLI_QUALITY = 4;

const asGzip = promisify(gzip);
const asBrotli = promisify(brotliCompress);

export type Encoding = "br" | "gzip";

/** The first of these that a request takes by its Accept-Encoding; a coding named with `q=0` is one it does not take. */
export function takenEncoding(headers: IncomingHttpHeaders): Encoding | undefined {
  const asked = String(headers["accept-encoding"] ?? "").toLowerCase();
  const taken = asked
    .split(",")
    .map((each) => each.split(";").map((word) => word.trim()))
    .filter(([, weight = "q=1"]) => !/^q=0(?:\.0*)?$/.test(weight))
    .map(([coding]) => coding);
  return (["br", "gzip"] as const).find((coding) => taken.includes(coding));
}

/**
 * An answer as it goes out, with the headers that say so. A length that tells of the content (BREACH) gives nothing away
 * here: answers hold no secret, no token and nothing of a person's that a stranger's text could stand beside, and only our
 * own page may ask (`isOwnRequest`).
 */
export async function compressAnswer(
  text: string,
  headers: IncomingHttpHeaders,
): Promise<{ readonly body: Buffer; readonly headers: Readonly<Record<string, string>> }> {
  const body = Buffer.from(text);
  const encoding = body.length < WORTH_IT ? undefined : takenEncoding(headers);
  const vary = { Vary: "Accept-Encoding" };
  if (encoding === undefined) return { body, headers: vary };
  return {
    body: encoding === "br" ? await brotli(body) : await asGzip(body),
    headers: { ...vary, "Content-Encoding": encoding },
  };
}

const brotli = (body: Buffer): Promise<Buffer> =>
  asBrotli(body, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY,
      [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
      [constants.BROTLI_PARAM_SIZE_HINT]: body.length,
    },
  });
