import { box, line, n, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, type Detail, type Drawing, detail, edge, knife, type Mark, span, tell } from "../mark.ts";
import { holeMarks, NAIL, roseHead, shank } from "./nail-views.ts";

const { front, side, plan, head, tip } = NAIL;
/** Half widths of a cut shank: one pair of faces converges, the other stays parallel. */
export const CUT = { wide: { under: 15, tip: 5 }, flat: { under: 8, tip: 8 } } as const;

/** Fine lines dragged across a face by the shears. */
const shearLines = (axis: number, half: number, level: Detail): string =>
  row(level === "small" ? 6 : 16, (i) => {
    const y = head + 12 + (level === "small" ? 27 : 10) * i;
    return line([axis - half + 1.5, y + 3], [axis + half - 1.5, y - 3]);
  });

const shanks = (level: Detail): readonly Mark[] => [
  body(shank(front, CUT.wide)),
  body(shank(side, CUT.flat)),
  detail(shearLines(side, 8, level)),
];

export const twoSidedShank: Drawing = {
  title: "Shank that tapers on two sides only",
  tells: "One view narrows, the other stays parallel; the hole is rectangular.",
  draw: (level) => [
    ...shanks("small"),
    body(box(front - 20, head - 10, 40, 10)),
    body(box(side - 13, head - 10, 26, 10)),
    body(box(plan - 14, 48, 28, 18)),
    ...holeMarks(14, 7, level),
    span([front - 14, 58], [front + 14, 58]),
    span([front - 6, 198], [front + 6, 198]),
    span([side - 8, 58], [side + 8, 58]),
    span([side - 8, 196], [side + 8, 196]),
  ],
};

export const cutNailHammeredHead: Drawing = {
  title: "Hammered head on a cut shank",
  tells: "A few hammer facets on the head, each nail its own; the shank is sheared, with two faces parallel.",
  draw: (level) => {
    const { outline, ridges } = roseHead(plan, 58, 22, 30);
    return [
      ...shanks(level),
      body(
        polygon(
          [front - 20, head],
          [front - 15, head - 9],
          [front + 3, head - 14],
          [front + 17, head - 8],
          [front + 21, head],
        ),
      ),
      edge(line([front - 6, head], [front + 3, head - 14], [front + 10, head])),
      body(polygon([side - 15, head], [side - 9, head - 10], [side + 3, head - 13], [side + 14, head])),
      edge(line([side - 2, head], [side + 3, head - 13])),
      body(outline),
      edge(ridges),
      ...holeMarks(14, 7, level),
      tell([226, 20], [plan + 10, 50]),
      tell([164, 122], [side + 10, 110]),
    ];
  },
};

export const cutNailStampedHead: Drawing = {
  title: "Machine-stamped head on a cut shank",
  tells:
    "A flat head struck by one blow, the same on every nail; the shank has shear lines across two faces.",
  draw: (level) => [
    ...shanks(level),
    body(box(front - 25, head - 9, 50, 9)),
    body(box(side - 16, head - 9, 32, 9)),
    body(box(plan - 21, 44, 42, 27)),
    ...holeMarks(14, 7, level),
    knife(line([front - 32, head - 9], [side + 24, head - 9])),
    tell([96, 14], [96, head - 11]),
    tell([164, 122], [side + 10, 110]),
  ],
};

export const cutNail: Drawing = {
  title: "Cut nail",
  tells: "Fine drag lines across two faces, and a thin burr along their edges, from shearing.",
  draw: (level) => {
    // One face enlarged: the burr stands at the lower edge of the shear.
    const x = 96;
    const face = polygon([x - 34, 14], [x + 34, 14], [x + 24, 226], [x - 24, 226]);
    const burr = (side: -1 | 1) =>
      `M${n(x + side * 34)} 14l${side * 7} 4L${n(x + side * 31)} 222l${n(side * -7)} 4z`;
    return [
      body(burr(1), "edge"),
      body(face),
      detail(
        row(level === "small" ? 9 : 30, (i) => {
          const y = 24 + (level === "small" ? 23 : 6.8) * i;
          const half = 34 - (10 * (y - 14)) / 212;
          return line([x - half + 3, y + 6], [x + half - 3, y - 7]);
        }),
      ),
      body(polygon([176, 84], [212, 84], [212, 112], [176, 112])),
      edge(`M212 84l8 -3M212 112l8 3`),
      body(`M212 84l9 -4 -2 6zM176 112l-9 4 2 -6z`, "edge"),
      knife(line([x + 41, 18], [x + 31, 222])),
      tell([190, 30], [x + 42, 46]),
      tell([180, 176], [222, 88]),
    ];
  },
};

export const cutNailPinchMarks: Drawing = {
  title: "Pinch marks below the head",
  tells: "Shallow waists under the head, where jaws held the shank while the head was struck.",
  draw: (level) => {
    const waisted = (axis: number, under: number, foot: number, waist: number) =>
      `M${axis - under} ${head}C${axis - under + waist} ${head + 8} ${axis - under + waist} ${head + 18} ${axis - under} ${head + 26}L${axis - foot} ${tip}H${axis + foot}L${axis + under} ${head + 26}C${axis + under - waist} ${head + 18} ${axis + under - waist} ${head + 8} ${axis + under} ${head}z`;
    return [
      body(waisted(front, 15, 5, 7)),
      body(waisted(side, 8, 8, 1)),
      detail(shearLines(side, 8, level)),
      body(box(front - 25, head - 9, 50, 9)),
      body(box(side - 16, head - 9, 32, 9)),
      body(box(plan - 22, 44, 44, 28)),
      ...holeMarks(14, 7, level),
      tell([16, 74], [front - 11, head + 13]),
      tell([108, 74], [front + 11, head + 13]),
    ];
  },
};
