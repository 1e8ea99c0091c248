import { dot, ellipse, line, type Point, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, span, tell } from "../mark.ts";
import { headMarks, roseHead } from "../nails/nail-views.ts";
import { CORNER, corner, HEIGHT, sideFace } from "./corner.ts";

const { x, top, foot, right } = CORNER;

/** A corner without tails: side butted, the lap of the front at the left of its face. */
const butted = (lap: number, level: "small" | "full"): readonly Mark[] => [
  ...corner({ lap: 0, tails: [] }, level),
  body(polygon([x + lap, top], [right, top], [right, foot], [x + lap, foot]), "edge"),
  edge(sideFace()),
];

/** Radius of a scallop and of its peg, and the distance from one scallop to the next. */
export const COVE = { radius: 14, peg: 5.5, pitch: HEIGHT / 4 } as const;

export const pinAndCoveCorner: Drawing = {
  title: "Pin-and-cove corner",
  tells: "A row of scallops of one radius, each with a round peg in its middle.",
  draw: (level) => {
    const { radius, peg, pitch } = COVE;
    const base = x + 44;
    const middles = [0, 1, 2, 3].map((i) => top + pitch * (i + 0.5));
    const scallops = middles
      .toReversed()
      .map((y) => `L${base} ${y + radius}A${radius} ${radius} 0 0 1 ${base} ${y - radius}`)
      .join("");
    return [
      ...corner({ lap: 0, tails: [] }, "small"),
      body(`M${right} ${top}V${foot}H${base}${scallops}V${top}z`),
      ...(level === "full"
        ? [
            detail(
              [24, 56, 94]
                .map((v, i) => line([base + 26, top + v], [right - 18 - 9 * i, top + v + 2]))
                .join(""),
            ),
          ]
        : []),
      ...middles.map((y) => body(dot(base - 2, y, peg), "edge")),
      tell([176, 222], [base + 5, (middles[3] as number) + 3]),
    ];
  },
};

/** Width of the drawn fingers: all alike. */
export const FINGER = HEIGHT / 10;

export const combJoint: Drawing = {
  title: "Finger joint",
  tells: "Square equal fingers interlocked like a comb, with no slope.",
  draw: (level) => {
    const count = level === "small" ? 3 : 5;
    const finger = HEIGHT / (2 * count);
    const tails = Array.from({ length: count }, (_, i) => {
      const y = finger * 2 * i;
      return { end: [y, y + finger] as const, base: [y, y + finger] as const };
    });
    const at = x + 58;
    return [
      ...corner({ lap: 0, tails }, level),
      span([at, top + finger * 2], [at, top + finger * 3]),
      span([at, top + finger * 3], [at, top + finger * 4]),
    ];
  },
};

export const dowelledCorner: Drawing = {
  title: "Drawer corner held by dowels",
  tells: "Round peg ends in a row along the side near the front, and no tails.",
  draw: (level) => {
    const middles = [0, 1, 2, 3].map((i): Point => [x + 34, top + 20 + (HEIGHT - 40) * (i / 3)]);
    return [
      ...butted(14, level),
      ...middles.flatMap(([px, py]) => cut(dot(px, py, 7), "edge")),
      tell([172, 222], [x + 43, foot - 18]),
    ];
  },
};

const NAIL: Point = [x + 32, 0];

export const nailedRebatedCorner: Drawing = {
  title: "Side nailed into a rebate of the front",
  tells: "No dovetail: the side lies in a rebate, and nail heads stand in a row near its end.",
  draw: (level) => {
    const heads = [0, 1, 2].map((i): Point => [NAIL[0], top + 22 + 43 * i]);
    return [
      ...butted(16, level),
      ...cut(polygon([x, top], [x + 16, top], [x + 16, foot], [x, foot]), "edge"),
      ...heads.flatMap(([px, py], i) => headMarks(roseHead(px, py, 9, 40 * i))),
      knife(line([x + 16, top - 8], [x + 16, foot + 8])),
      tell([170, 222], [x + 40, foot - 18]),
      tell([30, 222], [x + 14, foot + 6]),
    ];
  },
};

/** Two edges drawn apart, a slot in each, the plate between them. */
export const lensInSlot: Drawing = {
  title: "Compressed lens in a slot",
  tells: "A flat oval plate lies in a saw slot across the joint.",
  draw: (level) => {
    const lower = polygon([24, 172], [192, 172], [216, 150], [48, 150]);
    const slot = (y: number) => `M72 ${y}A50 20 0 0 1 168 ${y - 1}`;
    return [
      body(polygon([24, 40], [192, 40], [192, 84], [24, 84])),
      ...cut(polygon([192, 40], [216, 18], [216, 62], [192, 84])),
      body(polygon([24, 40], [192, 40], [216, 18], [48, 18])),
      body(lower),
      body(polygon([24, 172], [192, 172], [192, 224], [24, 224])),
      ...cut(polygon([192, 172], [216, 150], [216, 202], [192, 224])),
      body(ellipse(120, 160, 46, 5), "edge"),
      body("M76 160A62 62 0 0 1 164 160A130 130 0 0 1 76 160z", "outline"),
      ...(level === "full"
        ? [
            detail(
              row(6, (i) => line([86 + 12 * i, 158], [96 + 10 * i, 138])),
              "M76 160A62 62 0 0 1 164 160z",
            ),
          ]
        : []),
      detail(slot(84)),
      tell([222, 116], [160, 146]),
    ];
  },
};
