import { box, dot, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, span, tell, toned } from "../mark.ts";

/** Two boards nailed together, cut through along the nail. */
const boards = (): readonly Mark[] => [...cut(box(16, 58, 208, 44)), ...cut(box(16, 102, 208, 104))];

/** A nail in its hole, from the upper face down; the wood round an old hole is dark. */
const nail = (x: number, half: number): readonly Mark[] => [
  body(polygon([x - half, 58], [x + half, 58], [x + 1.5, 182], [x - 1.5, 182]), "edge"),
  body(
    polygon([x - half - 12, 58], [x - half - 8, 50], [x, 46], [x + half + 9, 51], [x + half + 12, 58]),
    "edge",
  ),
];

const darkAround = (x: number, half: number): readonly Mark[] => {
  const d = polygon([x - half - 9, 58], [x + half + 9, 58], [x + 7, 190], [x - 7, 190]);
  return [body(d, "detail"), toned(d, "dark")];
};

export const firstHole: Drawing = {
  title: "Nail in its first hole",
  tells: "One hole, dark at its edge, fits the nail closely; there is no second hole beside it.",
  draw: () => [
    ...boards(),
    ...darkAround(120, 9),
    ...nail(120, 9),
    tell([190, 26], [139, 66]),
    tell([190, 228], [127, 176]),
  ],
};

export const nailBesideOlderHole: Drawing = {
  title: "Later nail beside an older hole",
  tells:
    "A nail stands in clean wood; next to it an empty hole has dark edges. The later nail dates only itself.",
  draw: () => [
    ...boards(),
    ...darkAround(82, 9),
    body(polygon([73, 58], [91, 58], [84, 176], [80, 176]), "edge"),
    body(box(152, 58, 12, 116), "edge"),
    body(box(140, 51, 36, 7), "edge"),
    tell([36, 26], [74, 62]),
    tell([212, 26], [168, 60]),
  ],
};

/** Two boards pulled apart: the holes of one do not meet those of the other. */
export const holesMissRebate: Drawing = {
  title: "Nail holes that miss those of the rebate",
  tells: "The holes of the back board and those of the rebate do not line up.",
  draw: (level) => {
    const board = [46, 104, 168];
    const rebate = [64, 126, 186];
    return [
      body(box(16, 46, 208, 62)),
      ...(level === "full"
        ? [detail(row(3, (i) => line([24, 60 + 17 * i], [200 - 12 * i, 62 + 17 * i])))]
        : []),
      body(box(16, 148, 208, 20), "edge"),
      body(box(16, 168, 208, 34)),
      ...board.flatMap((x) => [toned(dot(x, 96, 5), "dark"), edge(dot(x, 96, 5))]),
      ...rebate.flatMap((x) => [toned(dot(x, 158, 5), "dark"), edge(dot(x, 158, 5))]),
      knife(board.map((x) => line([x, 104], [x, 186])).join("")),
      ...board.map((x, i) => span([x, 180], [rebate[i] as number, 180])),
    ];
  },
};

/** Tack holes along the edge of a seat rail: few for a new rail, a riddle for an old one. */
export const fewTackHoles: Drawing = {
  title: "Tack holes in a seat rail",
  tells:
    "An old rail (above) is riddled by many generations of covers; a rail with one row of holes has had few.",
  draw: (level) => {
    const many = level === "small" ? 18 : 52;
    return [
      body(box(16, 40, 208, 66)),
      body(box(16, 134, 208, 66)),
      ...Array.from({ length: many }, (_, i) =>
        body(
          dot(24 + ((i * 53) % 192), 48 + ((i * i * 7 + i * 5) % 26), level === "small" ? 3 : 1.7),
          "edge",
        ),
      ),
      ...Array.from({ length: level === "small" ? 5 : 9 }, (_, i) =>
        body(dot(30 + (level === "small" ? 45 : 22.5) * i, 146, level === "small" ? 3 : 1.7), "edge"),
      ),
      tell([206, 20], [178, 46]),
      tell([206, 222], [170, 150]),
    ];
  },
};
