import { describe, expect, it } from "vitest";
import { limitRuns } from "#server/ports/limit-runs.ts";
import { checkWithArgon, hashWithArgon } from "#server/secrets/argon-hash.ts";
import { countTries } from "#server/secrets/count-tries.ts";
import { openSecrets } from "#server/secrets/open-secrets.ts";

describe("a password's hash", () => {
  // Made by the command of the reference implementation of Argon2 (phc-winner-argon2, `test.c`, version 0x13, argon2id).
  const OF_THE_REFERENCE =
    "$argon2id$v=19$m=256,t=2,p=1$c29tZXNhbHQ$nf65EOgLrQMR/uIPnA4rEsF5h7TKyQwu9U1bMCHGi/4";

  it("[C11] is that of the reference implementation", async () => {
    expect(await checkWithArgon("password", OF_THE_REFERENCE)).toEqual({ isRight: true, isOld: true });
    expect(await checkWithArgon("Password", OF_THE_REFERENCE)).toEqual({ isRight: false, isOld: true });
  });

  it("[C11] has a salt of its own, says by what it was made, and tells one character", async () => {
    const [one, other] = [await hashWithArgon("four oak boards "), await hashWithArgon("four oak boards ")];
    expect(one).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$[A-Za-z0-9+/]{22}\$[A-Za-z0-9+/]{43}$/);
    expect(one).not.toBe(other);
    expect(await checkWithArgon("four oak boards ", one)).toEqual({ isRight: true, isOld: false });
    expect(await checkWithArgon("four oak boards", one)).toMatchObject({ isRight: false });
    expect(await checkWithArgon("x", "not a hash")).toMatchObject({ isRight: false });
  });
});

describe("secrets", () => {
  const secrets = openSecrets();

  it("[C11] know passwords of the list of common ones", () => {
    for (const common of ["password", "123456", "qwertyuiop", "iloveyou", "letmein"])
      expect(secrets.isCommonPassword(common)).toBe(true);
    expect(secrets.isCommonPassword("four oak boards, one saw")).toBe(false);
  });

  it("[C8] are never right for nobody", async () => {
    expect(await secrets.checkPassword("x", undefined)).toEqual({ isRight: false, isOld: false });
  });

  it("[C6] are 256 random bits", () => {
    const made = new Set(Array.from({ length: 1000 }, secrets.newSecret));
    expect(made.size).toBe(1000);
    for (const secret of made) expect(Buffer.from(secret, "base64url").length).toBe(32);
  });
});

describe("a line before the hashes", () => {
  it("[C8] lets two run, the wanted number wait, and sends the rest away", async () => {
    const inTurn = limitRuns(2, 3);
    let running = 0;
    let most = 0;
    const ends: (() => void)[] = [];
    const run = () =>
      inTurn(async () => {
        most = Math.max(most, ++running);
        await new Promise<void>((resolve) => ends.push(resolve));
        running--;
        return "done";
      });
    const all = Array.from({ length: 6 }, run);
    expect(await all[5]).toBe("busy");
    while (ends.length > 0 || running > 0) {
      ends.shift()?.();
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(await Promise.all(all)).toEqual([...Array(5).fill("done"), "busy"]);
    expect(most).toBe(2);
    expect(await inTurn(async () => "again")).toBe("again");
  });
});

describe("tries by address", () => {
  it("[C8] make one address wait after twenty failures, and no other", () => {
    const tries = countTries();
    const at = "2026-01-01T00:00:00.000Z";
    for (let i = 0; i < 19; i++) tries.failed("10.0.0.1", at);
    expect(tries.secondsToWait("10.0.0.1", at)).toBe(0);
    tries.failed("10.0.0.1", at);
    expect(tries.secondsToWait("10.0.0.1", at)).toBe(1);
    expect(tries.secondsToWait("10.0.0.2", at)).toBe(0);
    expect(tries.secondsToWait(undefined, at)).toBe(0);
    expect([tries.isToBeNoted(at), tries.isToBeNoted(at)]).toEqual([true, false]);
  });
});
