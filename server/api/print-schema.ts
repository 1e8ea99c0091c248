import { writeFileSync } from "node:fs";
import { printSchema } from "graphql";
import { buildSchema } from "./schema.ts";

/** schema.graphql as it should be: sorted by name, so that one schema has one text. */
export const printedSchema = (): string =>
  `# Printed by \`npm run schema\` from server/api/schema.ts; not written by hand.\n\n${printSchema(buildSchema())}\n`;

if (import.meta.main) writeFileSync(new URL("schema.graphql", import.meta.url), printedSchema());
