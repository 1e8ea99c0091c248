import type { IncomingHttpHeaders } from "node:http";

const LOOPBACK = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i;

/**
 * Tells whether the Host header names this machine as itself. Any other name was bent to the loopback address by
 * somebody's name server (DNS rebinding).
 */
export const isOwnHost = ({ host }: IncomingHttpHeaders): boolean =>
  host !== undefined && LOOPBACK.test(host);

/**
 * Tells whether a request comes from our own page or from no page at all. Any page in a browser can send to the loopback
 * address; one from elsewhere, another port of this machine included, is foreign.
 */
export function isOwnOrigin(headers: IncomingHttpHeaders): boolean {
  const { origin, host, "sec-fetch-site": site } = headers;
  if (site !== undefined && site !== "same-origin" && site !== "none") return false;
  return origin === undefined || origin.toLowerCase() === `http://${host?.toLowerCase()}`;
}
