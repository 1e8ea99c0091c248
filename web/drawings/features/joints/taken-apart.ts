import { ellipse, line, n, type Point, polygon } from "../../pen.ts";
import { arc, row } from "../curves.ts";
import {
  body,
  cut,
  type Drawing,
  detail,
  edge,
  knife,
  type Mark,
  says,
  scaleBar,
  span,
  tell,
} from "../mark.ts";
import { boxFaces, dashes, oblique } from "../oblique.ts";

/** The inside of a drawer front near its end, its end seen as well: sockets taken in from the end. */
const FRONT = { left: 14, right: 158, top: 46, foot: 196 } as const;
const at = oblique([0, 0], [46, -30]);

/** One socket from the end inwards, on the inside face: straight flanks and a floor, round or square. */
function socket(y: number, height: number, depth: number, isRound: boolean): string {
  const { right } = FRONT;
  const r = height / 2;
  return isRound
    ? `M${right} ${n(y)}H${n(right - depth + r)}A${n(r)} ${n(r)} 0 0 0 ${n(right - depth + r)} ${n(y + height)}H${right}`
    : `M${right} ${n(y)}H${n(right - depth)}V${n(y + height)}H${right}`;
}

/** The same socket at the end of the board: wider inside than at the face, and short of the outer face by the lap. */
const opening = (y: number, height: number): Point[] => [
  at(FRONT.right, y),
  at(FRONT.right, y + height),
  at(FRONT.right, y + height + 4, 0.66),
  at(FRONT.right, y - 4, 0.66),
];

function frontWithSockets(isRound: boolean, count: number, uneven: number): readonly Mark[] {
  const { left, right, top, foot } = FRONT;
  const faces = boxFaces(at, [left, top], [right, foot]);
  const pitch = (foot - top) / count;
  const height = pitch * 0.56;
  const wobble = (i: number) => uneven * (((i * 5) % 3) - 1);
  return [
    body(faces.top),
    ...cut(faces.end),
    body(faces.front),
    ...Array.from({ length: count }, (_, i) => top + pitch * i + (pitch - height) / 2 + wobble(i)).flatMap(
      (y) => [body(polygon(...opening(y, height)), "edge"), edge(socket(y, height, 44, isRound))],
    ),
    detail(row(3, (i) => line([left + 8, top + 26 + 44 * i], [left + 74 - 10 * i, top + 24 + 44 * i]))),
  ];
}

export const roundedSockets: Drawing = {
  title: "Sockets with rounded inner corners",
  tells: "The floor of every socket is round where a spinning cutter turned.",
  draw: (level) => {
    const count = level === "small" ? 3 : 5;
    const pitch = 150 / count;
    const y = FRONT.top + pitch * (count - 1) + pitch / 2;
    const r = pitch * 0.28;
    return [
      ...frontWithSockets(true, count, 0),
      knife(arc(FRONT.right - 44 + r, y, r, 90, 270)),
      tell([70, 226], [FRONT.right - 47, y + r * 0.3]),
    ];
  },
};

export const paredSockets: Drawing = {
  title: "Lap dovetail sockets taken apart",
  tells: "Square, pared corners on the floor of each socket: chisel work, no turning cutter.",
  draw: (level) => {
    const count = level === "small" ? 3 : 4;
    const pitch = 150 / count;
    const y = FRONT.top + pitch * (count - 1) + pitch * 0.78;
    return [
      ...frontWithSockets(false, count, level === "small" ? 0 : 1.5),
      tell([70, 226], [FRONT.right - 45, y + 1]),
    ];
  },
};

/** Width of the drawn neck and of the shank of a cutter, in millimetres. */
export const NECK_MM = 1.5;
export const SHANK_MM = 6;
const PER_MM = 10;

export const narrowNeckedDovetail: Drawing = {
  title: "Neck narrower than a cutter's shank",
  tells: "The pin is under 3 millimetres at its narrow end: the shank of a turning cutter would not pass.",
  draw: () => {
    const neck = (NECK_MM * PER_MM) / 2;
    const wide = 28;
    const c = 120;
    const pin = polygon([c - neck, 62], [c + neck, 62], [c + wide, 168], [c - wide, 168]);
    return [
      body(polygon([16, 62], [c - neck, 62], [c - wide, 168], [16, 168]), "edge"),
      body(polygon([224, 62], [c + neck, 62], [c + wide, 168], [224, 168]), "edge"),
      ...cut(pin),
      detail(
        row(
          4,
          (i) =>
            line([22, 78 + 24 * i], [62 - 6 * i, 78 + 24 * i]) +
            line([216, 80 + 24 * i], [176 + 6 * i, 80 + 24 * i]),
        ),
      ),
      edge(
        dashes([c - (SHANK_MM * PER_MM) / 2, 20], [c - (SHANK_MM * PER_MM) / 2, 62]) +
          dashes([c + (SHANK_MM * PER_MM) / 2, 20], [c + (SHANK_MM * PER_MM) / 2, 62]),
      ),
      edge(ellipse(c, 20, (SHANK_MM * PER_MM) / 2, 7)),
      span([c - neck, 52], [c + neck, 52]),
      tell([188, 38], [c + neck + 3, 50]),
      says(c + 36, 24, "shank", "start"),
      scaleBar(PER_MM, 5),
    ];
  },
};
