import { box, line, n, type Point, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Detail, detail, edge, type Mark } from "../mark.ts";
import { type Layout, setOut, type Tail } from "./tails.ts";

/** The front corner of a drawer: its side squarely before us, its front going back to the left. */
export const CORNER = { x: 74, right: 230, top: 66, foot: 196 } as const;
/** The way back along the face of the front, and the thickness of the side as a share of it. */
const BACK: Point = [-58, -40];
const SIDE_THICK = 0.28;
const FRONT_THICK = 46;

const { x, right, top, foot } = CORNER;
export const HEIGHT = foot - top;

const back = ([px, py]: Point, share = 1): Point => [px + BACK[0] * share, py + BACK[1] * share];

/** The face of the front, going back to the left. */
export const frontFace = (): string => polygon([x, top], [x, foot], back([x, foot]), back([x, top]));
export const sideFace = (): string => box(x, top, right - x, HEIGHT);

/** A point on the face of the front: `share` of the way back, `v` below its top. */
export const onFront = (share: number, v: number): Point => back([x, top + v], share);

/** Depth of the lap in front of the tails; 0 for a through dovetail. */
interface Corner {
  readonly lap: number;
  readonly tails: readonly Tail[];
}

/** Where the tails end and where their gauge line runs. */
export const ends = (lap: number): { end: number; base: number } => ({ end: x + lap, base: x + FRONT_THICK });

export const cornerTails = (layout: Layout, lap: number): readonly Tail[] =>
  setOut(layout, HEIGHT, FRONT_THICK - lap);

/** Both flanks of every tail; at its base a tail runs on into the side without a line. */
const flanks = ({ lap, tails }: Corner): string => {
  const { end, base } = ends(lap);
  return tails
    .map(
      (tail) =>
        line([base, top + tail.base[0]], [end, top + tail.end[0]], [end, top + tail.end[1]]) +
        line([end, top + tail.end[1]], [base, top + tail.base[1]]),
    )
    .join("");
};

/** The pins between the tails with the lap: end grain of the front, one closed shape. */
function pins({ lap, tails }: Corner): string {
  const { end, base } = ends(lap);
  const way = tails.flatMap((tail): Point[] => [
    [base, top + tail.base[0]],
    [end, top + tail.end[0]],
    [end, top + tail.end[1]],
    [base, top + tail.base[1]],
  ]);
  return polygon([x, top], [base, top], ...way, [base, foot], [x, foot]);
}

/** Tails that run out to the face of the front: their end grain there. */
export const tailEnds = (tails: readonly Tail[]): string =>
  tails
    .map(({ end: [a, b] }) =>
      polygon([x, top + a], [x, top + b], back([x, top + b], SIDE_THICK), back([x, top + a], SIDE_THICK)),
    )
    .join("");

/** The corner with its joint; the front is plain unless more is drawn on it. */
export function corner(joint: Corner, level: Detail = "full"): readonly Mark[] {
  const { base } = ends(joint.lap);
  const sideTop = polygon(
    [base, top],
    [right, top],
    back([right, top], SIDE_THICK),
    back([base, top], SIDE_THICK),
  );
  const frontTop = polygon([x, top], [base, top], back([base, top]), back([x, top]));
  return [
    body(frontTop),
    body(sideTop, "edge"),
    body(sideFace()),
    body(frontFace()),
    ...cut(pins(joint), "edge"),
    edge(flanks(joint)),
    ...(joint.lap === 0 && joint.tails.length > 0 ? cut(tailEnds(joint.tails), "edge") : []),
    ...(level === "full" ? [detail(sideGrain())] : []),
  ];
}

const sideGrain = (): string =>
  row(
    4,
    (i) =>
      `M${n(x + 68 + 12 * (i % 2))} ${n(top + 22 + 28 * i)}c30 ${n(3 - 2 * i)} 60 ${n(-2 + i)} ${n(72 - 14 * (i % 3))} ${n(i - 1)}`,
  );

/** Saw cuts that ran a little past the gauge line. */
export const overcuts = (tails: readonly Tail[], lap: number, slope: number, by = 9): string => {
  const { base } = ends(lap);
  return tails
    .flatMap(({ base: [a, b] }) => [
      line([base, top + a], [base + by, top + a + slope * by]),
      line([base, top + b], [base + by, top + b - slope * by]),
    ])
    .join("");
};

/** The line scribed with the gauge along the shoulders. */
export const gaugeLine = (lap: number): string => {
  const { base } = ends(lap);
  return line([base, top - 0], [base, foot]);
};
