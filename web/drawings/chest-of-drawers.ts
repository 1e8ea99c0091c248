import { caseBack } from "./case-back.ts";
import { caseAround, type DrawerRow, drawerFronts, drawerOpenings, heightOfRows } from "./case-front.ts";
import { caseInside } from "./case-inside.ts";
import { drawerView } from "./drawer-view.ts";
import { bracketFeet } from "./legs.ts";
import { grain, line } from "./pen.ts";
import { type DrawnForm, shape } from "./shape.ts";

const ROWS: readonly DrawerRow[] = [{ height: 36 }, { height: 43 }, { height: 49 }, { height: 54 }];
const CASE = { x: 27, y: 40, width: 238, height: heightOfRows(ROWS) + 10 };
const FLOOR = CASE.y + CASE.height;
const FOOT = FLOOR + 40;
const GROUND = line([6, FOOT + 0.8], [286, FOOT + 0.8]);

/** A top with a moulded edge: a fillet over an ovolo. */
const top = shape("top", "part.top", "top, moulded edge", `M15 28h262v5c0 4-5 4-6 7H21c-1-3-6-3-6-7z`, {
  weight: "outline",
  detail: `${line([16, 33], [276, 33])}${grain(20, 28, 252, 5, 1)}`,
});
const moulding = shape(
  "base-moulding",
  "part.moulding",
  "base moulding",
  `M27 ${FLOOR}h238c0 4 4 5 6 9H21c2-4 6-5 6-9z`,
  { weight: "edge" },
);
const feet = shape("feet", "part.foot", "bracket feet", bracketFeet(20, 252, FLOOR + 9, FOOT), {
  weight: "outline",
  detail: line([64, FLOOR + 12], [228, FLOOR + 12]),
});
const openings = drawerOpenings(CASE.x + 9, CASE.y + 5, CASE.width - 18, ROWS);
const drawers = drawerFronts("", openings, ROWS);
const dims = [
  { along: "x", from: CASE.x, to: CASE.x + CASE.width, at: 14, says: "width of the case" },
] as const;

/** Four long drawers, graduated, on bracket feet. */
export const chestOfDrawers: DrawnForm = {
  form: "form.chest-of-drawers",
  label: "chest of drawers",
  views: [
    {
      key: "front",
      label: "Front",
      width: 292,
      height: FOOT + 8,
      shapes: [
        top,
        caseAround("case", "part.carcase", "carcase, front edges and blades", CASE, openings.flat()),
        ...drawers.fronts,
        shape("handles", "part.handle", "handles", drawers.handles.outline, {
          detail: drawers.handles.detail,
        }),
        shape("plates", "part.escutcheon", "key plates", drawers.plates.outline, {
          detail: drawers.plates.detail,
        }),
        moulding,
        feet,
      ],
      ground: GROUND,
      dimensions: dims,
    },
    {
      key: "back",
      label: "Back",
      width: 292,
      height: FOOT + 8,
      shapes: [
        shape("top", "part.top", "top, rear edge", `M15 30h262v9h-262z`, {
          weight: "outline",
          detail: grain(20, 30, 252, 9, 1),
        }),
        ...caseBack("", CASE, 4),
        shape("bottom", "part.case-bottom", "case bottom, rear edge", `M27 ${FLOOR}h238v8h-238z`),
        shape(
          "feet",
          "part.foot",
          "rear feet",
          `M21 ${FLOOR + 8}h46l-6 10-18 6v${FOOT - FLOOR - 24}h-22zM271 ${FLOOR + 8}h-46l6 10 18 6v${FOOT - FLOOR - 24}h22z`,
          { weight: "outline" },
        ),
      ],
      ground: GROUND,
      dimensions: dims,
    },
    drawerView,
    {
      key: "inside",
      label: "Inside",
      width: 292,
      height: FOOT + 8,
      shapes: [top, ...caseInside("", CASE, 9, ROWS), moulding, feet],
      ground: GROUND,
      dimensions: [],
    },
  ],
};
