import { cabriole, cabriolePad, squareLeg } from "./legs.ts";
import { bothSides, box, dot, grain, line } from "./pen.ts";
import { type DrawnForm, type Shape, shape, type View } from "./shape.ts";
import * as lines from "./side-chair-lines.ts";

const { AXIS, CREST, SEAT, FLOOR } = lines;
const GROUND = line([14, FLOOR + 0.8], [246, FLOOR + 0.8]);
const across = lines.turnedAcross(56, SEAT + 104, 4);
const size = { width: 260, height: FLOOR + 8 };

/** The front legs of a chair, and what is carved besides the crest. */
interface FrontLegs {
  readonly outline: string;
  readonly detail?: string;
  readonly carved?: { readonly outline: string; readonly detail: string };
}

const CABRIOLE: FrontLegs = {
  outline: bothSides((s) => cabriole(AXIS + s * 56, SEAT + 22, FLOOR, s, 23)),
  detail: bothSides((s) => cabriolePad(AXIS + s * 56, FLOOR, s, 23)),
  carved: { outline: lines.knees, detail: lines.kneeVeins },
};
const straight = (like: { inner?: number; plinth?: number }): FrontLegs => ({
  outline: bothSides((s) => squareLeg(AXIS + s * 56, SEAT + 22, FLOOR, s, { width: 19, ...like })),
});

const front = (legs: FrontLegs): View => ({
  key: "front",
  label: "Front",
  ...size,
  shapes: [
    shape("stiles", "part.stile", "stiles", lines.stiles, { weight: "outline" }),
    shape("splat", "part.splat", "splat", lines.splat, { detail: lines.splatGrain }),
    shape("crest", "part.crest-rail", "crest rail", lines.crest, {
      weight: "outline",
      detail: grain(AXIS - 54, CREST + 11, 34, 9, 1) + grain(AXIS + 20, CREST + 11, 34, 9, 1),
    }),
    shape("shoe", "part.rail", "shoe of the splat", lines.shoe),
    shape("seat", "part.seat", "slip seat", lines.seat),
    shape("rear-legs", "part.leg", "rear legs", lines.rearLegs(SEAT + 27, FLOOR - 8)),
    shape("stretchers", "part.stretcher", "stretchers", across.outline, { detail: across.detail }),
    shape("front-legs", "part.leg", "front legs", legs.outline, {
      weight: "outline",
      ...(legs.detail === undefined ? {} : { detail: legs.detail }),
    }),
    shape("rail", "part.seat-rail", "front seat rail", lines.seatRail, {
      weight: "outline",
      detail: grain(AXIS - 62, SEAT + 8, 124, 16, 2),
    }),
    shape(
      "carving",
      "part.carving",
      legs.carved ? "carving of crest and knees" : "carving of the crest",
      lines.shell + (legs.carved?.outline ?? ""),
      { detail: lines.shellFlutes + (legs.carved?.detail ?? "") },
    ),
  ],
  ground: GROUND,
  dimensions: [{ along: "x", from: AXIS - 78, to: AXIS + 78, at: 10, says: "width of the seat" }],
});

const back = (legs: FrontLegs): View => ({
  key: "back",
  label: "Back",
  ...size,
  shapes: [
    shape("crest", "part.crest-rail", "crest rail, from behind", lines.crest, {
      weight: "outline",
      detail: grain(AXIS - 50, CREST + 8, 100, 13, 2),
    }),
    shape("splat", "part.splat", "splat, from behind", lines.splat, {
      detail: grain(AXIS - 8, CREST + 100, 16, 70, 3, "y"),
    }),
    shape("front-legs", "part.leg", "front legs, from behind", legs.outline),
    shape("side-rails", "part.seat-rail", "side and front seat rails, from behind", lines.seatRail),
    shape("stretchers", "part.stretcher", "rear stretcher", box(AXIS - 44, SEAT + 88, 88, 7), {
      detail: grain(AXIS - 40, SEAT + 88, 80, 7, 1),
    }),
    shape("shoe", "part.rail", "shoe of the splat, from behind", lines.shoe),
    shape("rail", "part.seat-rail", "rear seat rail", box(AXIS - 40, SEAT, 80, 24), {
      detail: grain(AXIS - 36, SEAT + 2, 72, 20, 2),
    }),
    shape("stiles", "part.stile", "stiles, from behind", lines.stiles, { weight: "outline" }),
    shape("rear-legs", "part.leg", "rear legs", lines.rearLegs(SEAT, FLOOR), {
      weight: "outline",
      detail: bothSides((s) => dot(AXIS + s * 44, SEAT + 8) + dot(AXIS + s * 44, SEAT + 16)),
    }),
  ],
  ground: GROUND,
  dimensions: [],
});

const corners: readonly (readonly [number, number, number, number])[] = [
  [36, 44, 1, 1],
  [224, 44, -1, 1],
  [60, 196, 1, -1],
  [200, 196, -1, -1],
];
const under: Shape[] = [
  shape("seat", "part.seat", "slip seat, underside", "M44 52H216L194 188H66z", {
    detail:
      [70, 100, 130, 160, 190].map((x) => line([x, 56], [AXIS + (x - AXIS) * 0.78, 184])).join("") +
      [86, 120, 154].map((y) => line([52, y], [208, y])).join(""),
  }),
  shape(
    "rails",
    "part.seat-rail",
    "seat rails, inside and lower edges",
    "M28 36H232L206 204H54zM44 52L66 188H194L216 52z",
    {
      weight: "outline",
      detail: grain(60, 37, 140, 14, 2) + grain(76, 189, 108, 14, 1),
    },
  ),
  shape(
    "blocks",
    "part.corner-block",
    "corner blocks",
    corners
      .map(([x, y, sx, sy]) => `M${x + sx * 8} ${y + sy * 8}h${sx * 30}l${sx * -24} ${sy * 26}z`)
      .join(""),
    { detail: corners.map(([x, y, sx, sy]) => dot(x + sx * 19, y + sy * 14, 1)).join("") },
  ),
  shape(
    "legs",
    "part.leg",
    "legs, upper ends",
    box(24, 32, 22, 22) + box(214, 32, 22, 22) + box(50, 190, 16, 18) + box(194, 190, 16, 18),
    {
      weight: "outline",
    },
  ),
];

const beneath: View = {
  key: "beneath",
  label: "Under the seat",
  width: 260,
  height: 226,
  shapes: under,
  dimensions: [],
  captions: [
    { x: 28, y: 26, says: "front" },
    { x: 54, y: 222, says: "back" },
  ],
};

const viewsWith = (legs: FrontLegs): DrawnForm["views"] => [front(legs), back(legs), beneath];

/** Vase splat, yoke crest, slip seat and turned stretchers; cabriole front legs, unless straight ones were seen. */
export const sideChair: DrawnForm = {
  form: "form.side-chair",
  label: "side chair",
  views: viewsWith(CABRIOLE),
  asSeen: [
    { feature: "feature.tapered-square-leg", views: viewsWith(straight({ inner: 10 })) },
    { feature: "feature.marlborough-leg-plinth", views: viewsWith(straight({ plinth: 9 })) },
  ],
};
