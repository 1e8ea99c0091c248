import { bailHandle, keyPlate, many } from "./hardware.ts";
import { box, grain } from "./pen.ts";
import { type Shape, shape } from "./shape.ts";

/** One row of drawers: its height, and how many stand side by side. */
export interface DrawerRow {
  readonly height: number;
  readonly count?: number;
  /** No handle or lock: a drawer too small, or drawn elsewhere. */
  readonly plain?: boolean;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const BLADE = 4;
const ORDINALS = ["top", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];

/** Where the drawers of a case stand: rows from `top` down with a blade between two of them, `inset` from its sides. */
export function drawerOpenings(x: number, top: number, width: number, rows: readonly DrawerRow[]): Box[][] {
  let y = top;
  return rows.map(({ height, count = 1 }) => {
    const each = (width - BLADE * (count - 1)) / count;
    const row = Array.from({ length: count }, (_, i) => ({
      x: x + i * (each + BLADE),
      y,
      width: each,
      height,
    }));
    y += height + BLADE;
    return row;
  });
}

/** Height of rows with their blades. */
export const heightOfRows = (rows: readonly DrawerRow[]): number =>
  rows.reduce((sum, row) => sum + row.height, 0) + BLADE * (rows.length - 1);

const nameOf = (row: number, rows: number, place: number, count: number): string => {
  const which = rows > 1 && row === rows - 1 ? "bottom" : (ORDINALS[row] ?? `${row + 1}th`);
  const side =
    count === 1 ? "" : count === 2 ? (place ? " right" : " left") : [" left", " middle", " right"][place];
  return `${which}${side} drawer front`;
};

/** A drawer front: outline, cock bead inside it, a little grain. */
const front = (opening: Box, key: string, label: string): Shape =>
  shape(key, "part.drawer-front", label, box(opening.x, opening.y, opening.width, opening.height), {
    detail:
      box(opening.x + 2.5, opening.y + 2.5, opening.width - 5, opening.height - 5) +
      grain(
        opening.x + 4,
        opening.y + 4,
        opening.width - 8,
        opening.height - 8,
        Math.max(2, Math.round(opening.height / 14)),
      ),
  });

/** Fronts in reading order, then all handles as one shape and all key plates as one. `prefix` keeps keys apart. */
export function drawerFronts(
  prefix: string,
  openings: readonly (readonly Box[])[],
  rows: readonly DrawerRow[],
): {
  fronts: Shape[];
  handles: { outline: string; detail: string };
  plates: { outline: string; detail: string };
} {
  const fronts = openings.flatMap((row, i) =>
    row.map((opening, j) =>
      front(opening, `${prefix}front-${i}-${j}`, nameOf(i, openings.length, j, row.length)),
    ),
  );
  const fitted = openings.flatMap((row, i) => (rows[i]?.plain ? [] : row));
  const handles = fitted.flatMap((opening) => {
    const cy = opening.y + opening.height / 2 + 1;
    const size = Math.min(1, opening.height / 30);
    if (opening.width < 90) return [bailHandle(opening.x + opening.width / 2, cy + 3, size)];
    return [0.22, 0.78].map((t) => bailHandle(opening.x + opening.width * t, cy, size));
  });
  const plates = fitted.map((opening) =>
    keyPlate(
      opening.x + opening.width / 2,
      opening.y + Math.min(12, opening.height * 0.3),
      opening.width < 90 ? 0.6 : 0.8,
    ),
  );
  return { fronts, handles: many(handles), plates: many(plates) };
}

/** The case around its openings: outline with the openings left out of the hatching. */
export const caseAround = (
  key: string,
  kind: string,
  label: string,
  whole: Box,
  openings: readonly Box[],
): Shape =>
  shape(
    key,
    kind,
    label,
    box(whole.x, whole.y, whole.width, whole.height) +
      openings.map(({ x, y, width, height }) => box(x, y, width, height)).join(""),
    {
      weight: "outline",
      detail:
        grain(whole.x + 1, whole.y + 6, 6, whole.height - 12, 1, "y") +
        grain(whole.x + whole.width - 7, whole.y + 6, 6, whole.height - 12, 1, "y"),
    },
  );
