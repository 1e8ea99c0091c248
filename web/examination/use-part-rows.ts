import { useMemo, useRef } from "react";
import type { Observation, Part } from "#server/domain/examination.ts";
import type { PartSummary } from "#server/domain/report.ts";
import { useDesk } from "./desk.ts";
import { inTreeOrder } from "./in-tree-order.ts";

/** What the line of one part shows. */
export interface PartRow {
  readonly part: Part;
  readonly depth: number;
  readonly seen: readonly Observation[];
  readonly speaks: PartSummary["speaks"];
  readonly says: string;
}

const isSame = (a: PartRow, b: PartRow): boolean =>
  a.part === b.part &&
  a.depth === b.depth &&
  a.speaks === b.speaks &&
  a.says === b.says &&
  a.seen.length === b.seen.length &&
  a.seen.every((each, i) => each === b.seen[i]);

/** One row a part, in the order of the tree. A row that shows the same as before is the same object. */
export function usePartRows(): readonly PartRow[] {
  const { piece, report, words } = useDesk();
  const before = useRef<ReadonlyMap<string, PartRow>>(new Map());
  return useMemo(() => {
    const rows = inTreeOrder(piece.parts).map(({ part, depth }): PartRow => {
      const row = {
        part,
        depth,
        seen: piece.observations.filter((each) => each.part === part.id),
        speaks: report?.parts.find((each) => each.part === part.id)?.speaks ?? "not-looked",
        says: words?.parts.find((each) => each.part === part.id)?.says ?? "not looked at",
      };
      const old = before.current.get(part.id);
      return old && isSame(old, row) ? old : row;
    });
    before.current = new Map(rows.map((row) => [row.part.id, row]));
    return rows;
  }, [piece, report, words]);
}
