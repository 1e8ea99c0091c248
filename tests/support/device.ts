import { TOTP } from "otpauth";

/** A device that shows codes for a secret: `code(steps)` is that of so many times thirty seconds from now. */
export const openDevice = (secret: string) => ({
  code: (steps = 0, now = Date.now()): string =>
    new TOTP({ secret }).generate({ timestamp: now + steps * 30_000 }),
});
