import { createHmac } from "node:crypto";
import { fromBase32 } from "./base32.ts";

/** The code that a device shows in a step: HOTP (RFC 4226, 5.3) of the number of the step (RFC 6238, 4.2), by HMAC-SHA-1. */
export function oneTimeCode(secret: string, step: number, digits = 6): string {
  const counter = Buffer.alloc(8);
  counter.writeBigUInt64BE(BigInt(step));
  const mac = createHmac("sha1", fromBase32(secret)).update(counter).digest();
  const at = (mac.at(-1) ?? 0) & 0xf;
  const number = mac.readUInt32BE(at) & 0x7fff_ffff;
  return String(number % 10 ** digits).padStart(digits, "0");
}
