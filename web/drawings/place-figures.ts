import { type Box, boxesOf } from "./path-box.ts";

/** Room that a figure of five letters takes, in drawing units. */
const WIDE = 30;
const HIGH = 13;

/** Where in a shape a figure is tried, first to last: across and down, in parts of its box. */
const TRIED: readonly (readonly [number, number])[] = [
  [0.5, 0.5],
  [0.5, 0.8],
  [0.5, 0.24],
  [0.3, 0.5],
  [0.7, 0.5],
  [0.12, 0.5],
  [0.88, 0.5],
  [0.12, 0.8],
  [0.88, 0.8],
];

interface Wanted {
  readonly outline: string;
  /** Empty for none. */
  readonly figure: string;
}

export interface PlacedFigure {
  readonly x: number;
  readonly y: number;
  readonly says: string;
}

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const isWithin = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left &&
  inner.right <= outer.right &&
  inner.top >= outer.top &&
  inner.bottom <= outer.bottom;

const areaOf = ({ left, right, top, bottom }: Box): number => (right - left) * (bottom - top);

/** Where figures can be written on shapes: where there is room in the largest figure of the shape that no shape drawn later lies over. */
export function placeFigures(shapes: readonly Wanted[]): readonly PlacedFigure[] {
  if (shapes.every(({ figure }) => figure === "")) return [];
  const parts = shapes.map(({ outline }) => boxesOf(outline));
  return shapes.flatMap(({ figure, outline }, at) => {
    const [box] = boxesOf(outline).toSorted((a, b) => areaOf(b) - areaOf(a));
    if (figure === "" || box === undefined) return [];
    const later = parts.slice(at + 1).flat();
    for (const [across, down] of TRIED) {
      const x = box.left + across * (box.right - box.left);
      const y = box.top + down * (box.bottom - box.top);
      const room = { left: x - WIDE / 2, right: x + WIDE / 2, top: y - HIGH / 2, bottom: y + HIGH / 2 };
      if (isWithin(room, box) && !later.some((other) => meet(room, other)))
        return [{ x, y: y + 4, says: figure }];
    }
    return [];
  });
}
