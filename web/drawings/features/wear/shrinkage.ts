import { box, dot, ellipse, grain, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import {
  body,
  cut,
  type Detail,
  type Drawing,
  detail,
  edge,
  knife,
  says,
  span,
  tell,
  toned,
} from "../mark.ts";
import { dashes } from "../oblique.ts";

/** Share of its width that the drawn top has lost across the grain: more than any wood does, so that it is seen. */
export const LOST = 0.08;
const RADIUS = 92;

export const ovalTop: Drawing = {
  title: "Round top grown oval",
  tells:
    "A top turned round is narrower across the grain than along it (drawn too strongly, so that it is seen).",
  draw: (level) => {
    const across = RADIUS * (1 - LOST);
    const top = ellipse(112, 112, RADIUS, across);
    return [
      body(top),
      detail(
        row(level === "small" ? 5 : 11, (i) => {
          const step = level === "small" ? 30 : 14;
          const y = 112 + step * (i - (level === "small" ? 2 : 5));
          return `M16 ${y}C70 ${y - 4} 150 ${y + 4} 208 ${y - 1}`;
        }),
        top,
      ),
      edge(circleOfDashes(112, 112, RADIUS, level)),
      span([20, 222], [204, 222]),
      span([222, 112 - across], [222, 112 + across]),
    ];
  },
};

const circleOfDashes = (cx: number, cy: number, r: number, level: Detail): string => {
  const count = level === "small" ? 26 : 52;
  return row(count, (i) => {
    const a = (i / count) * 2 * Math.PI;
    const b = ((i + 0.5) / count) * 2 * Math.PI;
    return line([cx + r * Math.cos(a), cy + r * Math.sin(a)], [cx + r * Math.cos(b), cy + r * Math.sin(b)]);
  });
};

export const marginAtPanel: Drawing = {
  title: "Unfinished margin at a panel",
  tells: "A bare strip has come out of the groove as the panel shrank across its grain.",
  draw: (level) => {
    const panel = box(76, 54, 88, 138);
    return [
      body(box(16, 14, 208, 214)),
      body(box(56, 54, 128, 138)),
      toned(panel, "dots"),
      edge(line([16, 54], [224, 54]) + line([16, 192], [224, 192])),
      ...(level === "full" ? [detail(grain(60, 58, 120, 130, 6, "y"))] : []),
      knife(line([76, 54], [76, 192]) + line([164, 54], [164, 192])),
      span([56, 208], [76, 208]),
      span([164, 208], [184, 208]),
      tell([30, 30], [66, 84]),
    ];
  },
};

export const gapsBetweenBoards: Drawing = {
  title: "Boards shrunk apart",
  tells: "Gaps have opened between nailed boards, each as wide as a board can lose across its grain.",
  draw: (level) => {
    const boards = [16, 88, 158];
    return [
      ...boards.flatMap((x, i) => [
        body(box(x, 20, i === 0 ? 66 : 64, 190)),
        ...(level === "full" ? [detail(grain(x + 3, 24, 58, 182, 4, "y"))] : []),
        edge(dot(x + 14, 32, 2.5) + dot(x + 50, 32, 2.5) + dot(x + 14, 198, 2.5) + dot(x + 50, 198, 2.5)),
      ]),
      span([82, 226], [88, 226]),
      tell([120, 10], [86, 40]),
      tell([190, 10], [156, 40]),
    ];
  },
};

/** A joint cut through along its peg. */
export const proudPeg: Drawing = {
  title: "Peg standing proud",
  tells: "The rail has shrunk in thickness and the peg not in length: its end can be felt with a fingertip.",
  draw: () => [
    body(box(24, 84, 192, 96)),
    detail(grain(30, 90, 180, 84, 6)),
    ...cut(polygon([104, 70], [136, 70], [130, 190], [110, 190])),
    edge(dashes([24, 180], [216, 180])),
    knife(line([16, 84], [224, 84])),
    span([156, 70], [156, 84]),
    tell([80, 30], [106, 68]),
  ],
};

export const polygonalPeg: Drawing = {
  title: "Polygonal tapered peg",
  tells: "Split and shaved, with flats and a taper; the hole is round and the peg is not.",
  draw: () => [
    body(dot(72, 70, 46)),
    body(polygon([46, 46], [72, 30], [100, 40], [112, 68], [98, 100], [68, 110], [38, 94], [32, 66])),
    body(polygon([150, 20], [206, 20], [190, 222], [172, 222])),
    edge(line([168, 20], [178, 222]) + line([190, 20], [185, 222])),
    detail(line([158, 26], [174, 200]) + line([198, 26], [188, 200])),
    span([150, 10], [206, 10]),
    span([170, 232], [192, 232]),
    tell([30, 200], [56, 108]),
    says(72, 140, "end"),
  ],
};

export const wideTopAndCleat: Drawing = {
  title: "Wide top beside its cleat",
  tells: "The boards have shrunk and the cleat has not: its ends stand out beyond the edge of the top.",
  draw: (level) => [
    body(box(16, 48, 168, 144)),
    ...(level === "full" ? [detail(grain(20, 52, 160, 136, 9))] : []),
    edge(line([16, 120], [184, 120])),
    body(box(184, 38, 38, 164)),
    detail(grain(188, 44, 30, 152, 3, "y")),
    span([172, 38], [172, 48]),
    span([172, 192], [172, 202]),
    tell([120, 18], [190, 36]),
    tell([120, 226], [190, 204]),
  ],
};
