import { bailHandle } from "../../hardware.ts";
import { box, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, type Mark, span, tell } from "../mark.ts";

/** Drawers from the top: how many side by side, and how high. */
type Row = readonly [count: number, height: number];

function chest(
  rows: readonly Row[],
  level: "small" | "full",
): { marks: readonly Mark[]; tops: readonly number[] } {
  const tops: number[] = [];
  let y = 36;
  const drawers = rows.flatMap(([count, height]) => {
    tops.push(y);
    const each = (184 - 4 * (count - 1)) / count;
    const marks = Array.from({ length: count }, (_, i) => {
      const x = 28 + i * (each + 4);
      const handles = (count === 1 ? [0.24, 0.76] : [0.5]).map((t) =>
        bailHandle(x + each * t, y + height / 2 - 1, 0.9),
      );
      return [
        body(box(x, y, each, height), "edge"),
        ...(level === "full"
          ? [detail(handles.map(({ outline, detail: lines }) => outline + lines).join(""))]
          : []),
      ];
    }).flat();
    y += height + 4;
    return marks;
  });
  return {
    marks: [
      body(box(22, 28, 196, y - 28)),
      body(box(14, 16, 212, 12)),
      ...drawers,
      body(
        `M22 ${y}H218V${y + 22}H190C190 ${y + 10} 180 ${y + 8} 172 ${y + 8}H68C60 ${y + 8} 50 ${y + 10} 50 ${y + 22}H22z`,
      ),
    ],
    tops,
  };
}

export const twoOverThree: Drawing = {
  title: "Two drawers over three",
  tells: "Two half-width drawers stand above three full ones.",
  draw: (level) => {
    const { marks, tops } = chest(
      [
        [2, 30],
        [1, 36],
        [1, 40],
        [1, 44],
      ],
      level,
    );
    return [
      ...marks,
      span([28, (tops[0] as number) + 34], [118, (tops[0] as number) + 34]),
      tell([232, 8], [166, 34]),
    ];
  },
};

export const threeLongDrawers: Drawing = {
  title: "Three long drawers",
  tells: "Three full-width drawers and no more. Compare the height of the case and look for a lost one.",
  draw: (level) => {
    const { marks, tops } = chest(
      [
        [1, 40],
        [1, 46],
        [1, 52],
      ],
      level,
    );
    const foot = (tops[2] as number) + 52;
    return [...marks, span([232, tops[0] as number], [232, foot]), tell([120, 236], [120, foot + 2])];
  },
};

/** Columns let into the front corners of a case, from the front and cut through. */
export const flutedQuarterColumns: Drawing = {
  title: "Fluted quarter columns",
  tells:
    "A quarter of a fluted column is let into each front corner of the case; below, the corner cut through.",
  draw: (level) => [
    body(box(20, 10, 200, 118)),
    body(box(48, 18, 144, 102), "edge"),
    edge(line([48, 68], [192, 68])),
    ...[24, 196].flatMap((x) => [
      body(box(x, 18, 20, 102)),
      edge(
        row(level === "small" ? 2 : 4, (i) =>
          line(
            [x + (level === "small" ? 7 : 4) * (i + 1), 26],
            [x + (level === "small" ? 7 : 4) * (i + 1), 112],
          ),
        ),
      ),
    ]),
    ...cut("M24 150H176V178H148V226H24z"),
    body("M148 178H176V206C176 218 164 226 148 226z"),
    edge("M176 184a5 5 0 0 0 0 10M175 200a5 5 0 0 0 -4 9M167 214a5 5 0 0 0 -9 5"),
    tell([228, 222], [172, 214]),
    tell([232, 60], [218, 66]),
  ],
};

export const scrollPediment: Drawing = {
  title: "Scroll pediment",
  tells: "Two mouldings rise in double curves to rosettes on either side of a finial.",
  draw: (level) => {
    const half = (s: -1 | 1) =>
      `M${120 + s * 102} 182C${120 + s * 70} 182 ${120 + s * 62} 96 ${120 + s * 34} 84`;
    const lower = (s: -1 | 1) =>
      `M${120 + s * 102} 200C${120 + s * 60} 200 ${120 + s * 54} 116 ${120 + s * 34} 104`;
    return [
      body(
        `${half(1)}A17 17 0 1 0 ${120 + 20} 112C${120 + 22} 130 132 140 120 140S98 130 100 112A17 17 0 1 0 86 84C58 96 50 182 18 182V212H222V182z`,
      ),
      edge(lower(-1) + lower(1)),
      edge(half(-1) + half(1)),
      ...[-1, 1].flatMap((s) => [
        body(`M${120 + s * 36 - 17} 94a17 17 0 1 1 34 0a17 17 0 1 1 -34 0z`),
        edge(`M${120 + s * 36 - 6} 94a6 6 0 1 1 12 0a6 6 0 1 1 -12 0z`),
        ...(level === "full"
          ? [
              detail(
                row(8, (i) => {
                  const a = (i / 8) * 2 * Math.PI;
                  return line(
                    [120 + s * 36 + 7 * Math.cos(a), 94 + 7 * Math.sin(a)],
                    [120 + s * 36 + 15 * Math.cos(a), 94 + 15 * Math.sin(a)],
                  );
                }),
              ),
            ]
          : []),
      ]),
      body(box(110, 104, 20, 36)),
      body(
        "M120 20C128 40 134 52 132 66C138 72 136 86 130 90H110C104 86 102 72 108 66C106 52 112 40 120 20z",
      ),
      body(box(108, 90, 24, 14), "edge"),
      tell([220, 60], [174, 90]),
    ];
  },
};
