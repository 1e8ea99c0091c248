import { caseBack } from "./case-back.ts";
import { caseAround, type DrawerRow, drawerFronts, drawerOpenings, heightOfRows } from "./case-front.ts";
import { drawerView } from "./drawer-view.ts";
import { keyPlate } from "./hardware.ts";
import { bracketFeet } from "./legs.ts";
import { box, grain, line } from "./pen.ts";
import { type DrawnForm, shape } from "./shape.ts";

const ROWS: readonly DrawerRow[] = [{ height: 28 }, { height: 34 }, { height: 39 }, { height: 44 }];
const FALL = { x: 30, y: 33, width: 232, height: 82 };
const CASE = { x: 27, y: FALL.y + FALL.height, width: 238, height: heightOfRows(ROWS) + 9 };
const BASE = CASE.y + CASE.height;
const FOOT = BASE + 38;
const GROUND = line([6, FOOT + 0.8], [286, FOOT + 0.8]);
const size = { width: 292, height: FOOT + 8 };

/** The first row stands between the two slides that carry the fall. */
const first = drawerOpenings(CASE.x + 27, CASE.y + 4, CASE.width - 54, ROWS.slice(0, 1));
const rest = drawerOpenings(CASE.x + 9, CASE.y + 4 + 28 + 4, CASE.width - 18, ROWS.slice(1));
const openings = [...first, ...rest];
const drawers = drawerFronts("", openings, ROWS);
const slideBox = (side: -1 | 1) => box(side < 0 ? CASE.x + 9 : CASE.x + CASE.width - 23, CASE.y + 4, 14, 28);

const moulding = shape(
  "base-moulding",
  "part.moulding",
  "base moulding",
  `M27 ${BASE}h238c0 4 4 5 6 8H21c2-3 6-4 6-8z`,
);
const feet = shape("feet", "part.foot", "bracket feet", bracketFeet(20, 252, BASE + 8, FOOT), {
  weight: "outline",
});
const lower = [
  caseAround("case", "part.carcase", "carcase, front edges and blades", CASE, openings.flat()),
  shape("slides", "part.leaf-support", "slides that carry the fall", slideBox(-1) + slideBox(1)),
  ...drawers.fronts,
  shape("handles", "part.handle", "handles", drawers.handles.outline, { detail: drawers.handles.detail }),
  shape("plates", "part.escutcheon", "key plates", drawers.plates.outline, { detail: drawers.plates.detail }),
  moulding,
  feet,
];
const top = shape("top", "part.top", "top, front edge", "M28 25h236v5c0 2-2 2-2 3H30c0-1-2-1-2-3z", {
  weight: "outline",
});
const lock = keyPlate(FALL.x + FALL.width / 2, FALL.y + 13);

/** The fitted inside: pigeon holes over small drawers, a door between two pilasters in the middle. */
const bays = [0, 1, 2, 4, 5, 6];
const bayWidth = FALL.width / 7;
const bayX = (i: number) => FALL.x + i * bayWidth;
const holes = bays
  .map(
    (i) =>
      `M${bayX(i) + 2} ${FALL.y + 50}V${FALL.y + 12}c4 6 8 2 ${bayWidth / 2 - 2} -3c${bayWidth / 2 - 10} 5 ${bayWidth / 2 - 6} 9 ${bayWidth / 2 - 2} 3V${FALL.y + 50}z`,
  )
  .join("");
const smallDrawers = bays.map((i) => box(bayX(i) + 2, FALL.y + 54, bayWidth - 4, 22)).join("");
const pulls = bays
  .map((i) => `M${bayX(i) + bayWidth / 2 - 2} ${FALL.y + 65}a2 2 0 1 0 4 0a2 2 0 1 0 -4 0z`)
  .join("");
const prospect = box(bayX(3) + 5, FALL.y + 6, bayWidth - 10, 70);

/** Slant fall over four drawers on bracket feet; closed, open, and from behind. */
export const fallFrontDesk: DrawnForm = {
  form: "form.fall-front-desk",
  label: "desk with fall",
  views: [
    {
      key: "front",
      label: "Front",
      ...size,
      shapes: [
        top,
        shape(
          "case-upper",
          "part.carcase-side",
          "carcase sides beside the fall",
          `M28 33h4v82h-5zM264 33h-4v82h5z`,
        ),
        shape("fall", "part.fall", "fall, closed", box(FALL.x + 2, FALL.y, FALL.width - 4, FALL.height), {
          weight: "outline",
          detail: `${line([FALL.x + 16, FALL.y + 2], [FALL.x + 16, FALL.y + FALL.height - 2])}${line([FALL.x + FALL.width - 16, FALL.y + 2], [FALL.x + FALL.width - 16, FALL.y + FALL.height - 2])}${grain(FALL.x + 22, FALL.y + 6, FALL.width - 44, FALL.height - 12, 5)}`,
        }),
        shape("fall-lock", "part.escutcheon", "key plate of the fall", lock.outline, { detail: lock.detail }),
        ...lower,
      ],
      ground: GROUND,
      dimensions: [{ along: "x", from: CASE.x, to: CASE.x + CASE.width, at: 12, says: "width of the case" }],
    },
    {
      key: "back",
      label: "Back",
      ...size,
      shapes: [
        shape("top", "part.top", "top, rear edge", box(28, 25, 236, 8), {
          weight: "outline",
          detail: grain(32, 25, 228, 8, 1),
        }),
        ...caseBack("", { x: CASE.x, y: FALL.y, width: CASE.width, height: BASE - FALL.y }, 5),
        shape("bottom", "part.case-bottom", "case bottom, rear edge", `M27 ${BASE}h238v7h-238z`),
        shape(
          "feet",
          "part.foot",
          "rear feet",
          `M21 ${BASE + 7}h46l-6 10-18 6v${FOOT - BASE - 23}h-22zM271 ${BASE + 7}h-46l6 10 18 6v${FOOT - BASE - 23}h22z`,
          {
            weight: "outline",
          },
        ),
      ],
      ground: GROUND,
      dimensions: [],
    },
    {
      key: "open",
      label: "Open",
      ...size,
      shapes: [
        top,
        shape(
          "case-upper",
          "part.carcase-side",
          "carcase sides, cut to the slant",
          `M28 33h4v82h-5zM264 33h-4v82h5z`,
        ),
        shape(
          "interior",
          "part.interior",
          "desk interior",
          box(FALL.x + 2, FALL.y, FALL.width - 4, FALL.height) + holes + smallDrawers + prospect,
          {
            weight: "outline",
          },
        ),
        shape("holes", "part.interior", "pigeon holes", holes),
        shape("small-drawers", "part.drawer-front", "small drawers of the interior", smallDrawers, {
          detail: pulls,
        }),
        shape("prospect", "part.door", "small door in the middle", prospect, {
          detail:
            box(bayX(3) + 9, FALL.y + 11, bayWidth - 18, 60) +
            line([bayX(3) + 2, FALL.y + 4], [bayX(3) + 2, FALL.y + 78]) +
            line([bayX(4) - 2, FALL.y + 4], [bayX(4) - 2, FALL.y + 78]),
        }),
        ...lower,
        shape("fall", "part.fall", "fall, open, inner face", `M30 ${CASE.y - 4}H262L280 ${CASE.y + 26}H12z`, {
          weight: "outline",
          detail: `M44 ${CASE.y}H248L258 ${CASE.y + 21}H34z${line([46, CASE.y + 7], [196, CASE.y + 7])}${line([60, CASE.y + 14], [240, CASE.y + 14])}`,
        }),
      ],
      ground: GROUND,
      dimensions: [],
    },
    drawerView,
  ],
};
