import { box, dot, ellipse, grain, line, type Point } from "../../pen.ts";
import { BATWING, bail, bothHalves } from "../handles/plate-outlines.ts";
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

/** A drawer front squarely before us. */
const FRONT = { x: 14, y: 40, width: 212, height: 150 } as const;
const front = (level: Detail): readonly Mark[] => [
  body(box(FRONT.x, FRONT.y, FRONT.width, FRONT.height)),
  ...(level === "full"
    ? [detail(grain(FRONT.x + 4, FRONT.y + 4, FRONT.width - 8, FRONT.height - 8, 6))]
    : []),
];

const ovalHandle = (cx: number, cy: number): readonly Mark[] => [
  body(ellipse(cx, cy, 46, 27)),
  edge(ellipse(cx, cy, 41, 22)),
  body(bail(cx, cy - 4, 38, 36, 3, 6)),
  body(dot(cx - 38, cy - 4, 5)),
  body(dot(cx + 38, cy - 4, 5)),
];

/** A plug of other grain flush with the front. */
const plug = (x: number, y: number, r = 7): readonly Mark[] => [
  body(dot(x, y, r), "edge"),
  detail(
    line([x - r * 0.4, y - r * 0.8], [x - r * 0.4, y + r * 0.8]) +
      line([x + r * 0.4, y - r * 0.8], [x + r * 0.4, y + r * 0.8]),
  ),
];

export const ghostOfEarlierPlate: Drawing = {
  title: "Ghost of an earlier plate",
  tells: "An outline in tone or dent round the handle does not fit the present plate.",
  draw: (level) => {
    const ghost = bothHalves(120, 112, BATWING, 1.06);
    return [
      ...front(level),
      body(ghost, "detail"),
      toned(ghost, "dots"),
      knife(ghost),
      ...ovalHandle(120, 112),
      tell([206, 22], [196, 94]),
    ];
  },
};

export const haloOfPolish: Drawing = {
  title: "Halo of metal polish",
  tells: "A soft pale edge follows the outline of the present plate on all sides.",
  draw: (level) => [
    ...front(level),
    body(ellipse(120, 112, 62, 43), "detail"),
    toned(ellipse(120, 112, 62, 43), "dots"),
    ...ovalHandle(120, 112),
    span([166, 100], [182, 100]),
    tell([206, 22], [172, 84]),
  ],
};

/** The outline where the plate sat before; further off in a small drawing, where a few millimetres would not show. */
const ghost = (level: Detail): string =>
  level === "small" ? ellipse(100, 96, 48, 29) : ellipse(109, 105, 46, 27);

export const plateRefixed: Drawing = {
  title: "Same plate fixed again off its place",
  tells: "The ghost has the outline of the present plate, shifted by a few millimetres.",
  draw: (level) => [
    ...front(level),
    body(ghost(level), "detail"),
    toned(ghost(level), "dots"),
    knife(ghost(level)),
    ...ovalHandle(122, 113),
    tell([24, 18], level === "small" ? [58, 78] : [72, 86]),
  ],
};

export const filledHolesByHandle: Drawing = {
  title: "Filled holes beside the handle",
  tells: "Two plugs of other grain stand outside the present plate: posts of another handle.",
  draw: (level) => [
    ...front(level),
    ...plug(52, 106),
    ...plug(188, 106),
    ...ovalHandle(120, 112),
    span([52, 212], [188, 212]),
    tell([30, 20], [48, 97]),
    tell([210, 20], [192, 97]),
  ],
};

export const holesInsideFront: Drawing = {
  title: "Extra holes on the inside of a front",
  tells: "Holes with no fitting in them now: their number and pitch draw the earlier handles.",
  draw: (level) => {
    const hole = (x: number, y: number, r: number): readonly Mark[] => [
      toned(dot(x, y, r), "dark"),
      edge(dot(x, y, r)),
    ];
    const nut = (x: number, y: number): readonly Mark[] => [
      body(box(x - 9, y - 9, 18, 18)),
      body(dot(x, y, 5), "edge"),
    ];
    return [
      ...front(level),
      ...nut(84, 108),
      ...nut(156, 108),
      ...hole(64, 116, 5),
      ...hole(176, 116, 5),
      span([64, 156], [176, 156]),
      knife(line([64, 124], [64, 160]) + line([176, 124], [176, 160])),
      says(120, 60, "inside"),
    ];
  },
};

export const plugsInsideOnly: Drawing = {
  title: "Plugs inside only",
  tells: "Cut through: the plugged holes run through the core and stop under the outer veneer.",
  draw: () => [
    ...cut(box(70, 20, 92, 190)),
    ...[74, 156].flatMap((y): Mark[] => [
      body(box(70, y - 10, 92, 20)),
      toned(box(70, y - 10, 92, 20), "dark"),
    ]),
    ...cut(box(56, 20, 14, 190)),
    says(40, 116, "face", "end"),
    says(176, 116, "inside", "start"),
    tell([24, 40], [62, 72]),
    tell([216, 40], [164, 68]),
  ],
};

export const outerPlugUnderPlate: Drawing = {
  title: "Outer plug hidden by the present plate",
  tells: "With the plate moved aside, a plug stands in its outline: the hole goes through after all.",
  draw: (level) => [
    ...front(level),
    body(ellipse(88, 130, 58, 33), "detail"),
    toned(ellipse(88, 130, 58, 33), "dots"),
    ...plug(88, 130, 10),
    body(dot(46, 130, 4), "edge"),
    body(dot(130, 130, 4), "edge"),
    body(ellipse(160, 82, 58, 33)),
    edge(ellipse(160, 82, 52, 27)),
    edge(dot(118, 82, 4) + dot(202, 82, 4)),
    tell([60, 220], [84, 142]),
  ],
};

export const largeHoleBetweenTwo: Drawing = {
  title: "Large hole between two small",
  tells: "A hole of knob size stands between the two bolt holes of a bail: brass first, then a knob.",
  draw: (level) => {
    const hole = (x: number, r: number): readonly Mark[] => [
      toned(dot(x, 112, r), "dark"),
      edge(dot(x, 112, r)),
    ];
    return [
      ...front(level),
      ...hole(72, 6),
      ...hole(120, 13),
      ...hole(168, 6),
      span([72, 148], [168, 148]),
      tell([160, 20], [126, 98]),
    ];
  },
};

export const evenColourUnderHandle: Drawing = {
  title: "Colour under the handle",
  tells:
    "With the plate off, the wood beneath should be lighter or cleaner (left); an even colour (right) speaks for a handle put on lately.",
  draw: (level) => {
    const half = (x: number) => box(x, FRONT.y, 102, FRONT.height);
    const left = level === "small" ? ellipse(65, 112, 44, 40) : ellipse(65, 112, 36, 24);
    return [
      body(half(14)),
      toned(`${half(14)}${left}`, "dark"),
      edge(half(14)),
      body(half(124)),
      toned(half(124), "dark"),
      edge(half(124)),
      ...[65, 175].flatMap((cx) => [body(dot(cx - 26, 112, 4), "edge"), body(dot(cx + 26, 112, 4), "edge")]),
      tell([40, 18], level === "small" ? [50, 70] : [58, 94]),
      tell([206, 18], [182, 110]),
      ...(level === "full" ? [says(65, 210, "cleaner"), says(175, 210, "even")] : []),
    ];
  },
};

/** The inside of a front with the marks of bent pins beside a hole. */
export const splitPinDents: Drawing = {
  title: "Dents of a split pin",
  tells: "Two small dents or scratches run out from a hole: the ends of a pin were bent over here.",
  draw: (level) => {
    const dent = (from: Point, to: Point): readonly Mark[] => [
      edge(line(from, to)),
      detail(
        line([from[0], from[1] + 4], [to[0], to[1] + 3]) + line([from[0], from[1] - 4], [to[0], to[1] - 3]),
      ),
    ];
    return [
      ...front(level),
      toned(dot(120, 114, 9), "dark"),
      edge(dot(120, 114, 9)),
      ...dent([108, 110], [66, 96]),
      ...dent([132, 119], [176, 134]),
      tell([50, 20], [78, 95]),
      tell([196, 216], [166, 136]),
      says(196, 66, "inside"),
    ];
  },
};
