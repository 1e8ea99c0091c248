import { box, dot, grain, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, type Mark, says, span, tell } from "../mark.ts";

/** A drawer turned over: its front towards us, its back away. */
const OUT = { x: 16, y: 24, width: 208, height: 176 } as const;
const SIDE = 14;
const FRONT = 22;
const BACK = 10;
export const PANEL = {
  x: OUT.x + SIDE,
  y: OUT.y + BACK,
  width: OUT.width - 2 * SIDE,
  height: OUT.height - BACK - FRONT,
} as const;
const FOOT = PANEL.y + PANEL.height;

/** Sides, back and front round the bottom; the bottom itself is drawn by the caller. */
const frame = (): readonly Mark[] => [
  body(box(OUT.x, OUT.y, OUT.width, OUT.height)),
  body(box(PANEL.x, OUT.y, PANEL.width, BACK), "edge"),
  body(box(OUT.x, FOOT, OUT.width, FRONT)),
  body(box(PANEL.x, PANEL.y, PANEL.width, PANEL.height)),
  says(120, 218, "front"),
];

export const bottomGrainFrontToBack: Drawing = {
  title: "Bottom with grain from front to back",
  tells: "Seen from beneath, the boards and their grain run from the front to the back of the drawer.",
  draw: (level) => {
    const joints = [0.31, 0.66].map((t) => PANEL.x + PANEL.width * t);
    const boards = [PANEL.x, ...joints, PANEL.x + PANEL.width];
    return [
      ...frame(),
      edge(joints.map((x) => line([x, PANEL.y], [x, FOOT])).join("")),
      detail(
        boards
          .slice(0, -1)
          .map((x, i) =>
            grain(
              x + 2,
              PANEL.y + 4,
              (boards[i + 1] as number) - x - 4,
              PANEL.height - 8,
              level === "small" ? 2 : 5,
              "y",
            ),
          )
          .join(""),
      ),
      ...(level === "full" ? [edge(row(6, (i) => dot(PANEL.x + 14 + 30 * i, PANEL.y - 5, 1.8)))] : []),
      span([120, PANEL.y + 14], [120, FOOT - 14]),
    ];
  },
};

export const bottomGrainSideToSide: Drawing = {
  title: "Bottom with grain from side to side",
  tells:
    "Seen from beneath, the boards and their grain run parallel to the front, into grooves of the sides.",
  draw: (level) => {
    const joint = PANEL.y + PANEL.height * 0.52;
    return [
      ...frame(),
      edge(line([PANEL.x, joint], [PANEL.x + PANEL.width, joint])),
      detail(
        grain(PANEL.x + 4, PANEL.y + 2, PANEL.width - 8, joint - PANEL.y - 4, level === "small" ? 3 : 6) +
          grain(PANEL.x + 4, joint + 2, PANEL.width - 8, FOOT - joint - 4, level === "small" ? 3 : 6),
      ),
      edge(
        line([PANEL.x + 8, PANEL.y], [PANEL.x + 8, FOOT]) +
          line([PANEL.x + PANEL.width - 8, PANEL.y], [PANEL.x + PANEL.width - 8, FOOT]),
      ),
      span([PANEL.x + 20, PANEL.y + 46], [PANEL.x + PANEL.width - 20, PANEL.y + 46]),
    ];
  },
};

export const bottomWithMuntin: Drawing = {
  title: "Wide bottom with a grooved centre bar",
  tells: "Two boards meet in a bar down the middle, from front to back.",
  draw: (level) => {
    const half = (PANEL.width - 22) / 2;
    return [
      ...frame(),
      detail(
        grain(PANEL.x + 4, PANEL.y + 2, half - 8, PANEL.height - 4, level === "small" ? 4 : 8) +
          grain(PANEL.x + half + 26, PANEL.y + 2, half - 8, PANEL.height - 4, level === "small" ? 4 : 8),
      ),
      body(box(PANEL.x + half, PANEL.y - BACK, 22, PANEL.height + BACK)),
      detail(grain(PANEL.x + half + 2, PANEL.y, 18, PANEL.height - 4, 2, "y")),
      tell([176, 12], [PANEL.x + half + 24, PANEL.y + 20]),
    ];
  },
};

export const shortGlueBlocks: Drawing = {
  title: "Row of short glue blocks",
  tells: "The strip under each side is sawn into short pieces, so that it yields as the bottom shrinks.",
  draw: (level) => {
    const count = level === "small" ? 3 : 5;
    const step = PANEL.height / count;
    const blocks = (x: number) => row(count, (i) => box(x, PANEL.y + step * i + 2, 17, step - 4));
    return [
      ...frame(),
      detail(grain(PANEL.x + 22, PANEL.y + 2, PANEL.width - 44, PANEL.height - 4, level === "small" ? 4 : 7)),
      body(blocks(PANEL.x)),
      body(blocks(PANEL.x + PANEL.width - 17)),
      tell([80, 12], [PANEL.x + 19, PANEL.y + step]),
      tell([98, 226], [PANEL.x + 19, PANEL.y + step * (count - 1)]),
    ];
  },
};

export const runnerStrips: Drawing = {
  title: "Runner strips under the drawer sides",
  tells: "A narrow strip is glued along each side under the bottom and carries the wear.",
  draw: (level) => [
    ...frame(),
    detail(grain(PANEL.x + 20, PANEL.y + 2, PANEL.width - 40, PANEL.height - 4, level === "small" ? 4 : 7)),
    body(box(PANEL.x, PANEL.y, 15, PANEL.height)),
    body(box(PANEL.x + PANEL.width - 15, PANEL.y, 15, PANEL.height)),
    detail(
      grain(PANEL.x + 1, PANEL.y + 6, 13, PANEL.height - 12, 2, "y") +
        grain(PANEL.x + PANEL.width - 14, PANEL.y + 6, 13, PANEL.height - 12, 2, "y"),
    ),
    tell([86, 12], [PANEL.x + 17, PANEL.y + 24]),
    tell([156, 12], [PANEL.x + PANEL.width - 17, PANEL.y + 24]),
  ],
};

export const bottomFreeAtBack: Drawing = {
  title: "Bottom free to move at the back",
  tells: "The bottom runs out under the back and is held by one slotted screw, so that it can shrink.",
  draw: (level) => {
    const x = 120;
    const y = OUT.y + 7;
    return [
      ...frame(),
      body(box(PANEL.x, OUT.y - 4, PANEL.width, PANEL.height + BACK + 4)),
      detail(grain(PANEL.x + 4, PANEL.y + 12, PANEL.width - 8, PANEL.height - 18, level === "small" ? 4 : 8)),
      detail(line([PANEL.x, PANEL.y], [PANEL.x + PANEL.width, PANEL.y])),
      body(`M${x - 5} ${OUT.y - 4}V${y + 8}A5 5 0 0 0 ${x + 5} ${y + 8}V${OUT.y - 4}z`, "edge"),
      body(dot(x, y + 3, 9)),
      edge(line([x - 7, y + 7], [x + 7, y - 1])),
      knife(line([PANEL.x - 6, OUT.y - 4], [PANEL.x + PANEL.width + 6, OUT.y - 4])),
      tell([70, 74], [x - 10, y + 9]),
    ];
  },
};
