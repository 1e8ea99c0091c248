import { caseBack } from "./case-back.ts";
import { caseAround, type DrawerRow, drawerFronts, drawerOpenings, heightOfRows } from "./case-front.ts";
import { caseInside } from "./case-inside.ts";
import { drawerView } from "./drawer-view.ts";
import { cabriole, cabriolePad } from "./legs.ts";
import { bothSides, grain, line, mirrored } from "./pen.ts";
import { type DrawnForm, shape } from "./shape.ts";

const AXIS = 146;
const UPPER_ROWS: readonly DrawerRow[] = [
  { height: 22, count: 2 },
  { height: 25 },
  { height: 29 },
  { height: 34 },
];
const LOWER_ROWS: readonly DrawerRow[] = [{ height: 18 }, { height: 34, count: 3 }];
const UPPER = { x: 54, y: 36, width: 184, height: heightOfRows(UPPER_ROWS) + 9 };
const LOWER = { x: 46, y: UPPER.y + UPPER.height + 9, width: 200, height: heightOfRows(LOWER_ROWS) + 8 };
const KNEE = LOWER.y + LOWER.height;
const FLOOR = KNEE + 92;
const GROUND = line([14, FLOOR + 0.8], [278, FLOOR + 0.8]);

const cornice = shape(
  "cornice",
  "part.cornice",
  "cornice",
  "M34 16h224v4c-1 5-9 5-11 9-1 3-5 3-9 7H54c-4-4-8-4-9-7-2-4-10-4-11-9z",
  { weight: "outline", detail: line([34, 20], [258, 20]) + line([45, 29], [247, 29]) },
);
const waist = shape(
  "waist",
  "part.moulding",
  "waist moulding",
  `M54 ${LOWER.y - 9}h184c1 5 8 4 10 9H44c2-5 9-4 10-9z`,
);
/** Shaped apron: two lobes beside a middle arch, as far as the knees. */
const apron = shape(
  "apron",
  "part.apron",
  "shaped apron",
  (() => {
    const l = mirrored(AXIS, -1);
    const r = mirrored(AXIS, 1);
    const half = (p: typeof l, back: boolean) => {
      const run = [
        `${p(80, KNEE)}`,
        `${p(78, KNEE + 10)} ${p(70, KNEE + 4)} ${p(62, KNEE + 6)}`,
        `${p(50, KNEE + 9)} ${p(52, KNEE + 20)} ${p(40, KNEE + 20)}`,
        `${p(28, KNEE + 20)} ${p(31, KNEE + 7)} ${p(18, KNEE + 7)}`,
        `${p(9, KNEE + 7)} ${p(8, KNEE + 12)} ${p(0, KNEE + 12)}`,
      ];
      if (!back) return `M${run[0]}C${run[1]}C${run[2]}C${run[3]}C${run[4]}`;
      return `C${p(8, KNEE + 12)} ${p(9, KNEE + 7)} ${p(18, KNEE + 7)}C${p(31, KNEE + 7)} ${p(28, KNEE + 20)} ${p(40, KNEE + 20)}C${p(52, KNEE + 20)} ${p(50, KNEE + 9)} ${p(62, KNEE + 6)}C${p(70, KNEE + 4)} ${p(78, KNEE + 10)} ${p(80, KNEE)}z`;
    };
    return half(l, false) + half(r, true);
  })(),
  { weight: "outline", detail: grain(AXIS - 60, KNEE - 1, 120, 9, 1) },
);
const legs = shape(
  "legs",
  "part.leg",
  "legs",
  bothSides((side) => cabriole(AXIS + side * 80, KNEE, FLOOR, side)),
  { weight: "outline", detail: bothSides((side) => cabriolePad(AXIS + side * 80, FLOOR, side)) },
);
/** The rear legs, seen between the front ones. */
const rearLegs = bothSides((side) => cabriole(AXIS + side * 66, KNEE + 14, FLOOR - 5, side, 13));

const upper = drawerOpenings(UPPER.x + 7, UPPER.y + 5, UPPER.width - 14, UPPER_ROWS);
const lower = drawerOpenings(LOWER.x + 8, LOWER.y + 4, LOWER.width - 16, LOWER_ROWS);
const upperDrawers = drawerFronts("upper-", upper, UPPER_ROWS);
const lowerDrawers = drawerFronts("lower-", lower, LOWER_ROWS);
const inLower = lowerDrawers.fronts.map((front) => ({ ...front, label: `lower case, ${front.label}` }));
const size = { width: 292, height: FLOOR + 8 };

/** Upper case of two short and three long drawers on a lower case with cabriole legs. */
export const highChest: DrawnForm = {
  form: "form.high-chest",
  label: "high chest",
  views: [
    {
      key: "front",
      label: "Front",
      ...size,
      shapes: [
        cornice,
        caseAround("upper", "part.upper-case", "upper case", UPPER, upper.flat()),
        ...upperDrawers.fronts,
        waist,
        caseAround("lower", "part.lower-case", "lower case", LOWER, lower.flat()),
        ...inLower,
        shape(
          "handles",
          "part.handle",
          "handles",
          upperDrawers.handles.outline + lowerDrawers.handles.outline,
          {
            detail: upperDrawers.handles.detail + lowerDrawers.handles.detail,
          },
        ),
        shape(
          "plates",
          "part.escutcheon",
          "key plates",
          upperDrawers.plates.outline + lowerDrawers.plates.outline,
          {
            detail: upperDrawers.plates.detail + lowerDrawers.plates.detail,
          },
        ),
        apron,
        legs,
      ],
      ground: GROUND + rearLegs,
      dimensions: [
        { along: "x", from: UPPER.x, to: UPPER.x + UPPER.width, at: 8, says: "width of the upper case" },
      ],
    },
    {
      key: "back",
      label: "Back",
      ...size,
      shapes: [
        shape(
          "cornice",
          "part.cornice",
          "cornice, returns at the back",
          "M34 16h20v20h-6c-2-6-6-5-8-9-2-3-6-3-6-7zM258 16h-20v20h6c2-6 6-5 8-9 2-3 6-3 6-7z",
          {
            weight: "outline",
          },
        ),
        ...caseBack("upper-", { ...UPPER, height: UPPER.height + 7 }, 4, "x", {
          side: "upper case sides, rear edges",
          back: "back boards of the upper case",
        }),
        ...caseBack("lower-", { ...LOWER, y: LOWER.y - 2, height: LOWER.height + 12 }, 2, "x", {
          side: "lower case sides, rear edges",
          back: "back board of the lower case",
        }),
        shape(
          "legs",
          "part.leg",
          "rear legs",
          bothSides((side) => cabriole(AXIS + side * 80, KNEE + 8, FLOOR, side)),
          {
            weight: "outline",
          },
        ),
      ],
      ground: GROUND,
      dimensions: [],
    },
    drawerView,
    {
      key: "inside",
      label: "Inside",
      ...size,
      shapes: [
        cornice,
        ...caseInside("upper-", UPPER, 7, UPPER_ROWS),
        waist,
        ...caseInside("lower-", LOWER, 8, LOWER_ROWS),
        apron,
        legs,
      ],
      ground: GROUND,
      dimensions: [],
    },
  ],
};
