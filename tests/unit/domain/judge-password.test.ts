import { describe, expect, it } from "vitest";
import { judgePassword } from "#server/domain/people/judge-password.ts";
import { readSignInName } from "#server/domain/people/sign-in-name.ts";
import { secondsToWait } from "#server/domain/people/trouble.ts";

const COMMON = new Set(["password", "letmein", "iloveyou"]);
const judge = (password: string, names: readonly string[] = ["ada", "Ada Lacey"]) =>
  judgePassword(password, names, (text) => COMMON.has(text))?.code;

describe("a password", () => {
  it.each([
    "short",
    "elevenchars",
    "x".repeat(201),
    "password1234",
    "!!Password2024",
    "letmeinletmein",
    "iloveyou9999!",
    "aaaaaaaaaaaa",
    "abababababab",
    "123456789012",
    "qwertyuiopas",
    "abcdefghijkl",
    "scribeline-26",
    "AdaLacey1234",
    "ada lacey 1234",
  ])("[C11] is refused: %s", (password) => {
    expect(judge(password)).toBe("WEAK_PASSWORD");
  });

  it.each([
    "four oak boards, one saw",
    "öäü ßéñ 漢字かな交じり文",
    "twelve chars",
    "   spaces count   ",
    "the furniture of a quiet room",
    "x7$kQ!9zR2pW",
    "o".repeat(3) + "ak boards and a saw".repeat(10),
  ])("[C11] is taken: %s", (password) => {
    expect(judge(password)).toBeUndefined();
  });
});

describe("a name to sign in with", () => {
  it.each([
    [" Ada ", "ada"],
    ["ＡＤＡ", "ada"],
    ["josé@house.example", "josé@house.example"],
    ["jose\u0301", "josé"],
  ])("[C4] %j is %j", (text, name) => {
    expect(readSignInName(text)).toBe(name);
  });

  it.each(["", "a", "a b", "<script>", "a\u0000b", "-ada", "x".repeat(65), "a\u202eb"])(
    "[C4] is refused: %j",
    (text) => {
      expect(readSignInName(text)).toMatchObject({ code: "WRONG_FORMAT" });
    },
  );
});

describe("waiting after failures", () => {
  it("[C8] doubles from the fifth on, to a minute, and runs down", () => {
    const at = "2026-01-01T00:00:00.000Z";
    const waits = [0, 4, 5, 6, 7, 10, 11, 40].map((failures) => secondsToWait({ failures, at }, at));
    expect(waits).toEqual([0, 0, 1, 2, 4, 32, 60, 60]);
    expect(secondsToWait({ failures: 8, at }, "2026-01-01T00:00:05.000Z")).toBe(3);
    expect(secondsToWait({ failures: 8, at }, "2026-01-01T00:00:09.000Z")).toBe(0);
  });
});
