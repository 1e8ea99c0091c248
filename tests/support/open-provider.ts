import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import Provider from "oidc-provider";

/** How this house is known to the provider. */
export const CLIENT = { client: "the-house", secret: "a secret of the house at the provider" };

/**
 * A provider of OpenID Connect (oidc-provider) on a free port, which asks no questions: whoever comes is `signedIn.subject`. `redirects`
 * are where it sends browsers back to.
 */
export async function openTestProvider(redirects: () => readonly string[]) {
  const signedIn = { subject: "subject-of-ann", means: ["pwd"] };
  const listener: { handle: ReturnType<Provider["callback"]> } = { handle: () => {} };
  const server = createServer((request, response) => listener.handle(request, response));
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const issuer = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const begin = () => {
    const provider = new Provider(issuer, {
      clients: [
        {
          ...{ client_id: CLIENT.client, client_secret: CLIENT.secret, redirect_uris: redirects() },
          token_endpoint_auth_method: "client_secret_post",
        },
      ],
      features: { devInteractions: { enabled: false } },
      findAccount: (_: unknown, id: string) => ({ accountId: id, claims: () => ({ sub: id }) }),
      interactions: { url: (_: unknown, { uid }: { uid: string }) => `/ask/${uid}` },
      claims: { openid: ["sub"], amr: null },
      cookies: { keys: ["a key of this test"] },
      pkce: { required: () => true },
    });
    const answer = provider.callback();
    listener.handle = async (request, response) => {
      if (request.url?.startsWith("/ask/") !== true) return answer(request, response);
      const { prompt, params } = await provider.interactionDetails(request, response);
      const accountId = signedIn.subject;
      if (prompt.name === "login")
        return provider.interactionFinished(request, response, {
          login: { accountId, amr: signedIn.means, remember: false },
        });
      const grant = new provider.Grant({ accountId, clientId: params["client_id"] ?? "" });
      grant.addOIDCScope("openid");
      return provider.interactionFinished(request, response, { consent: { grantId: await grant.save() } });
    };
  };
  return {
    ...{ issuer, signedIn, begin },
    stop: () =>
      new Promise<void>((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

/** Follows an address like a browser, with cookies, until it leaves the provider; where it is sent to then. */
export async function followRedirects(address: string): Promise<string> {
  const cookies = new Map<string, string>();
  const { origin } = new URL(address);
  let at = address;
  for (let step = 0; step < 12 && new URL(at).origin === origin; step++) {
    const Cookie = [...cookies].map(([name, value]) => `${name}=${value}`).join("; ");
    const answer = await fetch(at, { redirect: "manual", headers: { Cookie } });
    for (const set of answer.headers.getSetCookie()) {
      const [pair = ""] = set.split(";", 1);
      const [name = "", ...value] = pair.split("=");
      cookies.set(name, value.join("="));
    }
    const next = answer.headers.get("location");
    if (next === null)
      throw new Error(`The provider stays at ${at}: ${answer.status} ${await answer.text()}`);
    at = new URL(next, at).href;
  }
  return at;
}
