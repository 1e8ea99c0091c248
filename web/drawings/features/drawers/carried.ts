import { box, dot, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { CORNER, corner } from "../joints/corner.ts";
import {
  body,
  cut,
  type Detail,
  type Drawing,
  detail,
  edge,
  type Mark,
  says,
  span,
  tell,
  toned,
} from "../mark.ts";

const { x, right, top } = CORNER;

/** The groove along the outside of a side: it stops short of the front. */
const GROOVE = { from: x + 46, top: top + 50, foot: top + 78 } as const;

const grooved = (level: "small" | "full"): readonly Mark[] => [
  ...corner({ lap: 0, tails: [] }, level),
  body(box(GROOVE.from, GROOVE.top, right - GROOVE.from, GROOVE.foot - GROOVE.top), "outline"),
];

export const sideHungDrawer: Drawing = {
  title: "Side-hung drawer",
  tells: "A groove along the outside of the side runs on a batten fixed to the case.",
  draw: (level) => [
    ...grooved(level),
    edge(line([GROOVE.from, GROOVE.top + 6], [right, GROOVE.top + 6])),
    body(polygon([150, 214], [230, 214], [230, 234], [150, 234])),
    body(polygon([150, 214], [230, 214], [238, 206], [158, 206]), "edge"),
    body(polygon([230, 214], [238, 206], [238, 226], [230, 234]), "edge"),
    says(144, 230, "batten", "end"),
    tell([200, 22], [190, GROOVE.top + 2]),
    tell([176, 204], [176, GROOVE.foot + 3]),
  ],
};

export const pluggedSideGroove: Drawing = {
  title: "Plugged groove in a drawer side",
  tells: "A strip of other wood fills the old groove: once side-hung, the drawer was converted.",
  draw: (level) => [
    ...grooved(level),
    toned(box(GROOVE.from, GROOVE.top, right - GROOVE.from, GROOVE.foot - GROOVE.top), "dark"),
    tell([200, 22], [190, GROOVE.top + 4]),
    tell([150, 226], [GROOVE.from + 3, GROOVE.foot - 2]),
  ],
};

/** The case cut through from front (left) to back, with the drawers out. */
const caseSection = (): readonly Mark[] => [
  body(box(20, 20, 202, 196), "edge"),
  ...cut(box(210, 20, 12, 196)),
  says(30, 234, "front", "start"),
  says(222, 234, "back", "end"),
];

export const dustboards: Drawing = {
  title: "Dustboards in housings",
  tells:
    "A thin board behind each rail is let into the case side and stops about three quarters of the way back.",
  draw: (level) => {
    const at = [76, 148];
    return [
      ...caseSection(),
      ...at.flatMap((y) => [
        ...cut(box(20, y, 34, 14)),
        ...cut(box(54, y + 3, 100, 8), "edge"),
        detail(line([154, y + 3], [210, y + 3]) + line([154, y + 11], [210, y + 11])),
      ]),
      ...(level === "full" ? [detail(row(3, (i) => line([64, 40 + 66 * i], [190, 42 + 66 * i])))] : []),
      span([54, 120], [154, 120]),
      tell([190, 190], [156, 161]),
    ];
  },
};

export const nailedRunners: Drawing = {
  title: "Nailed runners and no dustboard",
  tells:
    "A strip is nailed to the case side behind the front rail; the nails often split the side. Nothing closes the case between the drawers.",
  draw: (level) => {
    const y = 118;
    return [
      ...caseSection(),
      ...(level === "full"
        ? [
            detail(
              row(
                5,
                (i) =>
                  line([58 + 30 * i, 30], [60 + 30 * i, y - 8]) +
                  line([56 + 31 * i, y + 30], [58 + 31 * i, 206]),
              ),
            ),
          ]
        : []),
      ...cut(box(20, y - 4, 26, 22)),
      body(box(46, y, 158, 16)),
      ...[74, 124, 176].flatMap((nx) => [body(dot(nx, y + 8, 4), "edge")]),
      edge(`M124 ${y + 16}l3 20 -2 18 3 26`),
      tell([172, 196], [129, y + 52]),
      tell([150, 84], [126, y + 2]),
    ];
  },
};

export const telescopicSlides: Drawing = {
  title: "Telescopic steel slides",
  tells: "Steel channels run one in the other, screwed to the side and to the case.",
  draw: () => [
    body(box(86, 52, 140, 116)),
    body(box(14, 96, 132, 26)),
    body(box(70, 100, 112, 18)),
    body(box(120, 103, 104, 12)),
    ...[30, 56].map((cx) => body(dot(cx, 109, 4), "edge")),
    ...[196, 212].map((cx) => body(dot(cx, 109, 3), "edge")),
    edge(line([82, 104], [82, 114]) + line([132, 105], [132, 113])),
    tell([60, 200], [84, 124]),
    tell([190, 200], [150, 120]),
  ],
};

/** The undersides of three drawers laid side by side, each dark with age, dull or pale. */
const undersides = (tones: readonly ("dark" | "dots" | "pale")[], level: Detail): readonly Mark[] => [
  ...tones.flatMap((tone, i): Mark[] => {
    const y = 16 + 74 * i;
    return [
      body(box(54, y, 172, 54)),
      ...(tone === "pale" ? [] : [toned(box(62, y + 5, 156, 38), tone)]),
      edge(box(62, y + 5, 156, 38)),
      body(box(54, y + 43, 172, 11), "edge"),
    ];
  }),
  ...(level === "full" ? [says(48, 46, "top", "end"), says(48, 194, "lowest", "end")] : []),
];

export const lowestDrawerNotDarker: Drawing = {
  title: "Undersides of the drawers side by side",
  tells: "The lowest hangs over open air and should be the darkest; here all three are alike.",
  draw: (level) => [...undersides(["dots", "dots", "dots"], level), tell([30, 228], [60, 206])],
};

export const liningsOfDifferentTone: Drawing = {
  title: "One lining of another tone",
  tells: "The same wood, but one drawer is paler than its fellows.",
  draw: (level) => [...undersides(["dark", "pale", "dark"], level), tell([18, 132], [60, 118])],
};
