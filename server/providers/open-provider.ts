import {
  allowInsecureRequests,
  authorizationCodeGrant,
  buildAuthorizationUrl,
  ClientSecretPost,
  type Configuration,
  calculatePKCECodeChallenge,
  clockTolerance,
  discovery,
  enableNonRepudiationChecks,
} from "openid-client";
import { type Problem, problem } from "../domain/problem.ts";
import type { Identity, Provider, Way } from "../ports/provider.ts";

/** Seconds that the provider may take to answer, and that its clock may be off. */
const PATIENCE = 10;
const TOLERANCE = 30;

export interface ProviderSettings {
  readonly issuer: string;
  readonly client: string;
  readonly secret: string;
  readonly name: string;
}

const unreachable = problem(
  "TRY_LATER",
  "The other provider cannot be reached. Try again in a minute, or sign in with your password.",
);
const refused = problem(
  "SIGN_IN_REFUSED",
  "What the other provider sent does not hold, or not any more. Begin anew on the page to sign in.",
);

/** A provider of OpenID Connect, by openid-client; what it publishes is read when it is first needed. */
export function openProvider({ issuer, client, secret, name }: ProviderSettings): Provider {
  let known: Promise<Configuration> | undefined;
  const configuration = async (): Promise<Configuration | Problem> => {
    const metadata = { client_secret: secret, [clockTolerance]: TOLERANCE };
    known ??= discovery(new URL(issuer), client, metadata, ClientSecretPost(secret), {
      timeout: PATIENCE,
      // Signatures are checked though the answer came straight from the provider. The settings take plain HTTP on this machine alone.
      execute: [enableNonRepudiationChecks, ...(issuer.startsWith("http:") ? [allowInsecureRequests] : [])],
    });
    try {
      return await known;
    } catch {
      known = undefined;
      return unreachable;
    }
  };
  return {
    name,
    begin: async ({ redirect, state, nonce, verifier }) => {
      const read = await configuration();
      if ("problem" in read) return read;
      return buildAuthorizationUrl(read, {
        ...{ redirect_uri: redirect, scope: "openid", state, nonce },
        code_challenge: await calculatePKCECodeChallenge(verifier),
        code_challenge_method: "S256",
      }).href;
    },
    finish: async (way, cameBackTo) => {
      const read = await configuration();
      if ("problem" in read) return read;
      return trade(read, way, cameBackTo);
    },
  };
}

async function trade(
  configuration: Configuration,
  { state, nonce, verifier, redirect }: Way,
  cameBackTo: string,
): Promise<Identity | Problem> {
  if (!URL.canParse(cameBackTo)) return refused;
  const { search } = new URL(cameBackTo);
  try {
    const tokens = await authorizationCodeGrant(configuration, new URL(search, redirect), {
      ...{ expectedState: state, expectedNonce: nonce, pkceCodeVerifier: verifier, idTokenExpected: true },
    });
    const claims = tokens.claims();
    if (claims === undefined) return refused;
    const { iss, sub, amr } = claims;
    const means = Array.isArray(amr) ? amr : [];
    return { issuer: iss, subject: sub, isStrong: means.includes("mfa") };
  } catch {
    return refused;
  }
}
