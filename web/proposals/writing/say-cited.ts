import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import type { CslItem } from "#server/domain/source.ts";
import { sourceLine } from "./source-line.ts";

/** One citation of a form in a line. */
export function sayCited(fields: FormFields, known: readonly CslItem[]): string {
  const basis = fields["basis"]?.trim();
  if (!basis) return "Not said yet";
  if (basis !== "published") return basis === "from memory" ? "from memory, unconfirmed" : basis;
  const source = fields["source"]?.trim();
  const chosen = known.find(({ id }) => id === source);
  const name = chosen
    ? sourceLine(chosen)
    : (source ?? "") || fields["title"]?.trim() || "source not said yet";
  const locator = fields["locator"]?.trim();
  return locator ? `${name.replace(/\.$/, "")}, ${locator}` : name;
}
