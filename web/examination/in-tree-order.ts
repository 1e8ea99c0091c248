import type { Part } from "#server/domain/examination.ts";
import type { PartId } from "#server/domain/ids.ts";

/** Parts each followed by the parts within it, with how deep they lie. A part whose parent is missing stands at the top. */
export function inTreeOrder(parts: readonly Part[]): { readonly part: Part; readonly depth: number }[] {
  const ids = new Set(parts.map((part) => part.id));
  const placed = new Set<PartId>();
  const ordered: { part: Part; depth: number }[] = [];
  const place = (part: Part, depth: number) => {
    if (placed.has(part.id)) return;
    placed.add(part.id);
    ordered.push({ part, depth });
    for (const inner of parts) if (inner.within === part.id) place(inner, depth + 1);
  };
  for (const part of parts) if (part.within === undefined || !ids.has(part.within)) place(part, 0);
  for (const part of parts) place(part, 0);
  return ordered;
}
