import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import { limitRuns } from "../ports/limit-runs.ts";
import type { Secrets } from "../ports/secrets.ts";
import { checkWithArgon, hashWithArgon } from "./argon-hash.ts";
import { toBase32 } from "./base32.ts";
import common from "./common-passwords.json" with { type: "json" };
import { oneTimeCode } from "./one-time-code.ts";
import { seal, unseal } from "./seal.ts";

/** Hashes of passwords that run at once, and that wait: nobody takes the machine by signing in. */
const AT_ONCE = 2;
const WAITING = 20;
/** Bytes that are kept of the hash of each common password. */
const PREFIX = 5;

const sha256 = (text: string): Buffer => createHash("sha256").update(text).digest();

/** Secrets from the random numbers of the system, passwords by argon2id. */
export function openSecrets(): Secrets {
  const inTurn = limitRuns(AT_ONCE, WAITING);
  const bytes = Buffer.from(common.bytes, "base64");
  const prefixes = new Set(
    Array.from({ length: bytes.length / PREFIX }, (_, i) =>
      bytes.subarray(i * PREFIX, (i + 1) * PREFIX).toString("hex"),
    ),
  );
  const newSecret = () => randomBytes(32).toString("base64url");
  const nobodys = hashWithArgon(newSecret());
  return {
    newSecret,
    hash: (secret) => sha256(secret).toString("hex"),
    hashPassword: (password) => inTurn(() => hashWithArgon(password)),
    checkPassword: (password, kept) =>
      inTurn(async () => {
        const checked = await checkWithArgon(password, kept ?? (await nobodys));
        return kept === undefined ? { isRight: false, isOld: false } : checked;
      }),
    isCommonPassword: (text) => prefixes.has(sha256(text).subarray(0, PREFIX).toString("hex")),
    ...{ seal, unseal },
    newFactorSecret: () => toBase32(randomBytes(20)),
    findStep: (secret, code, steps) =>
      steps.find((step) => timingSafeEqual(sha256(oneTimeCode(secret, step)), sha256(code))),
    newRecoveryCode: () => toBase32(randomBytes(15)).toLowerCase(),
  };
}
