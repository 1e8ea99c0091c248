import { line, type Point } from "../../pen.ts";
import { closed, open, placed, row, run } from "../curves.ts";
import { body, cut, type Detail, type Drawing, detail, edge, knife, type Mark, span, tell } from "../mark.ts";
import { swept } from "../oblique.ts";

/** A length of moulding in oblique view: a quarter round between two flats, its end cut across. */
const PROFILE = run([64, 92], ["l", 64, 104], ["l", 56, 104], ["v", 26, 150], ["l", 26, 164]);
const BACK: Point = [140, -56];
/** Points of the profile from which lines along the moulding are seen. */
const ON_ROUND: readonly Point[] = [
  [55, 112],
  [52, 122],
  [46, 132],
  [38, 141],
  [31, 147],
];
const back = ([x, y]: Point, t: number): Point => [x + BACK[0] * t, y + BACK[1] * t];

const moulding = (): readonly Mark[] => [
  body(swept(PROFILE, ...BACK)),
  body(swept(run([14, 92], ["l", 64, 92]), ...BACK)),
  edge(
    [
      [64, 104],
      [56, 104],
      [26, 150],
    ]
      .map(([x, y]) => line([x as number, y as number], back([x as number, y as number], 1)))
      .join(""),
  ),
  ...cut(closed(PROFILE, [14, 164], [14, 92])),
];

export const nickLinesAlong: Drawing = {
  title: "Moulding with nick lines",
  tells: "Fine lines from the iron run the whole length of the moulding; its profile never changes.",
  draw: (level) => [
    ...moulding(),
    detail(
      ON_ROUND.filter((_, i) => level === "full" || i % 2 === 0)
        .map((point) => line(point, back(point, 1)))
        .join(""),
    ),
    knife(line([46, 132], back([46, 132], 1))),
    tell([214, 170], back([46, 132], 0.68)),
  ],
};

/** Distance between the ridges of a spun cutter along the drawn moulding, as a share of its length. */
export const RIDGE = 1 / 22;

export const ridgesAcross: Drawing = {
  title: "Moulding with ridges across it",
  tells: "Even fine ridges square to the length of the moulding: each is one cut of a spinning knife.",
  draw: (level) => {
    const step = level === "small" ? RIDGE * 2.4 : RIDGE;
    const round = run([56, 104], ["v", 26, 150]);
    const at = (i: number) => placed(round, BACK[0] * step * i, BACK[1] * step * i);
    const foot = (i: number): Point => back([26, 158], step * i);
    return [
      ...moulding(),
      detail(row(Math.floor(1 / step) - 1, (i) => open(at(i + 1)))),
      knife(open(at(level === "small" ? 3 : 8)) + open(at(level === "small" ? 4 : 10))),
      span(
        [foot(level === "small" ? 3 : 8)[0] + 4, foot(level === "small" ? 3 : 8)[1] + 22],
        [foot(level === "small" ? 4 : 10)[0] + 4, foot(level === "small" ? 4 : 10)[1] + 22],
      ),
      tell([214, 176], [foot(level === "small" ? 4 : 10)[0] + 12, foot(level === "small" ? 4 : 10)[1] + 6]),
    ];
  },
};

/** A rail looked at squarely: a scratched moulding that dies out before its ends. */
export const fadingAtEnds: Drawing = {
  title: "Moulding that fades at its ends",
  tells: "The profile runs out within a few centimetres of each end, where a plane could not have gone.",
  draw: (level: Detail) => {
    const lines = [-14, -7, 0, 7, 14];
    return [
      body("M16 66H224V174H16z"),
      ...(level === "full"
        ? [
            detail(
              row(2, (i) => `M30 ${80 + 82 * i}C90 ${76 + 84 * i} 150 ${84 + 80 * i} 212 ${80 + 82 * i}`),
            ),
          ]
        : []),
      edge(
        lines
          .filter((v) => level === "full" || v % 14 === 0)
          .map(
            (v) =>
              `M${44 + Math.abs(v)} ${120 + v * 0.25}C${58 + Math.abs(v)} ${120 + v} 74 ${120 + v} 82 ${120 + v}H158C166 ${120 + v} ${182 - Math.abs(v)} ${120 + v} ${196 - Math.abs(v)} ${120 + v * 0.25}`,
          )
          .join(""),
      ),
      span([44, 196], [82, 196]),
      span([158, 196], [196, 196]),
      tell([30, 30], [58, 112]),
      tell([210, 30], [182, 112]),
    ];
  },
};

/** Half the length of one wave of the drawn ripple. */
const RIPPLE = 5;

export const rippleMoulding: Drawing = {
  title: "Ripple moulding",
  tells: "The whole moulding lies in small regular waves of one pitch.",
  draw: (level) => {
    const half = RIPPLE * (level === "small" ? 2.4 : 1);
    const waves = Math.floor(208 / (2 * half));
    const wave = (y: number, deep: number) =>
      `M16 ${y}${row(waves, () => `q${half / 2} ${-deep} ${half} 0t${half} 0`)}`;
    const right = 16 + waves * 2 * half;
    return [
      body(`M16 66H${right}V174H16z`),
      edge([84, 102, 138, 156].map((y) => wave(y, 5)).join("")),
      detail([92, 120, 146].map((y) => wave(y, 4)).join("")),
      span([16 + 8 * half, 44], [16 + 10 * half, 44]),
      span([16 + 10 * half, 44], [16 + 12 * half, 44]),
      tell([200, 214], [170, 160]),
    ];
  },
};

export const freshMouldingOnOldBoard: Drawing = {
  title: "Fresh moulding on an old board",
  tells: "The profile is bright and crisp and cuts through an old hole; the faces of the board are dark.",
  draw: () => {
    const edgeLine = run([176, 70], ["l", 176, 82], ["h", 222, 128], ["l", 222, 146]);
    return [
      ...cut(closed(edgeLine, [16, 146], [16, 70])),
      { kind: "tone", tone: "dark", d: "M16 70H176V82H16z" },
      { kind: "tone", tone: "dark", d: "M16 134H222V146H16z" },
      body("M186 83H198V146H186z", "edge"),
      knife(open(edgeLine)),
      tell([150, 30], [196, 84]),
      tell([60, 30], [80, 70]),
    ];
  },
};
