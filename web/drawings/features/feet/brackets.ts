import { line, type Point, polygon } from "../../pen.ts";
import { closed, open, type Run, run } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, type Mark, tell } from "../mark.ts";

/** The corner of a case low down, its front and its right side both seen; the moulding above the foot. */
const EDGE = 150;
const TOP = 76;
const FOOT = 212;
/** How the right side goes back. */
const back = ([x, y]: Point): Point => [EDGE + (EDGE - x) * 0.5, y - (EDGE - x) * 0.16];

/** Front and side of the case, with its base moulding. */
const base = (): readonly Mark[] => {
  const along = (y: number): string => line([14, y], [EDGE, y], back([14, y]));
  return [
    body(polygon([14, 34], [EDGE, 34], [EDGE, TOP], [14, TOP])),
    body(polygon([EDGE, 34], back([14, 34]), back([14, TOP]), [EDGE, TOP])),
    edge(along(60) + along(67)),
  ];
};

/** The inner edge of a bracket, from its toe up to where it meets the base: leftwards of the corner. */
const INNER: Run = run(
  [102, FOOT],
  ["c", 100, 186, 92, 172, 78, 170],
  ["c", 66, 168, 66, 152, 54, 146],
  ["c", 44, 142, 40, 122, 20, 118],
  ["l", 14, 118],
);

/** The same edge on the side that goes back. */
const innerBack = (): Run => ({
  start: back(INNER.start),
  steps: INNER.steps.map((step) =>
    step[0] === "c"
      ? ["c", ...back([step[1], step[2]]), ...back([step[3], step[4]]), ...back([step[5], step[6]])]
      : [step[0], ...back([step[1], step[2]])],
  ),
});

const bracket = (corner: Run): readonly Mark[] => [
  body(closed(innerBack(), back([14, TOP]), [EDGE, TOP], ...cornerPoints(corner))),
  body(
    `${open({ start: INNER.start, steps: INNER.steps })}L14 ${TOP}L${EDGE} ${TOP}${open(corner).replace(/^M/, "L")}z`,
  ),
];

const cornerPoints = ({ steps, start }: Run): Point[] => [
  start,
  ...steps.map((step): Point => (step[0] === "c" ? [step[5], step[6]] : [step[1], step[2]])),
];

export const straightBracketFoot: Drawing = {
  title: "Straight bracket foot",
  tells: "Two flat boards meet in a mitre at the corner; their inner edges are shaped.",
  draw: () => {
    const corner = run([EDGE, TOP], ["l", EDGE, FOOT]);
    return [
      ...base(),
      ...bracket(corner),
      knife(line([EDGE, TOP], [EDGE, FOOT])),
      detail(line([96, 92], [140, 92]) + line([90, 110], [136, 111]) + line([112, 150], [142, 150])),
      tell([206, 224], [EDGE + 3, FOOT - 16]),
      tell([40, 216], [76, 173]),
    ];
  },
};

export const ogeeBracketFoot: Drawing = {
  title: "Ogee bracket foot",
  tells: "The face of the bracket curves twice: round above, hollow below, out again at the toe.",
  draw: () => {
    const face = run([176, TOP], ["c", 202, 92, 206, 134, 178, 160], ["c", 162, 176, 164, 198, 190, FOOT]);
    const inner = run(
      [128, FOOT],
      ["c", 128, 192, 116, 176, 98, 174],
      ["c", 80, 172, 84, 152, 66, 146],
      ["c", 52, 142, 44, 122, 22, 118],
      ["l", 14, 118],
    );
    return [
      body(polygon([14, 34], [176, 34], [176, 58], [186, 64], [186, TOP], [14, TOP])),
      edge(line([14, 58], [176, 58]) + line([14, 65], [186, 65])),
      body(`${open(inner)}L14 ${TOP}${open(face).replace(/^M/, "L")}z`),
      detail(line([40, 92], [150, 92]) + line([92, 112], [160, 113]) + line([116, 150], [150, 150])),
      knife(open(face)),
      tell([228, 176], [174, 172]),
      tell([228, 84], [200, 112]),
    ];
  },
};

export const splayFoot: Drawing = {
  title: "Outswept bracket foot",
  tells: "A thin bracket curves outward to its toe and runs up into a shaped apron.",
  draw: () => {
    const toe = run([190, 74], ["c", 182, 150, 196, 190, 222, 222]);
    const apron = run(
      [206, 222],
      ["c", 184, 204, 170, 170, 164, 142],
      ["c", 152, 108, 118, 120, 96, 128],
      ["c", 66, 138, 40, 132, 14, 132],
    );
    return [
      body(polygon([14, 20], [186, 20], [186, 62], [190, 66], [190, 74], [14, 74])),
      edge(line([14, 62], [186, 62])),
      body(`${open(toe)}${open(apron).replace(/^M/, "L")}L14 74z`),
      detail(line([30, 92], [160, 94]) + line([44, 112], [88, 113])),
      knife(open(toe)),
      tell([228, 132], [196, 158]),
      tell([76, 200], [112, 126]),
    ];
  },
};

export const cuspedBracketFoot: Drawing = {
  title: "Bracket foot with a cusp",
  tells: "The inner edge of the bracket ends in a strong comma-shaped cusp.",
  draw: () => {
    const inner = run(
      [120, FOOT],
      ["c", 116, 184, 112, 172, 96, 172],
      ["c", 84, 172, 82, 186, 92, 190],
      ["c", 76, 198, 62, 184, 66, 168],
      ["c", 68, 148, 50, 128, 20, 126],
      ["l", 14, 126],
    );
    return [
      ...base(),
      body(polygon([EDGE, TOP], back([14, TOP]), back([14, 118]), back([90, FOOT]), [EDGE, FOOT])),
      body(`${open(inner)}L14 ${TOP}L${EDGE} ${TOP}V${FOOT}z`),
      knife("M96 172C84 172 82 186 92 190C76 198 62 184 66 168"),
      tell([30, 224], [72, 190]),
    ];
  },
};
