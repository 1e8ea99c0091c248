import { box, dot, grain, line, n, type Point, polygon } from "../../pen.ts";
import { FACE, faceBox } from "../board.ts";
import { arc, drift, open, row, run } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, says, tell, toned } from "../mark.ts";
import { swept } from "../oblique.ts";

const { x, y, width, height } = FACE;
const FOOT = y + height;

/** A bracket cut on a curve; its sawn edge is seen. */
const CURVE = run([196, 58], ["c", 150, 62, 132, 92, 116, 128], ["c", 100, 162, 70, 178, 30, 178]);
const THICK: Point = [22, 20];
/** Places along the curve, with the way its kerfs lean there. */
const ON_CURVE: readonly (readonly [number, number, number])[] = [
  [186, 59.4, -3],
  [176, 61.6, -1],
  [166, 65.4, 3],
  [156.5, 70.6, 6],
  [148, 77.2, 9],
  [140.6, 84.6, 5],
  [134, 92.8, 1],
  [128, 102, -4],
  [122.6, 113, -7],
  [117, 126, -2],
  [110.6, 138.4, 4],
  [103, 148.6, 8],
  [93.6, 157.6, 3],
  [82.6, 165, -3],
  [70.6, 170.8, -6],
  [58.6, 174.6, -1],
  [46, 176.8, 4],
];

export const bowSawMark: Drawing = {
  title: "Bow-saw mark on a curve",
  tells: "Kerfs on a curved edge wander and change their angle as the sawyer turned.",
  draw: (level) => {
    const shown = ON_CURVE.filter((_, i) => level === "full" || i % 3 === 0);
    const kerf = ([px, py, lean]: readonly [number, number, number]) =>
      line([px, py], [px + THICK[0] + lean, py + THICK[1] - lean * 0.4]);
    return [
      body(swept(CURVE, ...THICK)),
      body(`${open(CURVE)}L30 34H196z`),
      body(polygon([196, 34], [218, 54], [218, 78], [196, 58]), "edge"),
      ...(level === "full" ? [detail(grain(36, 40, 120, 60, 4))] : []),
      edge(shown.map(kerf).join(""), swept(CURVE, ...THICK)),
      knife(
        kerf(ON_CURVE[4] as readonly [number, number, number]) +
          kerf(ON_CURVE[8] as readonly [number, number, number]),
      ),
      tell([222, 128], [164, 98]),
      tell([206, 200], [142, 136]),
    ];
  },
};

export const rivenFace: Drawing = {
  title: "Riven face",
  tells:
    "The surface follows the grain, with small torn steps; the board is thicker at one edge, like a wedge.",
  draw: (level) => {
    const count = level === "small" ? 5 : 11;
    const fibre = (i: number): string => {
      const at = y + (height / (count + 1)) * (i + 1);
      const bow = 9 * drift(i);
      return `M${x} ${n(at)}C${x + 50} ${n(at + bow)} ${x + 104} ${n(at - bow)} ${x + width} ${n(at + bow * 0.5)}`;
    };
    const step = (sx: number, sy: number): string => `M${sx} ${sy}c16 -3 30 4 44 1l4 7c-14 3 -32 -2 -46 0`;
    return [
      body(polygon([x, FOOT], [x + width, FOOT], [x + width + 20, FOOT + 22], [x + 20, FOOT + 22])),
      body(polygon([x + width, y], [x + width + 5, y + 5], [x + width + 20, FOOT + 22], [x + width, FOOT])),
      body(faceBox(FACE)),
      detail(row(count, fibre), faceBox(FACE)),
      edge(step(x + 36, y + 40) + step(x + 110, y + 78) + step(x + 60, y + 118)),
      tell([x + 96, 20], [x + 80, y + 39]),
      knife(
        line([x + width, y], [x + width + 5, y + 5]) + line([x + width, FOOT], [x + width + 20, FOOT + 22]),
      ),
      tell([226, 20], [x + width + 5, y + 1]),
    ];
  },
};

export const pitAndCircularFaces: Drawing = {
  title: "Two sawn faces on one board",
  tells:
    "Old straight kerfs, darkened, on one face; clean circular-saw arcs on the other: the board was resawn.",
  draw: (level) => {
    const upper = box(16, 22, 200, 84);
    const lower = box(16, 134, 200, 84);
    const step = level === "small" ? 18 : 8;
    return [
      body(upper),
      toned(upper, "dark"),
      edge(
        row(
          Math.floor(200 / step),
          (i) => `M${n(18 + step * i + 2 * drift(i))} 106L${n(32 + step * i + 2 * drift(i, 1))} 22`,
        ),
        upper,
      ),
      body(lower),
      detail(
        row(Math.floor(260 / step), (i) => arc(10 + step * i - 150, 200, 150, -80, 80)),
        lower,
      ),
      edge(upper),
      knife(arc(120 - 150, 200, 150, -80, 80), lower),
      tell([228, 116], [182, 100]),
      tell([150, 116], [106, 136]),
      ...(level === "full" ? [says(226, 234, "other face", "end")] : []),
    ];
  },
};

export const brightKerf: Drawing = {
  title: "Bright saw cut on dark wood",
  tells: "The end is fresh and pale beside a face that has darkened: the part was cut after it aged.",
  draw: (level) => [
    body(polygon([x, y], [x + 160, y], [x + 160, FOOT], [x, FOOT])),
    toned(polygon([x, y], [x + 160, y], [x + 160, FOOT], [x, FOOT]), "dark"),
    edge(polygon([x, y], [x + 160, y], [x + 160, FOOT], [x, FOOT])),
    body(polygon([x + 160, y], [x + 194, y - 22], [x + 194, FOOT - 22], [x + 160, FOOT])),
    body(polygon([x, y], [x + 34, y - 22], [x + 194, y - 22], [x + 160, y])),
    toned(polygon([x, y], [x + 34, y - 22], [x + 194, y - 22], [x + 160, y]), "dark"),
    edge(polygon([x, y], [x + 34, y - 22], [x + 194, y - 22], [x + 160, y])),
    detail(
      row(level === "small" ? 4 : 11, (i) =>
        line(
          [x + 160, y + (level === "small" ? 30 : 12) * (i + 0.6)],
          [x + 194, y - 22 + (level === "small" ? 30 : 12) * (i + 0.6) + 3],
        ),
      ),
    ),
    knife(line([x + 160, y - 6], [x + 160, FOOT + 10])),
    tell([232, 216], [x + 182, FOOT - 40]),
    tell([60, 228], [x + 80, FOOT - 20]),
  ],
};

/** A quatrefoil: its four lobes as centre, radius and the angles between which each is seen. */
const LOBES = [0, 90, 180, 270].map((turn) => {
  const a = (turn * Math.PI) / 180;
  return { cx: 88 + 27 * Math.cos(a), cy: 108 + 27 * Math.sin(a), from: turn - 90, to: turn + 90 };
});
const LOBE = 27;
const WALL: Point = [9, 10];

const onLobe = ({ cx, cy }: { cx: number; cy: number }, degrees: number): Point => {
  const a = (degrees * Math.PI) / 180;
  return [cx + LOBE * Math.cos(a), cy + LOBE * Math.sin(a)];
};

export const machineFretwork: Drawing = {
  title: "Machine fretwork",
  tells:
    "Walls of an opening stand square and keep one even texture; the next one starts from a drilled hole.",
  draw: (level) => {
    const outline = `${LOBES.map(({ cx, cy, from, to }, i) => arc(cx, cy, LOBE, from, to).replace("M", i ? "L" : "M")).join("")}z`;
    const lines = LOBES.flatMap((lobe) =>
      Array.from({ length: level === "small" ? 9 : 22 }, (_, i) =>
        onLobe(lobe, lobe.from + (180 * i) / (level === "small" ? 9 : 22)),
      ),
    );
    return [
      body(box(16, 24, 190, 172)),
      body(polygon([16, 196], [206, 196], [215, 206], [25, 206]), "edge"),
      body(polygon([206, 24], [215, 34], [215, 206], [206, 196]), "edge"),
      body(outline),
      detail(lines.map(([px, py]) => line([px, py], [px + WALL[0], py + WALL[1]])).join(""), outline),
      knife(dot(170, 62, 9)),
      tell([228, 176], [140, 116]),
      tell([228, 20], [178, 56]),
    ];
  },
};
