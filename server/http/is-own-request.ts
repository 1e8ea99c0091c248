import type { IncomingHttpHeaders } from "node:http";

const LOOPBACK = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i;

/** Tells whether the Host header names this machine as itself, so that no proxy with a name of its own stands between. */
export const isLoopbackHost = ({ host }: IncomingHttpHeaders): boolean =>
  host !== undefined && LOOPBACK.test(host);

/**
 * Tells whether the Host header names this machine as itself, or as one of the `origins` under which a proxy in front is reached. Any
 * other name was bent to the loopback address by somebody's name server (DNS rebinding).
 */
export const isOwnHost = (headers: IncomingHttpHeaders, origins: readonly string[]): boolean =>
  isLoopbackHost(headers) || originsOf(headers.host, origins).length > 0;

/** Tells whether browsers reach it by HTTPS under the name that the Host header has. */
export const isReachedByHttps = (headers: IncomingHttpHeaders, origins: readonly string[]): boolean =>
  originsOf(headers.host, origins).some((origin) => origin.startsWith("https:"));

/**
 * Tells whether a request comes from our own page or from no page at all. Any page in a browser can send to the loopback
 * address; one from elsewhere, another port of this machine included, is foreign.
 */
export function isOwnOrigin(headers: IncomingHttpHeaders, origins: readonly string[]): boolean {
  const { origin, host, "sec-fetch-site": site } = headers;
  if (site !== undefined && site !== "same-origin" && site !== "none") return false;
  if (origin === undefined) return true;
  const own = isLoopbackHost(headers) ? [`http://${host?.toLowerCase()}`] : originsOf(host, origins);
  return own.includes(origin.toLowerCase());
}

/** Those of the origins that a Host header can stand for: its name and port, the usual port told or not. */
const originsOf = (host: string | undefined, origins: readonly string[]): readonly string[] =>
  origins.filter((origin) => {
    const { host: own, hostname, protocol } = new URL(origin);
    const named = host?.toLowerCase();
    return named === own || named === `${hostname}:${protocol === "https:" ? 443 : 80}`;
  });
