import { box, line, n } from "../../pen.ts";
import { arc, row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";

/** A board from its end: rings about a centre below it. */
const rings = (cy: number, from: number, count: number): string =>
  row(count, (i) => arc(120, cy, from + 13 * i, 180, 360));

export const cuppedWrongWay: Drawing = {
  title: "Board cupped against its rings",
  tells:
    "A drying board turns its edges away from the heart (above); this one (below) cups the other way: damp did it.",
  draw: (level) => {
    const true_ = "M16 62C80 92 160 92 224 62L224 88C160 118 80 118 16 88z";
    const wrong = "M16 176C80 146 160 146 224 176L224 202C160 172 80 172 16 202z";
    const count = level === "small" ? 6 : 12;
    return [
      body(true_),
      detail(rings(168, 52, count), true_),
      body(wrong),
      detail(rings(252, 52, count), wrong),
      knife("M16 176C80 146 160 146 224 176"),
      span([120, 154], [120, 176]),
      ...(level === "full"
        ? [says(120, 44, "as rings pull it"), edge(line([16, 176], [22, 176]) + line([218, 176], [224, 176]))]
        : []),
      tell([40, 228], [60, 166]),
    ];
  },
};

export const compressionSet: Drawing = {
  title: "Edges crushed by damp",
  tells:
    "A board that swelled in a frame too tight for it was crushed along its edges, and has shrunk to less than it was.",
  draw: (level) => [
    body(box(16, 24, 208, 192)),
    body(box(44, 52, 152, 136), "edge"),
    body(box(58, 52, 124, 136)),
    ...(level === "full"
      ? [
          detail(
            row(
              5,
              (i) => `M${n(76 + 22 * i)} 58C${n(80 + 22 * i)} 96 ${n(72 + 22 * i)} 140 ${n(77 + 22 * i)} 182`,
            ),
          ),
        ]
      : []),
    edge(
      row(
        level === "small" ? 6 : 14,
        (i) =>
          `M58 ${n(58 + (level === "small" ? 22 : 9.4) * i)}q5 3 2 6M182 ${n(58 + (level === "small" ? 22 : 9.4) * i)}q-5 3 -2 6`,
      ),
    ),
    span([44, 202], [58, 202]),
    span([182, 202], [196, 202]),
    tell([120, 10], [62, 70]),
  ],
};

export const crossGrainMoulding: Drawing = {
  title: "Cross-grain moulding",
  tells: "Short pieces of show wood with grain running across stand side by side on a softwood backing.",
  draw: (level) => {
    const joints = [62, 108, 150, 196];
    return [
      body("M16 84H224V150H16z"),
      edge("M16 100H224M16 134H224"),
      detail(
        row(level === "small" ? 8 : 26, (i) => {
          const x = 20 + (level === "small" ? 26 : 8) * i;
          return `M${x} 84C${x - 2} 100 ${x + 3} 130 ${x} 150`;
        }),
      ),
      edge(joints.map((x) => line([x, 84], [x, 150])).join("")),
      body("M16 62H224V84H16z", "edge"),
      detail(row(3, (i) => line([22, 67 + 6 * i], [214 - 30 * i, 68 + 6 * i]))),
      ...cut("M16 176H58V206H16z"),
      ...cut("M58 176H72A15 15 0 0 1 72 206H58z"),
      span([joints[0] as number, 48], [joints[1] as number, 48]),
      tell([196, 222], [152, 152]),
      ...(level === "full" ? [says(92, 196, "cut through", "start")] : []),
    ];
  },
};
