import { box, dot, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Detail, type Drawing, detail, edge, type Mark, says, span, tell } from "../mark.ts";

/** Cane in six ways over an opening: pairs across and down, single strands on both slants. */
const weave = (level: Detail, pitch: number, within: string): readonly Mark[] => [
  edge(
    row(
      Math.ceil(160 / pitch),
      (i) =>
        line([52 + pitch * i, 40], [52 + pitch * i, 200]) + line([40, 52 + pitch * i], [200, 52 + pitch * i]),
    ),
    within,
  ),
  ...(level === "full"
    ? [
        edge(
          row(
            Math.ceil(300 / pitch),
            (i) =>
              line([40, 60 + pitch * i - 60], [200, pitch * i - 100]) +
              line([40, pitch * i - 100], [200, pitch * i + 60]),
          ),
          within,
        ),
      ]
    : []),
];

export const caneThroughHoles: Drawing = {
  title: "Cane woven through holes",
  tells: "A row of drilled holes runs round the frame, and each strand goes down through one.",
  draw: (level) => {
    const opening = box(54, 50, 132, 132);
    const pitch = level === "small" ? 33 : 16.5;
    const count = Math.round(132 / pitch) + 1;
    return [
      body(`${box(14, 14, 212, 204)}${opening}`),
      ...weave(level, pitch, opening),
      edge(opening),
      ...Array.from({ length: count }, (_, i) => 54 + pitch * i).flatMap((at) => [
        body(dot(at, 38, 4), "edge"),
        body(dot(at, 194, 4), "edge"),
        body(dot(42, at - 4, 4), "edge"),
        body(dot(198, at - 4, 4), "edge"),
      ]),
      span([54, 26], [54 + pitch, 26]),
      tell([150, 4], [120, 34]),
    ];
  },
};

export const sheetCaneInGroove: Drawing = {
  title: "Cane sheet in a groove",
  tells: "The sheet is pressed into one groove by a spline; there are no holes. Below, cut through.",
  draw: (level) => {
    const opening = box(54, 34, 132, 96);
    return [
      body(`${box(14, 8, 212, 148)}${opening}`),
      ...weave(level, level === "small" ? 26 : 14, opening),
      body(`${box(44, 24, 152, 116)}${box(52, 32, 136, 100)}`),
      ...cut("M14 176H104V206H120V176H226V232H14z"),
      body("M106 178H118V204H106z"),
      detail(line([110, 182], [110, 200]) + line([114, 182], [114, 200])),
      edge("M118 178C140 174 180 174 226 174M106 204H118"),
      says(60, 172, "spline"),
      tell([76, 170], [104, 182]),
      tell([228, 4], [192, 34]),
    ];
  },
};
