import type { AuthenticationResponseJSON, RegistrationResponseJSON } from "@simplewebauthn/server";
import type { Asked, Passkeys } from "../ports/passkeys.ts";

/** Keys are tied to the name of the house's machine; whoever holds one has to prove it to the device, by finger, face or number. */
const hostOf = ({ origin }: Asked): string => new URL(origin).hostname;
const bytesOf = (text: string) => new Uint8Array(Buffer.from(text, "base64url"));
const expectedBy = (asked: Asked) => ({
  ...{ expectedChallenge: asked.challenge, expectedOrigin: asked.origin, expectedRPID: hostOf(asked) },
  requireUserVerification: true,
});

/** Loaded when it is first needed: it takes longer to load than all the rest of accounts. */
const load = () => import("@simplewebauthn/server");

/** Passkeys by SimpleWebAuthn. What it refuses it throws; here that is nothing. */
export const openPasskeys = (): Passkeys => ({
  askToMake: async (asked, { person, name, known }) =>
    (await load()).generateRegistrationOptions({
      ...{ rpName: "Scribeline", rpID: hostOf(asked), challenge: bytesOf(asked.challenge) },
      ...{ userID: new Uint8Array(Buffer.from(person)), userName: name, attestationType: "none" as const },
      excludeCredentials: known.map((id) => ({ id })),
      authenticatorSelection: { residentKey: "required", userVerification: "required" },
    }),
  askToSign: async (asked) =>
    (await load()).generateAuthenticationOptions({
      ...{ rpID: hostOf(asked), challenge: bytesOf(asked.challenge), userVerification: "required" as const },
    }),
  checkMade: async (asked, response) => {
    try {
      const { verified, registrationInfo } = await (await load()).verifyRegistrationResponse({
        ...{ ...expectedBy(asked), response: response as RegistrationResponseJSON },
      });
      if (!verified || registrationInfo === undefined) return undefined;
      const { id, publicKey, counter } = registrationInfo.credential;
      return { key: id, publicKey: Buffer.from(publicKey).toString("base64url"), counter };
    } catch {
      return undefined;
    }
  },
  keyOf: (response) => {
    const id = (response as { readonly id?: unknown } | null)?.id;
    return typeof id === "string" ? id : undefined;
  },
  checkSigned: async (asked, response, { key, publicKey, counter }) => {
    try {
      const { verified, authenticationInfo } = await (await load()).verifyAuthenticationResponse({
        ...{ ...expectedBy(asked), response: response as AuthenticationResponseJSON },
        credential: { id: key, publicKey: bytesOf(publicKey), counter },
      });
      return verified ? authenticationInfo.newCounter : undefined;
    } catch {
      return undefined;
    }
  },
});
