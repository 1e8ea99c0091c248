import { box, dot, grain, line } from "./pen.ts";
import { type Shape, shape } from "./shape.ts";

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The back of a case: two carcase sides seen on edge, and between them boards nailed in a rebate.
 * Boards lie across (`x`) or stand (`y`); the lines between them are open joints, as shrinkage leaves them.
 */
export function caseBack(
  prefix: string,
  { x, y, width, height }: Area,
  boards: number,
  along: "x" | "y" = "x",
  names: { side?: string; back?: string } = {},
): Shape[] {
  const edge = 7;
  const inner = { x: x + edge, y: y + 2, width: width - 2 * edge, height: height - 4 };
  const sides = box(x, y, edge, height) + box(x + width - edge, y, edge, height);
  let detail = "";
  for (let i = 0; i < boards; i++) {
    if (along === "x") {
      const h = inner.height / boards;
      const top = inner.y + i * h;
      if (i)
        detail +=
          line([inner.x, top], [inner.x + inner.width, top]) +
          line([inner.x, top + 1.4], [inner.x + inner.width, top + 1.4]);
      detail += grain(inner.x + 4, top + 2, inner.width - 8, h - 4, Math.max(2, Math.round(h / 18)));
      for (const t of [0.28, 0.72])
        detail += dot(inner.x + 4, top + h * t, 0.9) + dot(inner.x + inner.width - 4, top + h * t, 0.9);
    } else {
      const w = inner.width / boards;
      const left = inner.x + i * w;
      if (i)
        detail +=
          line([left, inner.y], [left, inner.y + inner.height]) +
          line([left + 1.4, inner.y], [left + 1.4, inner.y + inner.height]);
      detail += grain(left + 2, inner.y + 4, w - 4, inner.height - 8, Math.max(2, Math.round(w / 18)), "y");
      for (const t of [0.28, 0.72])
        detail += dot(left + w * t, inner.y + 4, 0.9) + dot(left + w * t, inner.y + inner.height - 4, 0.9);
    }
  }
  return [
    shape(
      `${prefix}back`,
      "part.back",
      names.back ?? "back boards",
      box(inner.x, inner.y, inner.width, inner.height),
      { detail },
    ),
    shape(`${prefix}sides`, "part.carcase-side", names.side ?? "carcase sides, rear edges", sides, {
      weight: "outline",
      detail: dovetails(x, y, edge) + dovetails(x + width - edge, y, edge),
    }),
  ];
}

/** Tails of a carcase joint seen at the head of a side: three short slanting cuts. */
const dovetails = (x: number, y: number, width: number): string =>
  [0.15, 0.5, 0.85]
    .map((t) => line([x + width * t - 0.8, y], [x + width * t, y + 5], [x + width * t + 0.8, y]))
    .join("");
