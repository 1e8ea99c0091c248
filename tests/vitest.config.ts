import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

/** What Node compiled of a script once, for the many short processes of the tests. */
const COMPILED = fileURLToPath(new URL("../node_modules/.cache/compiled", import.meta.url));

const shared = {
  // One copy of graphql for tests and tools: its two builds are not interchangeable.
  resolve: { alias: [{ find: /^graphql$/, replacement: "graphql/index.js" }] },
};

/** What takes a second, or comes at once, takes many times that where much else runs; only what hangs waits as long as this. */
const patient = {
  testTimeout: 300_000,
  hookTimeout: 300_000,
  expect: { poll: { timeout: 30_000 } },
};

/**
 * Every core has a worker, which takes the files of a project one after another. A worker for each file would read the
 * whole program anew for each, which takes longer than most of them do; so no file may leave anything behind.
 */
const together = {
  ...patient,
  maxWorkers: "100%",
  isolate: false,
  setupFiles: ["./tests/support/after-each-file.ts"],
  env: { NODE_COMPILE_CACHE: COMPILED },
};

/** What empties the database of the tests, or looks at all that is in it: one file after another, when the others have ended. */
const ALONE = ["tests/stores/neo4j/opening.test.ts", "tests/processes/neo4j/processes.test.ts"];
const onNeo4j = {
  ...together,
  globalSetup: ["./tests/support/neo4j/global-setup.ts"],
};

/** One project a kind of test; each folder of tests/ belongs to one. Reasons: DEVELOPERS.md, "Tests". */
export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    projects: [
      {
        ...shared,
        test: {
          ...together,
          name: "node",
          environment: "node",
          include: [
            "tests/{unit,laws,cases,handbook,stores,api,architecture,seed,faults,processes}/**/*.test.ts",
          ],
          exclude: ["tests/stores/neo4j/**", "tests/faults/neo4j/**", "tests/processes/neo4j/**"],
        },
      },
      {
        ...shared,
        test: {
          ...onNeo4j,
          name: "neo4j",
          environment: "node",
          include: ["tests/{stores,faults,processes}/neo4j/**/*.test.ts"],
          exclude: ALONE,
        },
      },
      {
        ...shared,
        test: {
          ...onNeo4j,
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
          name: "neo4j-alone",
          environment: "node",
          include: ALONE,
        },
      },
      {
        ...shared,
        plugins: [react()],
        test: {
          ...patient,
          maxWorkers: "100%",
          name: "web",
          environment: "happy-dom",
          include: ["tests/web/**/*.test.tsx"],
        },
      },
      {
        ...shared,
        test: {
          ...together,
          name: "e2e",
          environment: "node",
          include: ["tests/e2e/**/*.test.ts"],
          globalSetup: ["./tests/support/unpack-browser.ts"],
        },
      },
    ],
  },
});
