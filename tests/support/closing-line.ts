import { existsSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Reporter, TestModule } from "vitest/node";

/**
 * Where tests leave a line on a means they lack: what is missing, and the line that installs it. The process of the
 * reporter names the file; those of the tests are started by it and find the name in their environment.
 */
export const MISSING_MEANS =
  process.env["SCRIBELINE_MISSING_MEANS"] ?? join(tmpdir(), `scribeline-missing-means-${process.pid}.txt`);
process.env["SCRIBELINE_MISSING_MEANS"] = MISSING_MEANS;

/**
 * Ends the run with one plain line, `N passed, N failed`, after naming every test that lacked a means. With
 * SCRIBELINE_NEEDS_ALL set (as in the gate) a lacking means, a skipped test or a run without tests is a failure.
 */
export default class ClosingLine implements Reporter {
  onTestRunStart(): void {
    rmSync(MISSING_MEANS, { force: true });
  }

  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const count = (state: string): number => tests.filter((test) => test.result().state === state).length;
    const broken = modules.filter(
      (module) => module.state() === "failed" && [...module.children.allTests("failed")].length === 0,
    );
    const skipped = count("skipped");
    const missing = existsSync(MISSING_MEANS)
      ? [...new Set(readFileSync(MISSING_MEANS, "utf8").trim().split("\n"))]
      : [];
    const strict = process.env["SCRIBELINE_NEEDS_ALL"] !== undefined;
    const refused = strict && (missing.length > 0 || skipped > 0 || tests.length === 0) ? 1 : 0;
    const failed = count("failed") + broken.length + errors.length + refused;
    process.once("exit", () => {
      for (const line of missing) process.stdout.write(`not run: ${line}\n`);
      if (skipped > 0) process.stdout.write(`${skipped} skipped\n`);
      process.stdout.write(`${count("passed")} passed, ${failed} failed\n`);
      if (failed > 0) process.exitCode = 1;
    });
  }
}
