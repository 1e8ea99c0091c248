import { box, dot, grain, line, polygon } from "./pen.ts";
import { type Shape, shape, type View } from "./shape.ts";

/**
 * One drawer taken out, drawn twice: from above with its right side towards us, and from beneath.
 * Oblique projection: depth runs up and to the right.
 */
const x0 = 18;
const width = 186;
const top = 140;
const height = 48;
const dx = 66;
const dy = -96;
const board = 6;
const right = x0 + width;

/** A point `t` of the way back along an edge that starts at the front. */
const back = (x: number, y: number, t = 1): readonly [number, number] => [x + dx * t, y + dy * t];

function tails(t: number, count: number, reach: number): string {
  let path = "";
  const [x, y] = back(right, top, t);
  for (let i = 0; i < count; i++) {
    const a = y + (height * (i + 0.28)) / count;
    const b = y + (height * (i + 0.82)) / count;
    const end = (dyAt: number, grow: number): readonly [number, number] => [
      x + dx * reach,
      dyAt + dy * reach + grow,
    ];
    path += line([x, a], end(a, -1.6), end(b, 1.6), [x, b]);
  }
  return path;
}

function fromAbove(): Shape[] {
  const meets = top + height + dy;
  const foot = (meets - top) / dy;
  return [
    shape(
      "back",
      "part.drawer-back",
      "drawer back, inside",
      polygon(
        back(x0 + board, top),
        back(right - board, top),
        [right - board + dx * foot * 0 + dx * (1 - 0) - dx * (height / -dy), meets],
        back(x0 + board, top + height),
      ),
      {
        detail: grain(x0 + dx + 12, top + dy + 5, width - 60, height - 10, 3),
      },
    ),
    shape(
      "left",
      "part.drawer-side",
      "left drawer side, inside",
      polygon(
        [x0 + board, top],
        back(x0 + board, top),
        back(x0 + board, top + height),
        back(x0 + board, top, height / -dy),
      ),
      {
        detail: line(back(x0 + board + 1, top + 12, 0.2), back(x0 + board + 1, top + 12, 0.9)),
      },
    ),
    shape(
      "bottom",
      "part.drawer-bottom",
      "drawer bottom, inside",
      polygon(
        back(x0 + board, top, height / -dy),
        back(x0 + board, top + height),
        [right - board + dx * (1 - height / -dy), meets],
        [right - board, top],
      ),
      {
        detail: [0.2, 0.42, 0.63, 0.83]
          .map((t) =>
            line(
              back(x0 + board + 34 + 118 * t, top + height, 0.56),
              back(x0 + board + 34 + 118 * t, top + height, 0.96),
            ),
          )
          .join(""),
      },
    ),
    shape(
      "rim",
      "part.drawer",
      "drawer as a whole, upper edges",
      polygon(
        [x0, top],
        back(x0, top),
        back(right, top),
        [right, top],
        [right - board, top],
        back(right - board, top),
        back(x0 + board, top),
        [x0 + board, top],
      ),
      { weight: "edge" },
    ),
    shape(
      "right",
      "part.drawer-side",
      "right drawer side, outside",
      polygon([right, top], back(right, top), back(right, top + height), [right, top + height]),
      {
        weight: "outline",
        detail:
          tails(0.0, 3, 0.14) +
          tails(1, 4, -0.07) +
          line(back(right, top + height - 5, 0.02), back(right, top + height - 5, 0.98)),
      },
    ),
    shape("front", "part.drawer-front", "drawer front, with its lower edge", box(x0, top, width, height), {
      weight: "outline",
      detail:
        box(x0 + 3, top + 3, width - 6, height - 6) + grain(x0 + 6, top + 6, width - 12, height - 12, 3),
    }),
  ];
}

function fromBeneath(y: number): Shape[] {
  const w = width + dx;
  const h = 92;
  const nails = [0.12, 0.31, 0.5, 0.69, 0.88].map((t) => dot(x0 + w * t, y + 5, 1)).join("");
  return [
    shape("under-back", "part.drawer-back", "drawer back, lower edge", box(x0 + 7, y, w - 14, 9), {
      detail: nails,
    }),
    shape(
      "under-bottom",
      "part.drawer-bottom",
      "drawer bottom, underside",
      box(x0 + 7, y + 9, w - 14, h - 19),
      {
        detail:
          line([x0 + 7, y + 44], [x0 + w - 7, y + 44]) +
          line([x0 + 7, y + 45.2], [x0 + w - 7, y + 45.2]) +
          grain(x0 + 12, y + 12, w - 24, 30, 3) +
          grain(x0 + 12, y + 48, w - 24, 28, 3),
      },
    ),
    shape(
      "under-sides",
      "part.drawer-side",
      "drawer sides, running edges",
      box(x0, y, 7, h - 10) + box(x0 + w - 7, y, 7, h - 10),
      { weight: "outline" },
    ),
    shape(
      "under-front",
      "part.drawer-front",
      "drawer front, back face and lower edge",
      box(x0 - 1, y + h - 10, w + 2, 10),
      { weight: "outline" },
    ),
  ];
}

/** The drawer of any case piece, taken out. */
export const drawerView: View = {
  key: "drawer",
  label: "Drawer out",
  width: 300,
  height: 316,
  shapes: [...fromAbove(), ...fromBeneath(210)],
  dimensions: [
    { along: "x", from: x0, to: right, at: 30 + top - 140, says: "width" },
    { along: "y", from: top, to: top + height, at: 10, says: "height" },
  ],
};
