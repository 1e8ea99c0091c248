import type { Part } from "#server/domain/examination.ts";
import type { PartId } from "#server/domain/ids.ts";

/** True if `part` may be put within `other`: not itself, and not one of the parts within it. */
export function mayLieWithin(parts: readonly Part[], part: PartId, other: PartId): boolean {
  const seen = new Set<PartId>();
  for (let at: PartId | undefined = other; at !== undefined && !seen.has(at); ) {
    if (at === part) return false;
    seen.add(at);
    at = parts.find((each) => each.id === at)?.within;
  }
  return true;
}
