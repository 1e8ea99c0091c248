import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

const shared = {
  // One copy of graphql for tests and tools: its two builds are not interchangeable.
  resolve: { alias: [{ find: /^graphql$/, replacement: "graphql/index.js" }] },
};

/** One project a kind of test; each folder of tests/ belongs to one. Reasons: DEVELOPERS.md, "Tests". */
export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    projects: [
      {
        ...shared,
        test: {
          name: "node",
          environment: "node",
          include: [
            "tests/{unit,laws,cases,handbook,stores,api,architecture,seed,faults,processes}/**/*.test.ts",
          ],
          exclude: ["tests/stores/neo4j/**", "tests/faults/neo4j/**", "tests/processes/neo4j/**"],
          testTimeout: 30_000,
        },
      },
      {
        ...shared,
        test: {
          name: "neo4j",
          environment: "node",
          include: ["tests/{stores,faults,processes}/neo4j/**/*.test.ts"],
          globalSetup: ["./tests/support/neo4j/global-setup.ts"],
          fileParallelism: false,
          testTimeout: 180_000,
          hookTimeout: 60_000,
        },
      },
      {
        ...shared,
        plugins: [react()],
        test: {
          name: "web",
          environment: "happy-dom",
          include: ["tests/web/**/*.test.tsx"],
          testTimeout: 30_000,
        },
      },
      {
        ...shared,
        test: {
          name: "e2e",
          environment: "node",
          include: ["tests/e2e/**/*.test.ts"],
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
