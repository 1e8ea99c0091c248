import { box, dot, line, polygon } from "../../pen.ts";
import { open, row, run, turnedOn } from "../curves.ts";
import { body, type Drawing, detail, edge, type Mark, scaleBar, span, tell } from "../mark.ts";
import { headMarks, roseHead } from "../nails/nail-views.ts";

const nail = (x: number, y: number, i: number): readonly Mark[] => headMarks(roseHead(x, y, 8, 50 * i));

export const butterflyHinge: Drawing = {
  title: "Butterfly hinge",
  tells: "Two leaves splay like wings from a short knuckle and lie on the surface.",
  draw: () => {
    const wing = (side: -1 | 1) =>
      polygon(
        [120 + side * 9, 98],
        [120 + side * 96, 56],
        [120 + side * 88, 120],
        [120 + side * 96, 184],
        [120 + side * 9, 142],
      );
    return [
      body(wing(-1)),
      body(wing(1)),
      body(box(111, 92, 18, 56)),
      edge(line([111, 111], [129, 111]) + line([111, 129], [129, 129])),
      ...([-1, 1] as const).flatMap((side) =>
        [
          [76, 82],
          [74, 158],
          [42, 120],
        ].flatMap(([dx, y], i) => nail(120 + side * (dx as number), y as number, i + (side === 1 ? 3 : 0))),
      ),
      tell([176, 24], [190, 74]),
      tell([60, 24], [114, 88]),
    ];
  },
};

export const hHinge: Drawing = {
  title: "H or HL hinge",
  tells: "Long plates on the surface, joined by a short knuckle: an H, or an H with an arm.",
  draw: (level) => {
    const h = (x: number, hasArm: boolean): readonly Mark[] => [
      body(polygon([x - 32, 30], [x - 6, 30], [x - 6, 210], [x - 32, 210])),
      body(
        hasArm
          ? polygon([x + 6, 30], [x + 32, 30], [x + 32, 184], [x + 76, 184], [x + 76, 210], [x + 6, 210])
          : polygon([x + 6, 30], [x + 32, 30], [x + 32, 210], [x + 6, 210]),
      ),
      body(box(x - 7, 92, 14, 56)),
      edge(line([x - 7, 111], [x + 7, 111]) + line([x - 7, 129], [x + 7, 129])),
      ...(level === "full"
        ? [
            [-19, 46],
            [-19, 120],
            [-19, 194],
            [19, 46],
            [19, 120],
            [19, 194],
          ].flatMap(([dx, y], i) => nail(x + (dx as number), y as number, i))
        : []),
      ...(hasArm && level === "full" ? nail(x + 62, 197, 3) : []),
    ];
    return [...h(52, false), ...h(146, true), tell([100, 14], [72, 34]), tell([218, 150], [208, 182])];
  },
};

export const ratTailHinge: Drawing = {
  title: "Rat-tail hinge",
  tells: "The pin runs down below the knuckle into a thin curled tail nailed to the case.",
  draw: () => {
    const flame = (dx: -1 | 1, x: number) =>
      `${open(
        run(
          [x, 54],
          ["c", x + dx * 18, 52, x + dx * 34, 60, x + dx * 46, 72],
          ["c", x + dx * 60, 62, x + dx * 78, 70, x + dx * 86, 86],
          ["c", x + dx * 76, 98, x + dx * 60, 106, x + dx * 46, 98],
          ["c", x + dx * 34, 110, x + dx * 18, 118, x, 118],
        ),
      )}z`;
    return [
      body(flame(1, 106)),
      body(
        "M92 118C90 150 94 168 84 184C74 200 52 198 50 182C49 172 60 168 64 176L70 172C64 158 40 160 40 184C42 210 82 214 94 188C104 166 100 148 104 118z",
      ),
      body(box(88, 50, 20, 70)),
      edge(line([88, 74], [108, 74]) + line([88, 98], [108, 98])),
      body(turnedOn(98, run([4, 36], ["h", 8, 42], ["v", 5, 50]))),
      ...nail(146, 86, 1),
      ...nail(176, 86, 2),
      body("M54 168l-22 -14 -6 10 22 16z", "edge"),
      ...nail(33, 164, 3),
      tell([150, 206], [100, 170]),
    ];
  },
};

export const strapHinge: Drawing = {
  title: "Strap hinge",
  tells: "A long tapering strap lies across the lid or door and ends in a beaten terminal.",
  draw: () => [
    body("M16 92H62V148H16z"),
    body(
      "M78 98L186 110C190 96 206 92 214 104C226 106 232 116 222 120C232 124 226 134 214 136C206 148 190 144 186 130L78 142z",
    ),
    body(box(60, 88, 20, 64)),
    edge(line([60, 106], [80, 106]) + line([60, 134], [80, 134])),
    ...nail(36, 106, 0),
    ...nail(36, 134, 1),
    ...nail(102, 120, 2),
    ...nail(150, 120, 3),
    detail(line([84, 104], [178, 114]) + line([84, 136], [178, 126])),
    tell([150, 40], [196, 96]),
    tell([70, 40], [120, 102]),
  ],
};

/** Two leaves of a folding top, edge to edge, the hinge let into both. */
export const cardTableHinge: Drawing = {
  title: "Card-table hinge",
  tells: "Two narrow plates with a link between them are let into the edges of the two leaves.",
  draw: (level) => {
    const plate = (y: number, side: -1 | 1): readonly Mark[] => [
      body(
        `M60 ${y}H180A14 14 0 0 ${side === 1 ? 1 : 0} 180 ${y + side * 28}H60A14 14 0 0 ${side === 1 ? 1 : 0} 60 ${y}z`,
      ),
      body(dot(84, y + side * 14, 7), "edge"),
      body(dot(156, y + side * 14, 7), "edge"),
      edge(
        line([79, y + side * 14 + 3], [89, y + side * 14 - 3]) +
          line([151, y + side * 14 - 3], [161, y + side * 14 + 3]),
      ),
    ];
    return [
      body(box(16, 40, 208, 78)),
      body(box(16, 122, 208, 78)),
      ...(level === "full"
        ? [
            detail(
              row(
                3,
                (i) =>
                  line([24, 52 + 12 * i], [214 - 20 * i, 54 + 12 * i]) +
                  line([24 + 14 * i, 166 + 12 * i], [214, 165 + 12 * i]),
              ),
            ),
          ]
        : []),
      ...plate(116, -1),
      ...plate(124, 1),
      body("M112 96H128V144H112z", "edge"),
      edge(dot(120, 104, 4) + dot(120, 136, 4)),
      tell([206, 20], [132, 100]),
    ];
  },
};

export const cupHinge: Drawing = {
  title: "Hole of a concealed cup hinge",
  tells: "A round flat-bottomed hole of 35 millimetres in the back of the door.",
  draw: () => [
    body(box(30, 20, 150, 192)),
    body(box(186, 20, 38, 192)),
    body(dot(120, 116, 44)),
    edge(dot(120, 116, 38)),
    edge(dot(120, 54, 4) + dot(120, 178, 4)),
    body("M138 102H196A8 8 0 0 1 196 130H138z", "edge"),
    edge(dot(194, 116, 5)),
    span([76, 196], [164, 196]),
    scaleBar(88 / 35, 35),
  ],
};
