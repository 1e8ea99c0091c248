import type { Change } from "#server/domain/change.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openHttp, type Sent, send } from "./open-http.ts";
import { sawGraph } from "./saw-graph.ts";

export const PASSWORD = "four oak boards, one saw";
export const JSON_TYPE = { "Content-Type": "application/json" };

/** What somebody has who signed in: the header that a browser would send. */
export type Cookie = { readonly Cookie: string };

/** A server with accounts over a store in memory, and its first owner. */
export async function openHouse(
  settings: Parameters<typeof openHttp>[1] = {},
  store = openMemoryStore(),
  changes: readonly Change[] = [sawGraph],
) {
  const server = await openHttp(changes, { accounts: true, ...settings }, store);
  const act = (action: string, body: unknown = {}, headers: Record<string, string> = {}): Promise<Sent> =>
    send(`${server.url}account/${action}`, {
      ...{ method: "POST", headers: { ...JSON_TYPE, ...headers }, body: JSON.stringify(body) },
    });
  const accept = async (secret: string, name: string): Promise<Cookie> =>
    cookieOf(await act("accept-invitation", { secret, signInName: name, name, password: PASSWORD }));
  const firstSecret = String(server.logged.find(({ event }) => event === "first owner")?.["secret"]);
  const owner = await accept(firstSecret, "Ada");
  const invited = async (role: string): Promise<string> =>
    JSON.parse((await act("invite", { role }, owner)).text).secret;
  return {
    ...server,
    ...{ store, act, accept, owner, firstSecret, invited },
    /** Somebody new, with a role. */
    join: async (role: string, name: string) => accept(await invited(role), name),
    who: async (headers: Record<string, string>) => JSON.parse((await act("who", {}, headers)).text).caller,
  };
}

/** The cookie that an answer sets, as a browser sends it back. */
export function cookieOf({ headers, text }: Sent): Cookie {
  const [set] = headers["set-cookie"] ?? [];
  if (set === undefined) throw new Error(`No cookie was set: ${text}`);
  return { Cookie: set.split(";", 1)[0] ?? "" };
}

/** Codes of a refusal. */
export const refusals = ({ text }: Sent): readonly string[] =>
  (JSON.parse(text).refused ?? []).map(({ code }: { readonly code: string }) => code);
