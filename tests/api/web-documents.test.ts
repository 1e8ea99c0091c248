import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  type DocumentNode,
  type FragmentDefinitionNode,
  Kind,
  type OperationDefinitionNode,
  parse,
  validate,
  visit,
} from "graphql";
import { describe, expect, it } from "vitest";
import { operationCost } from "#server/api/limits/operation-cost.ts";
import { buildSchema } from "#server/api/schema.ts";
import { readConfig } from "#server/config.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const files = globSync("web/**/*.graphql", { cwd: root }).sort();
const all = parse(files.map((file) => readFileSync(`${root}${file}`, "utf8")).join("\n"));
const fragments = new Map<string, FragmentDefinitionNode>();
const operations: OperationDefinitionNode[] = [];
for (const definition of all.definitions) {
  if (definition.kind === Kind.FRAGMENT_DEFINITION) fragments.set(definition.name.value, definition);
  if (definition.kind === Kind.OPERATION_DEFINITION) operations.push(definition);
}
const schema = buildSchema();
const config = readConfig({});

/** The operation with the fragments it uses, as the client sends it. */
function sent(operation: OperationDefinitionNode): DocumentNode {
  const used = new Map<string, FragmentDefinitionNode>();
  const collect = (node: OperationDefinitionNode | FragmentDefinitionNode): void => {
    visit(node, {
      FragmentSpread({ name }) {
        const fragment = fragments.get(name.value);
        if (!fragment || used.has(name.value)) return;
        used.set(name.value, fragment);
        collect(fragment);
      },
    });
  };
  collect(operation);
  return { kind: Kind.DOCUMENT, definitions: [operation, ...used.values()] };
}

describe("every operation of the web client", () => {
  it("is found", () => {
    expect(operations.length).toBeGreaterThan(5);
  });

  it.each(operations.map((operation) => [operation.name?.value, operation] as const))(
    "[A12] %s is valid and within the limits with a page of fifty rows",
    (_, operation) => {
      expect(validate(schema, sent(operation))).toEqual([]);
      if (!("highestCost" in config)) throw new Error("The settings of nobody are wrong");
      const pages = (operation.variableDefinitions ?? [])
        .map((definition) => definition.variable.name.value)
        .map((name) => [name, 50]);
      const { cost, wrongPages } = operationCost(schema, operation, fragments, Object.fromEntries(pages));
      expect(wrongPages).toEqual([]);
      expect(cost).toBeLessThanOrEqual(config.highestCost);
    },
  );
});
