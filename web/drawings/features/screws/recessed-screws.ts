import { box, dot, line, type Point, polygon } from "../../pen.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, says, tell } from "../mark.ts";

const PLAN = { x: 72, y: 112, r: 54 } as const;
const CUT_AT = 180;

/** A cross recess from above: arms `half` wide and `reach` long, narrowing a little outwards. */
const cross = (half: number, reach: number): string => {
  const { x, y } = PLAN;
  const e = half * 0.72;
  return polygon(
    [x - e, y - reach],
    [x + e, y - reach],
    [x + half, y - half],
    [x + reach, y - e],
    [x + reach, y + e],
    [x + half, y + half],
    [x + e, y + reach],
    [x - e, y + reach],
    [x - half, y + half],
    [x - reach, y + e],
    [x - reach, y - e],
    [x - half, y - half],
  );
};

/** The head cut through, its recess `floor` wide at the bottom. */
const sectionOf = (mouth: number, depth: number, floor: number): readonly Mark[] => {
  const top = 76;
  return [
    ...cut(
      polygon(
        [CUT_AT - 46, top],
        [CUT_AT - mouth, top],
        [CUT_AT - floor, top + depth],
        [CUT_AT + floor, top + depth],
        [CUT_AT + mouth, top],
        [CUT_AT + 46, top],
        [CUT_AT + 16, top + 32],
        [CUT_AT + 16, 206],
        [CUT_AT - 16, 206],
        [CUT_AT - 16, top + 32],
      ),
    ),
    says(CUT_AT, 224, "cut through"),
  ];
};

const head = (recess: string): readonly Mark[] => [body(dot(PLAN.x, PLAN.y, PLAN.r)), body(recess, "edge")];

export const crossHeadScrew: Drawing = {
  title: "Cross-head screw",
  tells: "A four-armed recess that narrows to a small flat floor.",
  draw: () => [
    ...head(cross(10, 34)),
    edge(box(PLAN.x - 5, PLAN.y - 5, 10, 10)),
    ...sectionOf(24, 44, 6),
    knife(line([CUT_AT - 6, 120], [CUT_AT + 6, 120])),
    tell([226, 150], [CUT_AT + 7, 121]),
    tell([20, 40], [PLAN.x - 9, PLAN.y - 30]),
  ],
};

export const sharpCrossHeadScrew: Drawing = {
  title: "Cross-head screw with a sharp floor",
  tells: "The walls of the recess meet in a point.",
  draw: () => [
    ...head(cross(9, 36)),
    edge(
      line([PLAN.x - 9, PLAN.y - 9], [PLAN.x + 9, PLAN.y + 9]) +
        line([PLAN.x + 9, PLAN.y - 9], [PLAN.x - 9, PLAN.y + 9]),
    ),
    ...sectionOf(24, 54, 0),
    tell([226, 160], [CUT_AT + 3, 131]),
    tell([20, 40], [PLAN.x - 9, PLAN.y - 32]),
  ],
};

export const ribbedCrossHeadScrew: Drawing = {
  title: "Cross-head screw with ribs",
  tells: "Small extra ribs in the recess, and four ticks between the arms on the face of the head.",
  draw: () => {
    const tick = (sx: -1 | 1, sy: -1 | 1) =>
      line([PLAN.x + sx * 17, PLAN.y + sy * 17], [PLAN.x + sx * 29, PLAN.y + sy * 29]);
    return [
      ...head(cross(11, 34)),
      edge(box(PLAN.x - 5, PLAN.y - 5, 10, 10)),
      edge(tick(-1, -1) + tick(1, -1) + tick(1, 1) + tick(-1, 1)),
      detail(
        line([PLAN.x - 11, PLAN.y - 11], [PLAN.x - 5, PLAN.y - 5]) +
          line([PLAN.x + 11, PLAN.y + 11], [PLAN.x + 5, PLAN.y + 5]),
      ),
      ...sectionOf(24, 44, 7),
      tell([120, 30], [PLAN.x + 26, PLAN.y - 30]),
    ];
  },
};

export const squareSocketScrew: Drawing = {
  title: "Square-socket screw",
  tells: "A square hole in the head.",
  draw: () => [
    ...head(box(PLAN.x - 19, PLAN.y - 19, 38, 38)),
    edge(box(PLAN.x - 14, PLAN.y - 14, 28, 28)),
    ...sectionOf(19, 40, 14),
    tell([22, 40], [PLAN.x - 20, PLAN.y - 20]),
  ],
};

/** A hole of an older screw with another screw in it, cut through. */
export const replacementScrewInOldHole: Drawing = {
  title: "Screw put into an older hole",
  tells: "The hole is parallel, and its flat end stands empty below the point of the present screw.",
  draw: (level) => {
    const x = 120;
    const turns = level === "small" ? 3 : 6;
    const pitch = 72 / turns;
    const flank = (side: -1 | 1): Point[] =>
      Array.from({ length: turns }, (_, i) => i).flatMap((i): Point[] => {
        const half = 15 * Math.min(1, (turns - i) / (turns * 0.55));
        return [
          [x + side * half, 92 + pitch * i],
          [x + side * half * 0.62, 92 + pitch * (i + 0.5)],
        ];
      });
    const screw = polygon(
      [x - 35, 46],
      [x + 35, 46],
      [x + 14, 68],
      ...flank(1),
      [x, 168],
      ...flank(-1).toReversed(),
      [x - 14, 68],
    );
    return [
      ...cut(box(16, 46, 208, 166)),
      body(polygon([x - 37, 46], [x + 37, 46], [x + 19, 66], [x + 19, 196], [x - 19, 196], [x - 19, 66])),
      body(screw),
      knife(line([x - 19, 196], [x + 19, 196])),
      tell([206, 228], [x + 12, 186]),
      tell([206, 22], [x + 19, 120]),
    ];
  },
};
