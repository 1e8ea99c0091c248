import { cabriole, cabriolePad } from "./legs.ts";
import { bothSides, box, dot, grain, line, mirrored } from "./pen.ts";
import { type DrawnForm, type Shape, shape } from "./shape.ts";

const AXIS = 150;
const TOP = 34;
const FLOOR = 226;

/** The long side with both leaves down: the near leaf hides frame and knees. */
const down: Shape[] = [
  shape("top", "part.top", "top, edge", box(24, TOP, 252, 7), {
    weight: "outline",
    detail: grain(28, TOP, 244, 7, 1),
  }),
  shape(
    "leaf",
    "part.leaf",
    "near leaf, hanging",
    `M28 ${TOP + 7}h244c2 46-40 94-122 94S26 ${TOP + 53} 28 ${TOP + 7}z`,
    {
      weight: "outline",
      detail: `${line([30, TOP + 11], [270, TOP + 11])}${grain(44, TOP + 14, 212, 76, 6)}`,
    },
  ),
  shape(
    "legs",
    "part.leg",
    "fixed legs",
    bothSides((s) => cabriole(AXIS + s * 88, TOP + 58, FLOOR, s, 18)),
    {
      detail: bothSides((s) => cabriolePad(AXIS + s * 88, FLOOR, s, 18)),
    },
  ),
];

/** The end with both leaves up: rule joints, apron, fixed leg left and swing leg right on each side. */
const up: Shape[] = [
  shape("top", "part.top", "top, end edge", `M104 ${TOP}h92v3c-5 0-5 4-8 4h-76c-3 0-3-4-8-4z`, {
    weight: "outline",
  }),
  shape(
    "leaves",
    "part.leaf",
    "leaves, raised",
    `M104 ${TOP}H12c-3 0-3 7 0 7h100c-3 0-3-4-8-4zM196 ${TOP}h92c3 0 3 7 0 7H188c3 0 3-4 8-4z`,
    { weight: "outline" },
  ),
  shape("hinges", "part.hinge", "table hinges", box(92, TOP + 7, 26, 2.5) + box(182, TOP + 7, 26, 2.5), {
    detail: [96, 114, 186, 204].map((x) => dot(x, TOP + 8.2, 0.6)).join(""),
  }),
  shape(
    "rail",
    "part.rail",
    "end rail, shaped",
    `M112 ${TOP + 9.5}h76v24c-10 0-12-9-22-9-8 0-8 6-16 6s-8-6-16-6c-10 0-12 9-22 9z`,
    { weight: "edge", detail: grain(116, TOP + 10, 68, 14, 2) },
  ),
  shape(
    "legs",
    "part.leg",
    "fixed legs",
    bothSides((s) => cabriole(AXIS + s * 26, TOP + 9.5, FLOOR, s, 18)),
    {
      weight: "outline",
      detail: bothSides((s) => cabriolePad(AXIS + s * 26, FLOOR, s, 18)),
    },
  ),
  shape(
    "supports",
    "part.leaf-support",
    "swing legs, opened",
    bothSides((s) => cabriole(AXIS + s * 92, TOP + 8, FLOOR - 4, s, 16)),
    {
      detail: bothSides((s) => {
        const at = mirrored(AXIS, s);
        return `M${at(46, TOP + 22)}L${at(92, TOP + 22)}M${at(46, TOP + 10)}L${at(92, TOP + 10)}`;
      }),
    },
  ),
];

/** From beneath: an oval top of three boards, hinges, the frame with its hinged rails, legs cut through. */
const CY = 124;
const leafUnder = (s: -1 | 1): string => {
  const y = CY + s * 42;
  const edge = CY + s * 104;
  return `M22 ${y}C22 ${y + s * 34} 74 ${edge} 150 ${edge}S278 ${y + s * 34} 278 ${y}z`;
};
const beneath: Shape[] = [
  shape("leaf-a", "part.leaf", "first leaf, underside", leafUnder(-1), {
    weight: "outline",
    detail: grain(60, 40, 180, 36, 3),
  }),
  shape("top", "part.top", "top, underside", box(20, CY - 42, 260, 84), {
    weight: "outline",
    detail:
      grain(26, CY - 40, 248, 16, 1) +
      grain(26, CY + 24, 248, 16, 1) +
      line([20, CY + 3], [70, CY + 3]) +
      line([230, CY + 3], [280, CY + 3]),
  }),
  shape("leaf-b", "part.leaf", "second leaf, underside", leafUnder(1), {
    weight: "outline",
    detail: grain(60, 172, 180, 36, 3),
  }),
  shape(
    "hinges",
    "part.hinge",
    "table hinges",
    [-1, 1].flatMap((s) => [58, 150, 242].map((x) => box(x - 5, CY + s * 42 - 12, 10, 24))).join(""),
    {
      detail: [-1, 1]
        .flatMap((s) => [58, 150, 242].map((x) => dot(x, CY + s * 42 - 7, 1) + dot(x, CY + s * 42 + 7, 1)))
        .join(""),
    },
  ),
  shape("rails", "part.rail", "frame rails", `${box(78, CY - 28, 144, 56)}${box(84, CY - 22, 132, 44)}`, {
    weight: "edge",
    detail: bothSides((s) => line([150 + s * 20, CY - 28], [150 + s * 20, CY - 22])),
  }),
  shape(
    "supports",
    "part.leaf-support",
    "hinged rails of the swing legs",
    box(96, CY - 34, 112, 6) + box(92, CY + 28, 112, 6),
    {
      detail:
        line([136, CY - 34], [140, CY - 31], [136, CY - 28]) +
        line([164, CY + 28], [160, CY + 31], [164, CY + 34]),
    },
  ),
  shape(
    "legs",
    "part.leg",
    "legs, from beneath",
    box(74, CY - 34, 18, 18) +
      box(208, CY - 34, 18, 18) +
      box(74, CY + 16, 18, 18) +
      box(208, CY + 16, 18, 18),
    {
      weight: "outline",
      detail: [
        [83, -25],
        [217, -25],
        [83, 25],
        [217, 25],
      ]
        .map(([x, y]) => dot(x as number, CY + (y as number), 5))
        .join(""),
    },
  ),
];

const GROUND = line([6, FLOOR + 0.8], [294, FLOOR + 0.8]);

/** Two leaves on swing legs, cabriole legs; an oval when open. */
export const dropLeafTable: DrawnForm = {
  form: "form.drop-leaf-table",
  label: "drop-leaf table",
  views: [
    {
      key: "front",
      label: "Leaves down",
      width: 300,
      height: FLOOR + 8,
      shapes: down,
      ground: GROUND,
      dimensions: [{ along: "x", from: 24, to: 276, at: 18, says: "length of the top" }],
    },
    {
      key: "back",
      label: "Leaves up",
      width: 300,
      height: FLOOR + 8,
      shapes: up,
      ground: GROUND,
      dimensions: [{ along: "x", from: 104, to: 196, at: 18, says: "fixed top" }],
    },
    { key: "beneath", label: "Beneath", width: 300, height: 238, shapes: beneath, dimensions: [] },
  ],
};
