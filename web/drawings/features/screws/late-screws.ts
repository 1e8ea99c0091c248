import { dot, line, type Point, polygon } from "../../pen.ts";
import { body, type Drawing, edge, says, span, tell } from "../mark.ts";
import { crests, halfAt, type Screw, screwMarks } from "./screw.ts";

/** Two threads run side by side: each turn shows two crests. */
export const TWIN: Screw = {
  axis: 66,
  top: 14,
  head: 34,
  shank: { top: 12, foot: 12 },
  threadFrom: 52,
  pitch: 14,
  crest: { top: 18, foot: 17 },
  depth: 7,
  foot: 222,
  end: "gimlet",
};

export const twinThreadScrew: Drawing = {
  title: "Screw with two threads to the head",
  tells:
    "A slender hard screw, threaded to the head, with two threads side by side: steep, and two crests to a turn.",
  draw: (level) => {
    const screw = level === "small" ? { ...TWIN, pitch: 24 } : TWIN;
    const [a, , c] = crests(screw).slice(2) as [number, number, number];
    const steep = crests(screw)
      .slice(0, -2)
      .map((y) =>
        line([screw.axis - halfAt(screw, y), y + screw.pitch * 1.2], [screw.axis + halfAt(screw, y), y]),
      )
      .join("");
    return [
      ...screwMarks(screw),
      edge(level === "full" ? steep : ""),
      body(dot(184, 160, 38)),
      body(
        polygon(
          [178, 132],
          [190, 132],
          [193, 151],
          [212, 154],
          [212, 166],
          [193, 169],
          [190, 188],
          [178, 188],
          [175, 169],
          [156, 166],
          [156, 154],
          [175, 151],
        ),
        "edge",
      ),
      span([98, a], [98, c]),
      says(108, (a + c) / 2 + 4, "one turn", "start"),
      tell([150, 222], [72, 216]),
    ];
  },
};

export const hexagonSocketScrew: Drawing = {
  title: "Screw with a hexagon socket",
  tells: "A six-sided hole in the head takes the key.",
  draw: () => {
    const hexagon = (r: number): Point[] =>
      [0, 60, 120, 180, 240, 300].map(
        (degrees): Point => [
          80 + r * Math.cos((degrees * Math.PI) / 180),
          108 + r * Math.sin((degrees * Math.PI) / 180),
        ],
      );
    return [
      body(dot(80, 108, 60)),
      body(polygon(...hexagon(30)), "edge"),
      edge(polygon(...hexagon(25))),
      body("M178 50H204V150C204 168 196 178 182 178H130V152H172C176 152 178 150 178 146z"),
      edge("M190 50V146C190 158 186 165 176 165H130"),
      says(176, 200, "key"),
      tell([30, 22], [62, 80]),
    ];
  },
};
