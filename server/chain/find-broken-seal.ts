import { createHash, createPublicKey, verify } from "node:crypto";
import { handoverText, type Seal, sealedText } from "../domain/proof/seal.ts";

/** The name of a house: the first 20 hex digits of the SHA-256 of its first public key. */
export const houseOf = (publicKey: string): string =>
  `house.${createHash("sha256").update(Buffer.from(publicKey, "base64url")).digest("hex").slice(0, 20)}`;

/** Tells whether a public key (Ed25519, base64url) signed a text; a key that is none signed nothing. */
export function isSigned(text: string, publicKey: string, signature: string): boolean {
  try {
    const key = createPublicKey({ format: "jwk", key: { kty: "OKP", crv: "Ed25519", x: publicKey } });
    return verify(null, Buffer.from(text, "utf8"), key, Buffer.from(signature, "base64url"));
  } catch {
    return false;
  }
}

/** What is wrong with a seal, as a part of a sentence: its house, the chain of its keys, or the signature. */
export function findBrokenSeal(sealed: Seal): string | undefined {
  const { house, keys, signature } = sealed;
  const [first] = keys;
  if (first === undefined || houseOf(first.publicKey) !== house)
    return "the name of the house does not follow from its first key";
  for (const [at, key] of keys.entries()) {
    const before = keys[at - 1];
    if (before === undefined) continue;
    if (!isSigned(handoverText(house, key), before.publicKey, key.handover ?? ""))
      return `key ${at + 1} was not vouched for by the key before it`;
  }
  return isSigned(sealedText(sealed), keys.at(-1)?.publicKey ?? "", signature)
    ? undefined
    : "it was changed after it was signed, or signed by somebody else";
}
