import { createCipheriv, createDecipheriv, createHash, randomBytes } from "node:crypto";

const NONCE = 12;
const TAG = 16;
const keyOf = (key: string): Buffer => createHash("sha256").update(`seal ${key}`).digest();

/** Locks a text by AES-256-GCM under a key of any length: nobody reads or changes it without the key. */
export function seal(text: string, key: string): string {
  const nonce = randomBytes(NONCE);
  const cipher = createCipheriv("aes-256-gcm", keyOf(key), nonce);
  const locked = Buffer.concat([cipher.update(text, "utf8"), cipher.final()]);
  return Buffer.concat([nonce, cipher.getAuthTag(), locked]).toString("base64url");
}

/** The text again; undefined if it was not sealed with this key, or was changed. */
export function unseal(sealed: string, key: string): string | undefined {
  const bytes = Buffer.from(sealed, "base64url");
  if (bytes.length < NONCE + TAG) return undefined;
  const decipher = createDecipheriv("aes-256-gcm", keyOf(key), bytes.subarray(0, NONCE), {
    authTagLength: TAG,
  });
  decipher.setAuthTag(bytes.subarray(NONCE, NONCE + TAG));
  try {
    return Buffer.concat([decipher.update(bytes.subarray(NONCE + TAG)), decipher.final()]).toString("utf8");
  } catch {
    return undefined;
  }
}
