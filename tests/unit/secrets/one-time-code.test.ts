import * as fc from "fast-check";
import { type TOTP, URI } from "otpauth";
import { describe, expect, it } from "vitest";
import { factorAddress, stepsAround } from "#server/domain/people/factor.ts";
import { fromBase32, toBase32 } from "#server/secrets/base32.ts";
import { oneTimeCode } from "#server/secrets/one-time-code.ts";
import { openSecrets } from "#server/secrets/open-secrets.ts";

/** RFC 6238, appendix B, the rows of SHA-1: seconds since 1970, and the code of eight digits for the secret "12345678901234567890". */
const OF_RFC_6238 = [
  [59, "94287082"],
  [1_111_111_109, "07081804"],
  [1_111_111_111, "14050471"],
  [1_234_567_890, "89005924"],
  [2_000_000_000, "69279037"],
  [20_000_000_000, "65353130"],
] as const;
/** RFC 4226, appendix D: the codes of the counters 0 to 9 for the same secret. */
const OF_RFC_4226 = "755224 287082 359152 969429 338314 254676 287922 162583 399871 520489".split(" ");
const SECRET = toBase32(Buffer.from("12345678901234567890"));

describe("the code of a device", () => {
  it.each(OF_RFC_6238)("[C13] at %i seconds is that of RFC 6238", (seconds, code) => {
    const [, step = 0] = stepsAround(new Date(seconds * 1000).toISOString());
    expect(oneTimeCode(SECRET, step, 8)).toBe(code);
  });

  it("[C13] of the first counters is that of RFC 4226", () => {
    expect(OF_RFC_4226.map((_, counter) => oneTimeCode(SECRET, counter))).toEqual(OF_RFC_4226);
  });

  it("[C13] is that of another library (otpauth), which reads the address of the picture", () => {
    const secrets = openSecrets();
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4_000_000_000 }),
        fc.string({ minLength: 1 }),
        (seconds, name) => {
          const secret = secrets.newFactorSecret();
          const label = name.toWellFormed();
          const device = URI.parse(factorAddress(secret, label, "Scribeline")) as TOTP;
          const [, step = 0] = stepsAround(new Date(seconds * 1000).toISOString());
          expect(oneTimeCode(secret, step)).toBe(device.generate({ timestamp: seconds * 1000 }));
          expect([device.label, device.issuer, device.secret.base32]).toEqual([label, "Scribeline", secret]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("[C13] is found among the steps it is looked for in, and nowhere else", () => {
    const secrets = openSecrets();
    const code = oneTimeCode(SECRET, 7);
    expect(secrets.findStep(SECRET, code, [6, 7, 8])).toBe(7);
    expect(secrets.findStep(SECRET, code, [8, 9])).toBeUndefined();
    expect(secrets.findStep(SECRET, `${code}0`, [7])).toBeUndefined();
  });
});

describe("base32", () => {
  it("[C13] is that of RFC 4648, section 10, without padding", () => {
    const pairs = {
      f: "MY",
      fo: "MZXQ",
      foo: "MZXW6",
      foob: "MZXW6YQ",
      fooba: "MZXW6YTB",
      foobar: "MZXW6YTBOI",
    };
    for (const [text, coded] of Object.entries(pairs)) {
      expect(toBase32(Buffer.from(text))).toBe(coded);
      expect(fromBase32(coded).toString()).toBe(text);
    }
    expect(() => fromBase32("m1")).toThrow(RangeError);
  });
});
