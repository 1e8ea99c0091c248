import { box, dot, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import {
  body,
  cut,
  type Detail,
  type Drawing,
  detail,
  edge,
  knife,
  type Mark,
  says,
  span,
  tell,
  toned,
} from "../mark.ts";

/** A butt hinge laid open, seen from the knuckle side; below it the knuckle from its end. */
const BUTT = { top: 18, foot: 138, leaf: 62, knuckle: 9, x: 96 } as const;

/** Joints of the knuckle: two leaves take turns. */
const JOINTS = 5;

const leaf = (side: -1 | 1): string => {
  const { x, top, foot, leaf: width, knuckle } = BUTT;
  const from = x + side * knuckle;
  return polygon([from, top], [from + side * width, top], [from + side * width, foot], [from, foot]);
};

const screwHoles = (side: -1 | 1): readonly Mark[] => {
  const { x, top, foot, knuckle } = BUTT;
  return [0.18, 0.5, 0.82].flatMap((t, i) => {
    const cx = x + side * (knuckle + (i === 1 ? 40 : 22));
    const cy = top + (foot - top) * t;
    return [body(dot(cx, cy, 8.5), "edge"), edge(dot(cx, cy, 4))];
  });
};

/** Both leaves, their holes and the knuckle between them. */
function butt(): readonly Mark[] {
  const { x, top, foot, knuckle } = BUTT;
  const step = (foot - top) / JOINTS;
  return [
    body(leaf(-1)),
    body(leaf(1)),
    ...screwHoles(-1),
    ...screwHoles(1),
    body(box(x - knuckle, top, 2 * knuckle, foot - top)),
    edge(
      row(JOINTS - 1, (i) => line([x - knuckle, top + step * (i + 1)], [x + knuckle, top + step * (i + 1)])),
    ),
  ];
}

const fromEnd = (level: Detail): readonly Mark[] =>
  level === "full" ? [says(214, 232, "from the end", "end")] : [];

export const castIronButt: Drawing = {
  title: "Cast butt hinge",
  tells: "A mould seam runs along the knuckle; leaf and knuckle are one solid, grainy casting.",
  draw: (level) => {
    const { x, top, foot, knuckle } = BUTT;
    return [
      ...butt(),
      toned(leaf(-1), "dots"),
      toned(leaf(1), "dots"),
      ...screwHoles(-1),
      ...screwHoles(1),
      ...cut(`M24 186H82A20 20 0 1 1 82 204H24z`),
      body(dot(100, 195, 8), "edge"),
      body("M118 187l8 -3v20l-8 -3z", "edge"),
      knife(line([x + knuckle - 3, top], [x + knuckle - 3, foot])),
      tell([206, 52], [x + knuckle, 62]),
      tell([188, 186], [128, 194]),
      ...fromEnd(level),
    ];
  },
};

export const wroughtButt: Drawing = {
  title: "Wrought butt hinge",
  tells: "Each leaf is folded round the pin and lapped back on itself; edges are filed.",
  draw: (level) => [
    ...butt(),
    detail(
      row(
        level === "small" ? 3 : 8,
        (i) =>
          line([34 + 1.5 * i, 22], [30 + 1.5 * i, 30]) + line([150 + 1.4 * i, 126], [154 + 1.4 * i, 134]),
      ),
    ),
    // Two thicknesses that meet behind the knuckle.
    ...cut("M24 184H88C88 178 96 174 104 174A21 21 0 1 1 88 206H24V197H92A11 11 0 1 0 92 193H24z"),
    edge(line([24, 195], [90, 195])),
    body(dot(104, 195, 9), "edge"),
    tell([24, 226], [56, 197]),
    tell([186, 176], [127, 190]),
    ...fromEnd(level),
  ],
};

export const foldedSheetHinge: Drawing = {
  title: "Hinge of rolled sheet",
  tells: "The thin sheet is curled once round the pin, and the open seam shows along the knuckle.",
  draw: (level) => {
    const { x, top, foot, knuckle } = BUTT;
    return [
      ...butt(),
      knife(line([x - knuckle + 4, top], [x - knuckle + 4, foot])),
      ...cut("M24 204H104A18 18 0 1 0 87 181L92 184A12 12 0 1 1 104 198H24z"),
      body(dot(104, 186, 9), "edge"),
      tell([22, 58], [x - knuckle + 2, 66]),
      tell([52, 168], [85, 182]),
      ...fromEnd(level),
    ];
  },
};

export const extrudedHinge: Drawing = {
  title: "Hinge of drawn or extruded section",
  tells: "Fine straight lines run the whole length of the knuckle, as from a drawn bar.",
  draw: (level) => {
    const { x, top, foot, knuckle } = BUTT;
    return [
      ...butt(),
      detail(
        row(level === "small" ? 3 : 7, (i) =>
          line(
            [x - 7 + (level === "small" ? 7 : 2.3) * i, top],
            [x - 7 + (level === "small" ? 7 : 2.3) * i, foot],
          ),
        ),
      ),
      ...cut("M24 190H84A20 20 0 1 1 84 202H24z"),
      body(dot(103, 196, 8), "edge"),
      tell([206, 60], [x + knuckle + 1, 68]),
      ...fromEnd(level),
    ];
  },
};

export const loosePinHinge: Drawing = {
  title: "Loose-pin hinge",
  tells: "The pin has a knob and draws out upwards, so that the door can be lifted off.",
  draw: () => {
    const { x } = BUTT;
    const down = 74;
    return [
      body(polygon([x - 9, down], [x - 71, down], [x - 71, 204], [x - 9, 204])),
      body(polygon([x + 9, down], [x + 71, down], [x + 71, 204], [x + 9, 204])),
      ...[-1, 1].flatMap((side) =>
        [104, 139, 174].flatMap((cy, i) => [
          body(dot(x + side * (i === 1 ? 50 : 30), cy, 8.5), "edge"),
          edge(dot(x + side * (i === 1 ? 50 : 30), cy, 4)),
        ]),
      ),
      body(box(x - 9, down, 18, 130)),
      edge([100, 126, 152, 178].map((y) => line([x - 9, y], [x + 9, y])).join("")),
      body(box(x - 5, 34, 10, 42), "edge"),
      body(dot(x, 25, 10)),
      edge(line([x - 7, 35], [x + 7, 35])),
      body(`M${x - 9} 204H${x + 9}A9 11 0 0 1 ${x - 9} 204z`),
      tell([170, 22], [x + 12, 28]),
      tell([x + 22, 60], [x + 22, 36]),
    ];
  },
};

export const continuousHinge: Drawing = {
  title: "Continuous hinge",
  tells: "One narrow hinge runs along the whole edge, with a screw every few centimetres.",
  draw: (level) => {
    const count = level === "small" ? 4 : 8;
    const step = 208 / count;
    return [
      body(box(16, 84, 208, 34)),
      body(box(16, 128, 208, 34)),
      body(box(16, 116, 208, 14)),
      edge(
        row(count * 2 - 1, (i) => line([16 + (step / 2) * (i + 1), 116], [16 + (step / 2) * (i + 1), 130])),
      ),
      ...Array.from({ length: count }, (_, i) => [
        body(dot(16 + step * (i + 0.5), 100, 5), "edge"),
        body(dot(16 + step * (i + 0.5), 146, 5), "edge"),
      ]).flat(),
      span([16, 66], [224, 66]),
    ];
  },
};
