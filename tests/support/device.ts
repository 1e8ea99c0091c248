import { TOTP } from "otpauth";

/** A device that shows codes for a secret: `code(steps)` is that of so many times thirty seconds from now. */
export const openDevice = (secret: string) => ({
  code: (steps = 0): string => new TOTP({ secret }).generate({ timestamp: Date.now() + steps * 30_000 }),
});
