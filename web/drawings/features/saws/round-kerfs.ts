import { box, line, polygon } from "../../pen.ts";
import { board, FACE, faceBox } from "../board.ts";
import { arc, drift, row } from "../curves.ts";
import {
  body,
  cut,
  type Detail,
  type Drawing,
  detail,
  knife,
  type Mark,
  says,
  scaleBar,
  span,
  tell,
} from "../mark.ts";
import { oblique } from "../oblique.ts";

const { x, y, width, height } = FACE;
const FOOT = y + height;

/** Kerfs of a disc of radius `r` whose centre lies at height `cy` and moves along the board. */
export const discKerfs = (r: number, cy: number, pitch: number, count: number, start: number): string =>
  row(count, (i) => arc(start + pitch * i + pitch * 0.22 * drift(i) - r, cy, r, -88, 88));

/** Radius of the drawn saw, in drawing units. */
export const DISC = 170;
const CENTRE = y + 118;

/** The arc whose leading point is at `at`, from the upper to the lower edge of the board, with chord and rise. */
function measured(r: number, cy: number, at: number): readonly Mark[] {
  const on = (height: number) => at - r + Math.sqrt(r * r - (height - cy) ** 2);
  const top = on(y);
  const foot = on(FOOT);
  const slope = (foot - top) / height;
  const mid = y + height / 2;
  // The rise is measured square to the chord; for so flat a chord along x is near enough to see it.
  const chord = top + slope * (mid - y);
  return [
    knife(arc(at - r, cy, r, -88, 88), faceBox(FACE)),
    knife(line([top, y], [foot, FOOT])),
    span([chord, mid], [on(mid), mid]),
  ];
}

export const circularSawMark: Drawing = {
  title: "Circular-saw mark",
  tells: "Arcs of one radius: every kerf has the same curve. Chord and rise give the radius.",
  draw: (level) => [
    ...board(FACE, level),
    detail(
      discKerfs(DISC, CENTRE, level === "small" ? 20 : 9, level === "small" ? 14 : 30, x - 8),
      faceBox(FACE),
    ),
    ...measured(DISC, CENTRE, x + 128),
    ...(level === "full" ? [says(x + 76, 34, "chord"), says(x + 136, y + 66, "rise", "start")] : []),
    tell([x + 118, 22], [x + 98, y - 2]),
  ],
};

export const largeCircularSawMark: Drawing = {
  title: "Wide arcs on a thick board",
  tells: "Arcs of a log saw, of 370 to 900 millimetres radius, on stock as it came from the log.",
  draw: (level) => {
    // One drawing unit is two millimetres: the arcs have a radius of 600 mm.
    const thick = { ...FACE, height: 112, y: 60 };
    return [
      body(polygon([x, 172], [x + width, 172], [x + width + 24, 196], [x + 24, 196])),
      body(polygon([x + width, 60], [x + width + 24, 84], [x + width + 24, 196], [x + width, 172])),
      detail(
        row(level === "small" ? 0 : 3, (i) =>
          line([x + 20 + 10 * i, 177 + 6 * i], [x + width - 20 + 6 * i, 177 + 6 * i]),
        ),
      ),
      body(faceBox(thick)),
      detail(
        discKerfs(300, 150, level === "small" ? 22 : 10, level === "small" ? 14 : 30, x - 12),
        faceBox(thick),
      ),
      knife(arc(x + 120 - 300, 150, 300, -30, 30), faceBox(thick)),
      tell([x + 150, 36], [x + 108, 60]),
      scaleBar(0.5, 100),
    ];
  },
};

/** A rebate along the end of a board: its wall faces us, its floor comes forward. */
export const smallArcsInRebate: Drawing = {
  title: "Small saw arcs in a rebate",
  tells: "Tight arcs on the wall of a rebate, the kerf running on a little past the inner corner.",
  draw: (level: Detail) => {
    const few = level === "small" ? 2.2 : 1;
    const back = oblique([0, 0], [44, -26]);
    // The profile of the board, from the lower front edge up the front, in over the floor, up the wall.
    const step = polygon(
      back(186, 198),
      back(186, 154),
      back(186, 154, 0.62),
      back(186, 84, 0.62),
      back(186, 84, 1.05),
      back(186, 198, 1.05),
    );
    const [wx, wy] = back(10, 84, 0.62);
    const wall = box(wx, wy, 176, 70);
    const floor = polygon(back(10, 154), back(186, 154), back(186, 154, 0.62), back(10, 154, 0.62));
    const r = 74;
    return [
      ...cut(step),
      body(polygon(back(10, 84, 0.62), back(186, 84, 0.62), back(186, 84, 1.05), back(10, 84, 1.05)), "edge"),
      body(floor),
      body(wall),
      detail(
        row(Math.floor(19 / few), (i) => arc(wx + 4 + 11 * few * i - r, wy + 44, r, -70, 70)),
        wall,
      ),
      body(box(10, 154, 176, 44)),
      ...(level === "full" ? [detail(line([22, 168], [120, 167]) + line([60, 184], [170, 183]))] : []),
      knife(arc(wx + 92 - r, wy + 44, r, -38, 21), wall),
      knife(line([wx, wy + 74], [wx + 174, wy + 74])),
      tell([150, 22], [wx + 84, wy + 4]),
      tell([100, 226], [wx + 46, wy + 77]),
    ];
  },
};
