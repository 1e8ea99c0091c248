import { box, n, type Point, polygon } from "../pen.ts";
import { arc, row } from "./curves.ts";
import { body, type Detail, detail, edge, type Mark } from "./mark.ts";

/** Where the face of a board lies that is looked at squarely. */
export interface Face {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How far the thickness of such a board runs to the right and down. */
const THICK: Point = [14, 12];

/** The usual face: wide enough for a pattern, with room above for what tells. */
export const FACE: Face = { x: 16, y: 44, width: 194, height: 146 };

export const faceBox = ({ x, y, width, height }: Face): string => box(x, y, width, height);

/** A board looked at squarely, its lower edge and its right end seen as well; the end shows rings, the edge grain. */
export function board(face: Face = FACE, level: Detail = "full"): readonly Mark[] {
  const { x, y, width, height } = face;
  const [dx, dy] = THICK;
  const right = x + width;
  const foot = y + height;
  const end = polygon([right, y], [right + dx, y + dy], [right + dx, foot + dy], [right, foot]);
  const under = polygon([x, foot], [right, foot], [right + dx, foot + dy], [x + dx, foot + dy]);
  const rings = row(6, (i) => arc(right - 30, y + height * 0.45, 34 + 14 * i, -75, 75, 26 + 24 * i));
  const long = row(2, (i) => `M${n(x + 12 + 30 * i)} ${n(foot + 4 + 4 * i)}H${n(right - 26 + 20 * i)}`);
  return [
    body(end),
    body(under),
    ...(level === "full" ? [detail(rings, end), detail(long)] : []),
    body(faceBox(face)),
  ];
}

/** The face alone once more, over lines that were drawn across its edge. */
export const faceAgain = (face: Face = FACE): Mark => edge(faceBox(face));
