import { box, dot, ellipse, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, span, tell, toned } from "../mark.ts";
import { NAIL } from "./nail-views.ts";

const { front, side, plan, head, tip } = NAIL;

const roundHole = (r: number): readonly Mark[] => [
  body(box(plan - 26, 124, 52, 52), "detail"),
  toned(dot(plan, 150, r), "dark"),
  edge(dot(plan, 150, r)),
];

/** A round shank of one thickness that comes to a pinched point. */
const wire = (axis: number, half: number): string =>
  polygon(
    [axis - half, head],
    [axis + half, head],
    [axis + half, tip - 22],
    [axis, tip],
    [axis - half, tip - 22],
  );

export const wireNail: Drawing = {
  title: "Wire nail",
  tells:
    "A round shank of one thickness, a chequered flat head, grooves under it and a pinched point of four facets.",
  draw: (level) => {
    const chequer = dot(plan, 60, 24);
    return [
      body(wire(front, 11)),
      body(wire(side, 11)),
      body(box(front - 26, head - 8, 52, 8)),
      body(box(side - 26, head - 8, 52, 8)),
      detail(
        row(
          level === "small" ? 3 : 6,
          (i) =>
            line([front - 11, head + 6 + 5 * i], [front + 11, head + 6 + 5 * i]) +
            line([side - 11, head + 6 + 5 * i], [side + 11, head + 6 + 5 * i]),
        ),
      ),
      detail(
        line([front, tip], [front, tip - 22]) +
          line([side - 11, tip - 22], [side + 3, tip - 26], [side, tip]),
      ),
      body(chequer),
      detail(
        row(level === "small" ? 3 : 7, (i) => {
          const at = -18 + (level === "small" ? 18 : 6) * i;
          return line([plan + at, 34], [plan + at, 86]) + line([plan - 26, 60 + at], [plan + 26, 60 + at]);
        }),
        dot(plan, 60, 20),
      ),
      ...roundHole(11),
      tell([226, 20], [plan + 12, 46]),
      span([front - 11, 120], [front + 11, 120]),
      span([front - 11, 172], [front + 11, 172]),
    ];
  },
};

export const panelPin: Drawing = {
  title: "Wire panel pin or oval brad",
  tells: "A thin round or oval wire with a small head, no wider than it must be.",
  draw: () => [
    body(wire(front, 4)),
    body(`M${front - 6} ${head}L${front - 8} ${head - 8}H${front + 8}L${front + 6} ${head}z`),
    body(wire(side, 6)),
    body(`M${side - 8} ${head}L${side - 9} ${head - 7}H${side + 9}L${side + 8} ${head}z`),
    body(dot(plan, 56, 9)),
    body(dot(plan, 56, 4), "edge"),
    ...cut(ellipse(plan, 104, 8, 4.5), "edge"),
    ...roundHole(5),
    tell([222, 30], [plan + 8, 49]),
    tell([224, 86], [plan + 9, 101]),
  ],
};

/** A dome of sheet over a shank, cut through the middle. */
export const domeOnWireShank: Drawing = {
  title: "Brass dome on an iron wire shank",
  tells: "A thin pressed dome, hollow underneath, crimped round the head of a round wire.",
  draw: () => [
    ...cut("M34 104C36 52 76 34 112 34S188 52 190 104H182C180 62 148 43 112 43S44 62 42 104z"),
    ...cut(polygon([106, 48], [118, 48], [118, 190], [112, 214], [106, 190])),
    body("M92 48C96 43 128 43 132 48L126 52H98z", "edge"),
    body("M42 104C60 112 164 112 182 104L186 110C160 122 64 122 38 110z", "edge"),
    tell([222, 46], [182, 74]),
    tell([170, 176], [119, 168]),
  ],
};

export const brassNailCastInOne: Drawing = {
  title: "Brass nail cast in one",
  tells: "A solid head and a square tapered shank of one piece.",
  draw: () => [
    ...cut(
      "M34 104C36 52 76 34 112 34S188 52 190 104C170 110 136 112 124 112L118 212H106L100 112C88 112 54 110 34 104z",
    ),
    body(polygon([196, 150], [222, 150], [222, 176], [196, 176])),
    knife(line([100, 112], [124, 112])),
    tell([166, 148], [124, 114]),
    tell([218, 214], [212, 178]),
  ],
};

/** Waves of the strip and their length, in drawing units. */
const WAVE = 26;

export const corrugatedFastener: Drawing = {
  title: "Corrugated fastener",
  tells: "The wavy edge of a steel strip stands across the joint.",
  draw: (level) => {
    const wave = (y: number) => `M42 ${y}${row(6, (i) => `q${WAVE / 2} ${i % 2 ? 18 : -18} ${WAVE} 0`)}`;
    return [
      body(box(16, 50, 104, 150)),
      body(box(120, 50, 104, 150)),
      ...(level === "full"
        ? [
            detail(
              row(
                5,
                (i) =>
                  line([22, 66 + 28 * i], [112, 68 + 28 * i]) + line([128 + 20 * i, 56], [130 + 20 * i, 194]),
              ),
            ),
          ]
        : []),
      body(`${wave(124)}v7${row(6, (i) => `q${-WAVE / 2} ${i % 2 ? -18 : 18} ${-WAVE} 0`)}z`, "edge"),
      tell([200, 22], [164, 112]),
      tell([96, 22], [119, 50]),
    ];
  },
};

export const wireStaple: Drawing = {
  title: "Wire staples",
  tells: "Thin staples with flat crowns in a row, evenly set.",
  draw: (level) => [
    ...cut(box(16, 120, 208, 62)),
    ...[44, 104, 164].flatMap((x) => [
      body(`M${x} 166V112H${x + 34}V166L${x + 29} 174V118H${x + 5}V174z`, "edge"),
      ...(level === "full" ? [body(box(x, 70, 34, 6), "edge")] : []),
    ]),
    span([61, 94], [121, 94]),
    span([121, 94], [181, 94]),
  ],
};
