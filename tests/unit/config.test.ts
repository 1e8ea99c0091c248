import { isAbsolute, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readConfig } from "#server/config.ts";

describe("the settings", () => {
  it("[A22] are sane where none is made", () => {
    const config = readConfig({});
    expect(config).toMatchObject({ port: 4820, dataFolder: resolve("data"), largestBody: 256_000 });
    expect(Object.isFrozen(config)).toBe(true);
  });

  it("[A22] are read from the environment", () => {
    expect(
      readConfig({ SCRIBELINE_PORT: " 8080 ", SCRIBELINE_DATA: "/x/y", SCRIBELINE_LARGEST_BODY: "" }),
    ).toMatchObject({ port: 8080, dataFolder: resolve("/x/y"), largestBody: 256_000 });
    const config = readConfig({ SCRIBELINE_DATA: "elsewhere" });
    expect("dataFolder" in config && isAbsolute(config.dataFolder)).toBe(true);
  });

  it.each(["0x50", "80.5", "-1", "65536", "http", "1e3"])("[A22] refuse %s as a port", (port) => {
    expect(readConfig({ SCRIBELINE_PORT: port })).toEqual([
      expect.objectContaining({
        code: "WRONG_FORMAT",
        path: ["SCRIBELINE_PORT"],
        message: expect.stringMatching(
          `^SCRIBELINE_PORT is "${port}"; .* from 0 to 65535. Leave it out for 4820.$`,
        ),
      }),
    ]);
  });

  it("[A22] tell all that is wrong at once", () => {
    const problems = readConfig({ SCRIBELINE_PORT: "x", SCRIBELINE_DEADLINE: "1" });
    expect(problems).toMatchObject([{ path: ["SCRIBELINE_PORT"] }, { path: ["SCRIBELINE_DEADLINE"] }]);
  });
});
