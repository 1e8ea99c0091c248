import type { TermKind } from "#server/domain/term.ts";
import type { PlatePoint } from "./plate.ts";

/** A half circle as points, from `from` over `to` degrees, clockwise from the right. */
const arc = (from: number, to: number, radius: number, [x, y]: PlatePoint): readonly PlatePoint[] =>
  Array.from({ length: 13 }, (_, i): PlatePoint => {
    const angle = ((from + ((to - from) * i) / 12) * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/**
 * The outline of each kind of term, between -1 and 1; none is a circle. What is seen is a round eye, a tool a wedge, a
 * material a board, a part a dovetail, a form a case, hardware a nut; kinds are told in words beside them too.
 */
export const kindShapes: Readonly<Record<TermKind, readonly PlatePoint[] | undefined>> = {
  feature: undefined,
  tool: [
    [0, -1],
    [1, 0.9],
    [-1, 0.9],
  ],
  practice: [
    [-0.9, -1],
    [0.1, -1],
    [1, 0],
    [0.1, 1],
    [-0.9, 1],
    [0.1, 0],
  ],
  hardware: [
    [-0.5, -0.95],
    [0.5, -0.95],
    [1, 0],
    [0.5, 0.95],
    [-0.5, 0.95],
    [-1, 0],
  ],
  material: [
    [-0.45, -0.7],
    [1, -0.7],
    [0.45, 0.7],
    [-1, 0.7],
  ],
  finish: [[0, -1], ...arc(-25, 205, 0.7, [0, 0.28])],
  style: [
    [0, -1],
    [0.3, -0.3],
    [1, 0],
    [0.3, 0.3],
    [0, 1],
    [-0.3, 0.3],
    [-1, 0],
    [-0.3, -0.3],
  ],
  form: [
    [-0.85, -0.85],
    [0.85, -0.85],
    [0.85, 0.85],
    [-0.85, 0.85],
  ],
  region: [
    [-0.8, -1],
    [1, -0.45],
    [-0.55, 0.1],
    [-0.55, 1],
    [-0.8, 1],
  ],
  maker: [
    [-0.35, -1],
    [0.35, -1],
    [0.35, -0.35],
    [1, -0.35],
    [1, 0.35],
    [0.35, 0.35],
    [0.35, 1],
    [-0.35, 1],
    [-0.35, 0.35],
    [-1, 0.35],
    [-1, -0.35],
    [-0.35, -0.35],
  ],
  part: [
    [-0.5, -0.85],
    [0.5, -0.85],
    [1, 0.85],
    [-1, 0.85],
  ],
};
