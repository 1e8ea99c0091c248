import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { printedRoles } from "#tests/support/print-roles.ts";

describe("docs/roles.md", () => {
  it("is what the policy says and what a server lets through; else `npm run roles` prints it anew", async () => {
    const kept = readFileSync(new URL("../../docs/roles.md", import.meta.url), "utf8");
    expect(kept).toBe(await printedRoles());
  });
});
