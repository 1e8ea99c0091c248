import type { IncomingHttpHeaders } from "node:http";
import { isLoopbackHost, isReachedByHttps } from "./is-own-request.ts";

/** What a request shows of who sends it: the session of its browser, or the token of a script. */
export interface Shown {
  readonly session?: string;
  readonly token?: string;
}

/** Over HTTPS only what was set over HTTPS for this very host; else a name of its own, so that neither passes for the other. */
const cookieName = (isSecure: boolean): string => (isSecure ? "__Host-scribeline" : "scribeline");

/** A secret has 43 letters; anything much longer is not looked at. */
const SECRET = /^[\w-]{20,80}$/;

/** Reads cookie and `Authorization: Bearer`; the first cookie of the name counts. */
export function readShown(headers: IncomingHttpHeaders, origins: readonly string[]): Shown {
  const name = cookieName(isReachedByHttps(headers, origins));
  const cookie = (headers.cookie ?? "")
    .split(";")
    .map((pair) => pair.trim())
    .find((pair) => pair.startsWith(`${name}=`))
    ?.slice(name.length + 1);
  const bearer = /^Bearer\b *(.*)$/i.exec(headers.authorization ?? "")?.[1];
  return {
    ...(cookie !== undefined && SECRET.test(cookie) ? { session: cookie } : {}),
    // One that cannot be right is shown all the same, so that no cookie passes in its place.
    ...(bearer === undefined ? {} : { token: SECRET.test(bearer) ? bearer : "none" }),
  };
}

/** Seconds that a browser keeps it; the server decides by itself how long it holds. */
const KEPT = 7 * 24 * 3600;

/** The header that gives a browser its session, or takes it away. No script of a page can read it. */
export function sessionCookie(
  headers: IncomingHttpHeaders,
  origins: readonly string[],
  session: string | null,
): string {
  const isSecure = isReachedByHttps(headers, origins);
  const age = session === null ? 0 : KEPT;
  return `${cookieName(isSecure)}=${session ?? ""}; Path=/; Max-Age=${age}; HttpOnly; SameSite=Lax${isSecure ? "; Secure" : ""}`;
}

/** The address that sends, if it is not a proxy of this machine. */
export function addressOf(
  socketAddress: string | undefined,
  headers: IncomingHttpHeaders,
): string | undefined {
  const isOfThisMachine = /^(?:::ffff:)?127\.|^::1$/.test(socketAddress ?? "");
  return isOfThisMachine && !isLoopbackHost(headers) ? undefined : socketAddress;
}
