import type { Card, CardWrite } from "../card.ts";

/** A key pair that a device or a key ring holds for somebody; its card has the public half. The card's id is the hash of the key's. */
export interface Passkey {
  readonly person: string;
  /** As its holder calls it. */
  readonly label: string;
  /** The key's id and its public half (COSE), base64url. */
  readonly key: string;
  readonly publicKey: string;
  /** How often it signed, as it says itself; many always say 0. */
  readonly counter: number;
  /** ISO 8601 times in UTC; `lastBegun` is when the newest sign-in by it began, and none of then or before is taken again. */
  readonly madeAt: string;
  readonly lastBegun: string;
}
export const PASSKEY_CARD = "passkey";

export const passkeyOf = ({ body }: Card): Passkey => body as Passkey;
export const passkeyWrite = (id: string, expectedVersion: number, passkey: Passkey): CardWrite => ({
  ...{ kind: PASSKEY_CARD, id, expectedVersion },
  next: { keys: { person: [passkey.person] }, body: passkey },
});
