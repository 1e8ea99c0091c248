import { box, dot, grain, line, polygon } from "../../pen.ts";
import { arc, row } from "../curves.ts";
import {
  body,
  cut,
  type Detail,
  type Drawing,
  detail,
  edge,
  knife,
  type Mark,
  span,
  tell,
  toned,
} from "../mark.ts";

const panel = (level: Detail): readonly Mark[] => [
  body(box(16, 30, 208, 176)),
  ...(level === "full" ? [detail(grain(20, 34, 200, 168, 7))] : []),
];

export const stringing: Drawing = {
  title: "Stringing",
  tells: "A narrow strip of one width is let into a groove and turns the corner in a mitre.",
  draw: (level) => [
    ...panel(level),
    body(`${box(44, 58, 152, 120)}${box(51, 65, 138, 106)}`),
    edge(
      line([44, 58], [51, 65]) +
        line([196, 58], [189, 65]) +
        line([44, 178], [51, 171]) +
        line([196, 178], [189, 171]),
    ),
    span([120, 58], [120, 65]),
    tell([30, 14], [47, 60]),
  ],
};

export const lineAndBerry: Drawing = {
  title: "Line and berry inlay",
  tells: "Thin lines struck with compasses, each arc of one of a few radii, end in round berries.",
  draw: (level) => {
    const arcs: readonly (readonly [number, number, number, number, number])[] = [
      [120, 206, 88, 180, 270],
      [120, 206, 88, 270, 360],
      [64, 118, 52, -30, 90],
      [176, 118, 52, 90, 210],
      [120, 60, 40, 20, 160],
    ];
    const ends: readonly (readonly [number, number])[] = [
      [109, 92],
      [131, 92],
      [64, 170],
      [176, 170],
      [82, 74],
      [158, 74],
    ];
    return [
      ...panel(level),
      outlineOf(arcs),
      ...ends.flatMap(([x, y]) => [
        body(dot(x, y, 7)),
        ...(level === "full"
          ? [body(dot(x - 11, y + 9, 5), "edge"), body(dot(x + 11, y + 9, 5), "edge")]
          : []),
      ]),
      knife(arc(120, 206, 88, 180, 270)),
      tell([24, 14], [60, 140]),
    ];
  },
};

const outlineOf = (arcs: readonly (readonly [number, number, number, number, number])[]): Mark =>
  edge(
    arcs.map(([cx, cy, r, from, to]) => arc(cx, cy, r, from, to) + arc(cx, cy, r - 3.5, from, to)).join(""),
  );

export const bellflower: Drawing = {
  title: "Bellflowers",
  tells: "Three separate petals to a flower, smaller downwards, linked by dots.",
  draw: (level) => {
    const flower = (y: number, s: number): readonly Mark[] => [
      body(
        `M120 ${y}C${120 - 9 * s} ${y + 14 * s} ${120 - 8 * s} ${y + 30 * s} 120 ${y + 40 * s}C${120 + 8 * s} ${y + 30 * s} ${120 + 9 * s} ${y + 14 * s} 120 ${y}z`,
      ),
      body(
        `M${120 - 4 * s} ${y + 2 * s}C${120 - 22 * s} ${y + 4 * s} ${120 - 28 * s} ${y + 20 * s} ${120 - 26 * s} ${y + 32 * s}C${120 - 14 * s} ${y + 28 * s} ${120 - 10 * s} ${y + 16 * s} ${120 - 4 * s} ${y + 2 * s}z`,
      ),
      body(
        `M${120 + 4 * s} ${y + 2 * s}C${120 + 22 * s} ${y + 4 * s} ${120 + 28 * s} ${y + 20 * s} ${120 + 26 * s} ${y + 32 * s}C${120 + 14 * s} ${y + 28 * s} ${120 + 10 * s} ${y + 16 * s} ${120 + 4 * s} ${y + 2 * s}z`,
      ),
    ];
    return [
      body(polygon([70, 10], [170, 10], [156, 230], [84, 230])),
      ...flower(20, 1.25),
      body(dot(120, 78, 4.5), "edge"),
      ...flower(88, 1.05),
      body(dot(120, 138, 4), "edge"),
      ...flower(146, 0.86),
      ...(level === "full" ? [body(dot(120, 189, 3.5), "edge"), ...flower(196, 0.62)] : []),
      tell([216, 40], [150, 52]),
      tell([216, 110], [126, 78]),
    ];
  },
};

export const freshInlayRecess: Drawing = {
  title: "Fresh inlay recess",
  tells: "Cut through: the sides of the bed are bright, where the face of the board is dark with age.",
  draw: () => [
    body(box(16, 80, 208, 116)),
    toned(box(16, 80, 208, 18), "dark"),
    body("M84 80H156V118H84z"),
    ...cut("M88 80H152V112H88z"),
    detail(row(3, (i) => line([24, 128 + 22 * i], [206, 130 + 22 * i]))),
    knife("M84 80V118H156V80"),
    tell([50, 30], [83, 104]),
    tell([206, 30], [186, 88]),
  ],
};

export const inlayCrossesRepair: Drawing = {
  title: "Inlay that crosses a repair",
  tells: "The line runs unbroken over a patch and a crack that should have broken it.",
  draw: (level) => [
    ...panel(level),
    body(polygon([66, 84], [116, 78], [122, 152], [70, 160])),
    detail(row(level === "small" ? 2 : 4, (i) => line([76 + 11 * i, 88], [80 + 11 * i, 152]))),
    edge("M168 30l6 30 -8 34 10 40 -6 34 8 38"),
    body(box(16, 112, 208, 9)),
    tell([110, 14], [120, 110]),
    tell([206, 14], [173, 110]),
  ],
};

/** Ends of sticks glued into one block and sliced across. */
export const stickMosaic: Drawing = {
  title: "Mosaic of end-grain sticks",
  tells: "The picture is built of small squares of end grain, all alike in every slice.",
  draw: (level) => {
    const side = level === "small" ? 26 : 13;
    const count = Math.floor(182 / side);
    const dark = (i: number, j: number) => Math.abs(i - (count - 1) / 2) + Math.abs(j - (count - 1) / 2);
    const cells = (wanted: boolean): string =>
      row(count, (i) =>
        row(count, (j) =>
          (Math.round(dark(i, j)) % 3 === 0) === wanted ? box(28 + side * i, 28 + side * j, side, side) : "",
        ),
      );
    return [
      body(box(20, 20, count * side + 16, count * side + 16)),
      edge(cells(true) + cells(false)),
      toned(cells(true), "dark"),
      span([28, 226], [28 + side, 226]),
      tell([228, 100], [28 + count * side - side / 2, 100]),
    ];
  },
};
