import { writeFileSync } from "node:fs";
import type { Block, Table } from "#web/method/weighing/block.ts";
import { METHOD, METHOD_TITLE } from "#web/method/weighing/method-text.ts";

const cell = (text: string): string => text.replaceAll("|", "\\|");
const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(" | ")} |`;

const printTable = ({ caption, columns, rows }: Table): string =>
  [`${caption}:`, "", row(columns), row(columns.map(() => "---")), ...rows.map(row)].join("\n");

function printBlock(block: Block): string {
  if (typeof block === "string") return block;
  if ("formula" in block) return ["```text", ...block.formula, "```"].join("\n");
  if ("list" in block) return block.list.map((item) => `- ${item}`).join("\n");
  return printTable(block.table);
}

/** docs/method.md as it should be: the text of the page on the method. */
export const printedMethod = (): string =>
  [
    `# ${METHOD_TITLE}`,
    "Printed by `npm run method` from web/method/weighing, which reads the tables from the engine; not written by hand.",
    ...METHOD.flatMap(({ title, blocks }) => [`## ${title}`, ...blocks.map(printBlock)]),
  ]
    .join("\n\n")
    .concat("\n");

if (import.meta.main) writeFileSync(new URL("../../../docs/method.md", import.meta.url), printedMethod());
