import { describe, expect, it } from "vitest";
import { runNode } from "#tests/support/run-node.ts";

describe("the command that makes a graph up", () => {
  it("tells on standard error how it is called, and refuses, where no number of claims is named", async () => {
    const { exit, out, err } = await runNode(["server/generate-graph.ts"]).ended;
    expect([exit, out]).toEqual([2, ""]);
    expect(err).toContain("--claims 1000000");
  });

  it("refuses nothing where that was asked for", async () => {
    const { exit, err } = await runNode(["server/generate-graph.ts", "--help"]).ended;
    expect(exit).toBe(0);
    expect(err).toContain("--claims 1000000");
  });
});
