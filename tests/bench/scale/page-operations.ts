import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type DefinitionNode, type FragmentDefinitionNode, Kind, parse, print, visit } from "graphql";

const WEB = fileURLToPath(new URL("../../../web", import.meta.url));

/** The operations of the pages as they are sent, by name, each with the fragments it needs. */
export function readPageOperations(): (name: string) => string {
  const definitions = globSync("**/*.graphql", { cwd: WEB }).flatMap(
    (file): readonly DefinitionNode[] => parse(readFileSync(`${WEB}/${file}`, "utf8")).definitions,
  );
  const fragments = new Map(
    definitions.flatMap((definition): [string, FragmentDefinitionNode][] =>
      definition.kind === Kind.FRAGMENT_DEFINITION ? [[definition.name.value, definition]] : [],
    ),
  );
  return (name) => {
    const operation = definitions.find(
      (definition) => definition.kind === Kind.OPERATION_DEFINITION && definition.name?.value === name,
    );
    if (operation === undefined) throw new Error(`No page sends ${name}`);
    const needed = new Set<DefinitionNode>([operation]);
    for (const definition of needed)
      visit(definition, {
        enter: (node) => {
          if (node.kind !== Kind.FRAGMENT_SPREAD) return;
          const fragment = fragments.get(node.name.value);
          if (fragment === undefined) throw new Error(`There is no fragment ${node.name.value}`);
          needed.add(fragment);
        },
      });
    return [...needed].map(print).join("\n");
  };
}
