import type { Edit } from "./change.ts";

/** What an id of the graph is of, by its first word; undefined for an examination. */
export function kindOfId(name: string): Edit["kind"] | undefined {
  const [first] = name.split(".");
  if (first === "examination") return undefined;
  return first === "claim" || first === "source" ? first : "term";
}
