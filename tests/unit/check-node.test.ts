import { describe, expect, it } from "vitest";
import { runNode } from "#tests/support/run-node.ts";

/** Runs the check as if Node were of another version. */
const checkedAs = (version: string) => {
  const pretend = `Object.defineProperty(process, "versions", { value: { node: "${version}" } });`;
  return runNode(["--import", `data:text/javascript,${encodeURIComponent(pretend)}`, "server/check-node.mjs"])
    .ended;
};

describe("the check of the Node version", () => {
  it.each(["18.20.0", "20.20.2", "22.18.0", "24.14.9"])(
    "[A28] says of Node %s what to install",
    async (version) => {
      const { exit, out, err } = await checkedAs(version);
      expect({ exit, out }).toEqual({ exit: 1, out: "" });
      expect(err).toContain(
        `Scribeline needs Node 24.15 or newer; this is Node ${version}. Run npm ci again`,
      );
    },
  );

  it.each(["24.15.0", "24.21.0", "26.0.0", process.versions.node])(
    "[A28] says nothing of Node %s",
    async (version) => {
      expect(await checkedAs(version)).toEqual({ exit: 0, out: "", err: "" });
    },
  );
});
