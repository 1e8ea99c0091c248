import { box, line, n, type Point } from "../../pen.ts";
import { arc, closed, drift, row, run, type Step } from "../curves.ts";
import {
  body,
  cut,
  type Detail,
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

/** Drawing units for a millimetre in sections of veneer: the same in all, so that thick and thin compare. */
export const PER_MM = 22;

/** Where the glue line of every laid leaf runs, and the bays in which an uneven one rises and falls. */
const GROUND = 132;
const BAYS = 4;
const bay = (i: number): number => 14 + (212 / BAYS) * i;

/** Thickness at the end of a bay, in millimetres. */
export const thicknessAt = (mm: number, uneven: number, i: number): number => mm - uneven * drift(i, 2);

/** A veneer of so many millimetres on its ground, cut through; `uneven` makes its upper side rise and fall. */
function laid(mm: number, uneven: number): readonly Mark[] {
  const top = (i: number) => GROUND - thicknessAt(mm, uneven, i) * PER_MM;
  const steps = Array.from(
    { length: BAYS },
    (_, i): Step => ["c", bay(i) + 18, top(i), bay(i + 1) - 18, top(i + 1), bay(i + 1), top(i + 1)],
  );
  return [
    body(box(14, GROUND, 212, 66)),
    detail(row(4, (i) => `M22 ${GROUND + 13 + 14 * i}c60 ${5 - 3 * i} 120 ${-4 + 2 * i} 196 0`)),
    ...cut(closed(run([14, top(0)], ...steps), [226, GROUND], [14, GROUND])),
  ];
}

export const thickUnevenVeneer: Drawing = {
  title: "Thick, uneven veneer",
  tells: "Cut through: the leaf is 2 millimetres thick or more and varies from place to place.",
  draw: () => [
    ...laid(2.6, 0.5),
    ...[1, 2, 3].map((i) => span([bay(i), GROUND], [bay(i), GROUND - thicknessAt(2.6, 0.5, i) * PER_MM])),
    says(120, 172, "ground"),
    scaleBar(PER_MM, 3),
  ],
};

export const veneerUnderOneMm: Drawing = {
  title: "Veneer thinner than 1 millimetre",
  tells: "Cut through, at the same scale as the thick leaf: an even sheet of less than 1 millimetre.",
  draw: () => [
    ...laid(0.8, 0),
    span([204, GROUND], [204, GROUND - 0.8 * PER_MM]),
    tell([120, 70], [120, GROUND - 0.8 * PER_MM - 2]),
    says(120, 172, "ground"),
    scaleBar(PER_MM, 3),
  ],
};

/** A leaf lifted at its corner, its glue face turned up; what the saw or knife left is drawn on that face. */
const FACE = "M24 60L196 40L214 148C170 166 120 158 78 186L42 172z";
const OUTLINE: Point[] = [
  [24, 60],
  [196, 40],
];

function leaf(level: Detail, marks: readonly Mark[]): readonly Mark[] {
  return [
    body(FACE),
    ...marks,
    edge(line(...OUTLINE)),
    body("M42 172L78 186C120 158 170 166 214 148L216 156C172 176 124 168 82 196L46 182z", "edge"),
    ...(level === "full" ? [says(120, 30, "glue face")] : []),
  ];
}

export const flatArcsOnGlueFace: Drawing = {
  title: "Glue face with long flat arcs",
  tells: "Arcs so flat that a straightedge is needed to see their rise: a very large disc.",
  draw: (level) => {
    const pitch = level === "small" ? 22 : 9;
    const r = 420;
    return leaf(level, [
      detail(
        row(Math.ceil(240 / pitch), (i) => arc(20 + pitch * i - r, 118, r, -18, 18)),
        FACE,
      ),
      knife(arc(124 - r, 118, r, -12, 12), FACE),
      knife(line([118, 24], [118, 212])),
      tell([206, 214], [124, 128]),
    ]);
  },
};

export const straightLinesOnGlueFace: Drawing = {
  title: "Glue face with regular straight lines",
  tells: "Even parallel saw lines about a millimetre apart, without any curve.",
  draw: (level) => {
    const pitch = level === "small" ? 16 : 6;
    return leaf(level, [
      detail(
        row(Math.ceil(220 / pitch), (i) => `M${n(16 + pitch * i)} 30L${n(26 + pitch * i)} 200`),
        FACE,
      ),
      knife(line([118, 26], [128, 212])),
      span([140, 206], [140 + 2 * pitch, 205]),
      tell([212, 226], [128, 190]),
    ]);
  },
};

export const waveringLinesOnGlueFace: Drawing = {
  title: "Glue face with wavering kerfs",
  tells: "Kerfs that wander a little and drift apart; the deepest are planed off.",
  draw: (level) => {
    const pitch = level === "small" ? 18 : 9;
    const wavering = (i: number): string => {
      const x = 14 + pitch * i + 3 * drift(i);
      return `M${n(x)} 30C${n(x + 6 + 4 * drift(i, 1))} 80 ${n(x - 4 + 4 * drift(i, 3))} 130 ${n(x + 10 + 3 * drift(i, 4))} 200`;
    };
    return leaf(level, [
      detail(row(Math.ceil(220 / pitch), wavering), FACE),
      body("M148 82C172 74 196 84 190 104C180 120 150 116 144 102z", "detail"),
      knife(wavering(level === "small" ? 5 : 11)),
      tell([212, 218], [128, 186]),
    ]);
  },
};

export const latheChecks: Drawing = {
  title: "Knife checks and no kerf lines",
  tells:
    "Many tiny cracks on one face, cut through below: they slant in from the side that bent over the knife.",
  draw: (level) => {
    const few = level === "small" ? 3 : 1;
    return [
      body("M16 30H224V112H16z"),
      detail(
        row(
          Math.floor(44 / few),
          (i) => `M${n(22 + 4.5 * few * i)} ${n(40 + 22 * ((i * 7) % 3))}l3 ${14 - 3 * (i % 3)}`,
        ),
      ),
      ...cut(box(16, 144, 208, 42)),
      edge(
        row(Math.floor(22 / few), (i) =>
          line([26 + 9 * few * i, 186], [35 + 9 * few * i, 163 + 3 * (i % 2)]),
        ),
      ),
      tell([180, 220], [128, 188]),
      tell([200, 16], [170, 44]),
    ];
  },
};

export const figureRepeating: Drawing = {
  title: "Figure that repeats in one wide sheet",
  tells: "The same pattern comes back again and again across a sheet without a joint: the log was unrolled.",
  draw: (level) => {
    const width = 52;
    const figure = (x: number): string =>
      [0, 1, 2, 3]
        .map(
          (i) =>
            `M${x + 8 + 3 * i} 190C${x + 4 + 4 * i} ${150 - 6 * i} ${x + 14 + 3 * i} ${120 - 10 * i} ${x + 26} ${96 - 14 * i}C${x + 38 - 3 * i} ${120 - 10 * i} ${x + 48 - 4 * i} ${150 - 6 * i} ${x + 44 - 3 * i} 190`,
        )
        .join("");
    const whole = box(16, 44, 208, 146);
    return [
      body(whole),
      detail(
        [0, 1, 2, 3]
          .slice(0, level === "small" ? 3 : 4)
          .map((i) => figure(16 + (level === "small" ? 70 : width) * i))
          .join(""),
        whole,
      ),
      span([16 + 26, 28], [16 + 26 + (level === "small" ? 70 : width), 28]),
      span(
        [16 + 26 + (level === "small" ? 70 : width), 28],
        [16 + 26 + 2 * (level === "small" ? 70 : width), 28],
      ),
    ];
  },
};
