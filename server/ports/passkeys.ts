import type { Passkey } from "../domain/people/passkey.ts";

/** What a key signs is bound to: the address of the house that the browser is at, and a text that serves once. */
export interface Asked {
  readonly origin: string;
  /** Base64url. */
  readonly challenge: string;
}

/** Asks for keys and checks what they sign (WebAuthn level 3). The options are for the browser, as they are. */
export interface Passkeys {
  readonly askToMake: (
    asked: Asked,
    whose: { readonly person: string; readonly name: string; readonly known: readonly string[] },
  ) => Promise<object>;
  readonly askToSign: (asked: Asked) => Promise<object>;
  /** The key that was made; undefined where anything of it does not hold. */
  readonly checkMade: (
    asked: Asked,
    response: unknown,
  ) => Promise<Pick<Passkey, "key" | "publicKey" | "counter"> | undefined>;
  /** The id of the key that an answer says it is of. */
  readonly keyOf: (response: unknown) => string | undefined;
  /** What the key counts now; undefined where the signature does not hold. */
  readonly checkSigned: (asked: Asked, response: unknown, kept: Passkey) => Promise<number | undefined>;
}
