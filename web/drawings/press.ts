import { caseBack } from "./case-back.ts";
import { caseAround, type DrawerRow, drawerFronts, drawerOpenings, heightOfRows } from "./case-front.ts";
import { door } from "./door.ts";
import { drawerView } from "./drawer-view.ts";
import { many } from "./hardware.ts";
import { bracketFeet } from "./legs.ts";
import { box, grain, line } from "./pen.ts";
import { type DrawnForm, shape } from "./shape.ts";

/** What sets a clothes press and a wardrobe apart: how high the doors are and what stands below them. */
interface Plan {
  readonly form: string;
  readonly label: string;
  readonly doors: number;
  readonly rows: readonly DrawerRow[];
  /** Sliding trays behind the doors; else hanging space. */
  readonly trays: boolean;
}

const X = 32;
const WIDTH = 228;
const TOP = 42;

/** A cupboard of two doors over drawers, in two stages, with cornice and bracket feet. */
function cupboard({ form, label, doors, rows, trays }: Plan): DrawnForm {
  const upper = { x: X + 5, y: TOP, width: WIDTH - 10, height: doors + 10 };
  const lower = { x: X, y: TOP + upper.height + 9, width: WIDTH, height: heightOfRows(rows) + 9 };
  const base = lower.y + lower.height;
  const foot = base + 36;
  const ground = line([8, foot + 0.8], [284, foot + 0.8]);
  const size = { width: 292, height: foot + 8 };
  const openings = drawerOpenings(X + 9, lower.y + 5, WIDTH - 18, rows);
  const drawers = drawerFronts("", openings, rows);
  const leaf = (upper.width - 16) / 2;
  const left = door("left", "left door", upper.x + 8, upper.y + 5, leaf, doors, "right");
  const right = door("right", "right door", upper.x + 8 + leaf, upper.y + 5, leaf, doors, "left");
  const cornice = shape(
    "cornice",
    "part.cornice",
    "cornice",
    `M18 20h256v4c-2 6-10 5-12 10-1 4-5 4-7 8H37c-2-4-6-4-7-8-2-5-10-4-12-10z`,
    { weight: "outline", detail: line([18, 24], [274, 24]) + line([30, 34], [262, 34]) },
  );
  const waist = shape(
    "waist",
    "part.moulding",
    "waist moulding",
    `M${X + 5} ${lower.y - 9}h${WIDTH - 10}c1 5 5 4 6 9H${X - 1}c1-5 5-4 6-9z`,
  );
  const moulding = shape(
    "base-moulding",
    "part.moulding",
    "base moulding",
    `M${X} ${base}h${WIDTH}c0 4 4 5 6 8H${X - 6}c2-3 6-4 6-8z`,
  );
  const feet = shape("feet", "part.foot", "bracket feet", bracketFeet(X - 7, WIDTH + 14, base + 8, foot), {
    weight: "outline",
  });
  const lowerCase = (plates: { outline: string; detail: string }) => [
    caseAround("lower", "part.lower-case", "lower case", lower, openings.flat()),
    ...drawers.fronts,
    shape("handles", "part.handle", "handles", drawers.handles.outline, { detail: drawers.handles.detail }),
    shape("plates", "part.escutcheon", "key plates", plates.outline, { detail: plates.detail }),
    moulding,
    feet,
  ];
  const openDoor = (side: -1 | 1) => {
    const hinge = side < 0 ? upper.x + 8 : upper.x + upper.width - 8;
    const reach = hinge + side * 24;
    return `M${hinge} ${upper.y + 5}L${reach} ${upper.y - 3}V${upper.y + doors + 14}L${hinge} ${upper.y + 5 + doors}z`;
  };
  const inside = { x: upper.x + 8, y: upper.y + 5, width: upper.width - 16 };
  const levels = trays ? [0.2, 0.4, 0.6, 0.8] : [0.12];
  const fitted = trays
    ? shape(
        "trays",
        "part.tray",
        "sliding trays",
        levels
          .map((t) => box(inside.x + 8, inside.y + doors * t + 6, inside.width - 16, doors * 0.2 - 10))
          .join(""),
        {
          detail: levels
            .map((t) =>
              grain(inside.x + 14, inside.y + doors * t + 8, inside.width - 28, doors * 0.2 - 14, 1),
            )
            .join(""),
        },
      )
    : shape(
        "shelf",
        "part.shelf",
        "shelf and peg rail",
        box(inside.x + 6, inside.y + doors * 0.14, inside.width - 12, 5),
        {
          detail: [0.16, 0.38, 0.62, 0.84]
            .map((t) =>
              line(
                [inside.x + inside.width * t, inside.y + doors * 0.14 + 8],
                [inside.x + inside.width * t, inside.y + doors * 0.14 + 15],
              ),
            )
            .join(""),
        },
      );
  return {
    form,
    label,
    views: [
      {
        key: "front",
        label: "Front",
        ...size,
        shapes: [
          cornice,
          caseAround("upper", "part.upper-case", "upper case", upper, [
            { x: inside.x, y: inside.y, width: inside.width, height: doors },
          ]),
          ...left.shapes,
          ...right.shapes,
          shape("hinges", "part.hinge", "hinges", left.hinges + right.hinges),
          waist,
          ...lowerCase(many([drawers.plates, right.plate])),
        ],
        ground,
        dimensions: [{ along: "x", from: X, to: X + WIDTH, at: 10, says: "width of the lower case" }],
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
            "M18 20h19v22h-2c-2-4-4-4-5-8-2-5-10-4-12-10zM274 20h-19v22h2c2-4 4-4 5-8 2-5 10-4 12-10z",
            { weight: "outline" },
          ),
          ...caseBack("upper-", { ...upper, height: upper.height + 9 }, 4, "y", {
            side: "upper case sides, rear edges",
            back: "back boards of the upper case",
          }),
          ...caseBack("lower-", lower, 2, "x", {
            side: "lower case sides, rear edges",
            back: "back boards of the lower case",
          }),
          shape("bottom", "part.case-bottom", "case bottom, rear edge", box(X, base, WIDTH, 7)),
          shape(
            "feet",
            "part.foot",
            "rear feet",
            `M${X - 6} ${base + 7}h46l-6 10-18 5v${foot - base - 22}h-22zM${X + WIDTH + 6} ${base + 7}h-46l6 10 18 5v${foot - base - 22}h22z`,
            { weight: "outline" },
          ),
        ],
        ground,
        dimensions: [],
      },
      {
        key: "inside",
        label: "Doors open",
        ...size,
        shapes: [
          cornice,
          caseAround("upper", "part.upper-case", "upper case", upper, [
            { x: inside.x, y: inside.y, width: inside.width, height: doors },
          ]),
          shape("back", "part.back", "back boards, inside", box(inside.x, inside.y, inside.width, doors), {
            detail: [0.25, 0.5, 0.75]
              .map((t) =>
                line(
                  [inside.x + inside.width * t, inside.y],
                  [inside.x + inside.width * t, inside.y + doors],
                ),
              )
              .join(""),
          }),
          fitted,
          waist,
          ...lowerCase(drawers.plates),
          shape("doors", "part.door", "doors, open", openDoor(-1) + openDoor(1), { weight: "outline" }),
        ],
        ground,
        dimensions: [],
      },
      drawerView,
    ],
  };
}

/** A clothes press: doors with sliding trays behind them over two rows of drawers. */
export const press = cupboard({
  form: "form.press",
  label: "clothes press",
  doors: 148,
  rows: [{ height: 34, count: 2 }, { height: 42 }],
  trays: true,
});

/** A wardrobe: doors of nearly full length over one row of drawers. */
export const wardrobe = cupboard({
  form: "form.wardrobe",
  label: "wardrobe",
  doors: 214,
  rows: [{ height: 38, count: 2 }],
  trays: false,
});
