import { describe, expect, it } from "vitest";
import { isSigned } from "#server/chain/find-broken-seal.ts";

const base64url = (hex: string): string => Buffer.from(hex, "hex").toString("base64url");

/** RFC 8032, 7.1: tests 1 and 2 (public key, message, signature). */
const VECTORS = [
  [
    "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
    "",
    "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
  ],
  [
    "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
    "r",
    "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
  ],
] as const;

describe("[I1] signatures are those of RFC 8032", () => {
  it.each(VECTORS)("key %s signed %j", (key, message, signature) => {
    expect(isSigned(message, base64url(key), base64url(signature))).toBe(true);
    expect(isSigned(`${message} `, base64url(key), base64url(signature))).toBe(false);
    const other = `${signature.slice(0, -2)}01`;
    expect(isSigned(message, base64url(key), base64url(other))).toBe(false);
    expect(isSigned(message, "no key", base64url(signature))).toBe(false);
  });
});
