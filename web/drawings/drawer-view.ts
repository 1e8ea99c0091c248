import { box, dot, grain, line, polygon } from "./pen.ts";
import { type Shape, shape, type View } from "./shape.ts";

/**
 * One drawer taken out, drawn twice: from above with its right side towards us, and from beneath.
 * Oblique projection: depth runs up and to the right.
 */
const LEFT = 16;
const TOP = 138;
const WIDTH = 190;
const HEIGHT = 46;
const DEPTH = { x: 70, y: -100 };
const BOARD = 6;

/** Point at `u` across, `d` of the depth (0 front, 1 back), `z` below the upper edge. */
const at = (u: number, d: number, z = 0): readonly [number, number] => [
  LEFT + u + DEPTH.x * d,
  TOP + z + DEPTH.y * d,
];
/** Part of the depth over which a side hides the floor behind it. */
const HIDDEN = HEIGHT / -DEPTH.y;
const INNER = WIDTH - BOARD;

/** Lines of `count` tails on the outside of the right side, from depth `d` over `reach` of the depth. */
function tails(d: number, reach: number, count: number): string {
  let path = "";
  for (let i = 0; i < count; i++) {
    const a = (HEIGHT * (i + 0.3)) / count;
    const b = (HEIGHT * (i + 0.8)) / count;
    path += line(
      at(WIDTH, d, a),
      at(WIDTH, d + reach, a - 1.5),
      at(WIDTH, d + reach, b + 1.5),
      at(WIDTH, d, b),
    );
  }
  return path;
}

const alongDepth = (u: number, z: number, from: number, to: number): string =>
  line(at(u, from, z), at(u, to, z));

const fromAbove: readonly Shape[] = [
  shape(
    "back",
    "part.drawer-back",
    "drawer back, inside",
    polygon(at(BOARD, 1), at(INNER, 1), at(INNER, 1 - HIDDEN), at(BOARD, 1, HEIGHT)),
    { detail: line(at(20, 1, 14), at(130, 1, 13)) + line(at(44, 1, 28), at(140, 1, 29)) },
  ),
  shape(
    "left",
    "part.drawer-side",
    "left drawer side, inside",
    polygon(at(BOARD, 0), at(BOARD, 1), at(BOARD, 1, HEIGHT), at(BOARD, HIDDEN, HEIGHT)),
    { detail: alongDepth(BOARD, 14, 0.3, 0.95) + alongDepth(BOARD, 30, 0.45, 0.9) },
  ),
  shape(
    "bottom",
    "part.drawer-bottom",
    "drawer bottom, inside",
    polygon(at(BOARD, HIDDEN, HEIGHT), at(BOARD, 1, HEIGHT), at(INNER, 1 - HIDDEN), at(INNER, 0)),
    { detail: [30, 62, 96, 126].map((u) => alongDepth(u, HEIGHT, HIDDEN + 0.04, 0.96)).join("") },
  ),
  shape(
    "right",
    "part.drawer-side",
    "right drawer side, outside",
    polygon(at(WIDTH, 0), at(WIDTH, 1), at(WIDTH, 1, HEIGHT), at(WIDTH, 0, HEIGHT)) +
      polygon(at(INNER, 0), at(INNER, 1), at(WIDTH, 1), at(WIDTH, 0)),
    {
      weight: "outline",
      detail: tails(0, 0.12, 3) + tails(1, -0.07, 4) + alongDepth(WIDTH, HEIGHT - 6, 0.02, 0.98),
    },
  ),
  shape("front", "part.drawer-front", "drawer front", `${box(LEFT, TOP, WIDTH, HEIGHT)}`, {
    weight: "outline",
    detail:
      box(LEFT + 3, TOP + 3, WIDTH - 6, HEIGHT - 6) + grain(LEFT + 6, TOP + 6, WIDTH - 12, HEIGHT - 12, 3),
  }),
];

const UNDER = 208;
const WHOLE = WIDTH + DEPTH.x;
const DEEP = 92;

const fromBeneath: readonly Shape[] = [
  shape("under-back", "part.drawer-back", "drawer back, lower edge", box(LEFT + 7, UNDER, WHOLE - 14, 9)),
  shape(
    "under-bottom",
    "part.drawer-bottom",
    "drawer bottom, underside",
    box(LEFT + 7, UNDER + 9, WHOLE - 14, DEEP - 19),
    {
      detail:
        line([LEFT + 7, UNDER + 46], [LEFT + WHOLE - 7, UNDER + 46]) +
        line([LEFT + 7, UNDER + 47.3], [LEFT + WHOLE - 7, UNDER + 47.3]) +
        grain(LEFT + 12, UNDER + 12, WHOLE - 24, 32, 3) +
        grain(LEFT + 12, UNDER + 49, WHOLE - 24, 30, 3) +
        [0.1, 0.3, 0.5, 0.7, 0.9].map((t) => dot(LEFT + WHOLE * t, UNDER + 13, 1)).join(""),
    },
  ),
  shape(
    "under-sides",
    "part.drawer-side",
    "drawer sides, running edges",
    box(LEFT, UNDER, 7, DEEP - 10) + box(LEFT + WHOLE - 7, UNDER, 7, DEEP - 10),
    { weight: "outline" },
  ),
  shape(
    "under-front",
    "part.drawer-front",
    "drawer front, lower edge",
    box(LEFT - 1, UNDER + DEEP - 10, WHOLE + 2, 10),
    {
      weight: "outline",
    },
  ),
];

/** The drawer of any case piece, taken out. */
export const drawerView: View = {
  key: "drawer",
  label: "Drawer",
  width: 292,
  height: 308,
  // One drawer, seen twice: its shapes of a kind are sights of one thing.
  shapes: [...fromAbove, ...fromBeneath].map((each) => ({ ...each, slot: each.kind })),
  dimensions: [],
  captions: [
    { x: LEFT, y: 18, says: "from above" },
    { x: LEFT, y: UNDER - 7, says: "from beneath" },
  ],
};
