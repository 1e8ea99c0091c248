import { argon2, randomBytes, timingSafeEqual } from "node:crypto";
import { promisify } from "node:util";

/** Memory in KiB, passes and lanes of argon2id: the first choice of OWASP's Password Storage Cheat Sheet. */
export interface Cost {
  readonly m: number;
  readonly t: number;
  readonly p: number;
}
export const COST: Cost = { m: 19_456, t: 2, p: 1 };

const run = promisify(argon2);
const PHC = /^\$argon2id\$v=19\$m=(\d+),t=(\d+),p=(\d+)\$([A-Za-z0-9+/]+)\$([A-Za-z0-9+/]+)$/;
const unpadded = (bytes: Buffer): string => bytes.toString("base64").replaceAll("=", "");

const derive = (password: string, nonce: Buffer, { m, t, p }: Cost, tagLength: number): Promise<Buffer> =>
  run("argon2id", { message: password, nonce, memory: m, passes: t, parallelism: p, tagLength });

/** A hash of a password in the PHC string format, with a new salt. */
export async function hashWithArgon(password: string, cost = COST): Promise<string> {
  const salt = randomBytes(16);
  const tag = await derive(password, salt, cost, 32);
  return `$argon2id$v=19$m=${cost.m},t=${cost.t},p=${cost.p}$${unpadded(salt)}$${unpadded(tag)}`;
}

/** Compares a password with a hash; one that cannot be read is like no password. */
export async function checkWithArgon(
  password: string,
  kept: string,
): Promise<{ readonly isRight: boolean; readonly isOld: boolean }> {
  const found = PHC.exec(kept);
  if (found === null) return { isRight: false, isOld: true };
  const [, m, t, p, salt = "", tag = ""] = found;
  const cost = { m: Number(m), t: Number(t), p: Number(p) };
  const wanted = Buffer.from(tag, "base64");
  const made = await derive(password, Buffer.from(salt, "base64"), cost, wanted.length);
  return {
    isRight: timingSafeEqual(made, wanted),
    isOld: cost.m < COST.m || cost.t < COST.t || cost.p < COST.p,
  };
}
