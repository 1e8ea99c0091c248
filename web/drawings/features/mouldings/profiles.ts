import type { Point } from "../../pen.ts";
import { type Run, run } from "../curves.ts";

/** A moulding profile: its name, what makes it, and its line from the outer upper point inwards and down. */
export interface Profile {
  readonly name: string;
  readonly tells: string;
  /** In a field 100 wide and 100 high; wood lies to the left of the line. */
  readonly line: Run;
  /** Where on the line its kind is best told. */
  readonly at: Point;
}

const fillet = 12;

/** A quarter round, fillets above and below. */
export const OVOLO: Profile = {
  name: "Ovolo",
  tells: "One convex quarter of a round, between two small flats.",
  line: run([100, 0], ["l", 100, fillet], ["l", 88, fillet], ["v", 12, 88], ["l", 12, 100]),
  at: [66, 66],
};

export const CAVETTO: Profile = {
  name: "Cavetto",
  tells: "One hollow quarter of a round, between two small flats.",
  line: run([100, 0], ["l", 100, fillet], ["h", 24, 88], ["l", 12, 88], ["l", 12, 100]),
  at: [46, 34],
};

export const CYMA_RECTA: Profile = {
  name: "Cyma recta",
  tells: "A double curve, hollow above and round below.",
  line: run([100, 0], ["l", 100, fillet], ["sh", 14, 88], ["l", 14, 100]),
  at: [57, 50],
};

export const CYMA_REVERSA: Profile = {
  name: "Cyma reversa",
  tells: "A double curve, round above and hollow below.",
  line: run([100, 0], ["l", 100, fillet], ["l", 94, fillet], ["sv", 14, 88], ["l", 14, 100]),
  at: [54, 50],
};

export const ASTRAGAL: Profile = {
  name: "Astragal",
  tells: "A half-round bead with a small flat on each side.",
  line: run(
    [62, 0],
    ["l", 62, 22],
    ["l", 68, 22],
    ["h", 96, 50],
    ["v", 68, 78],
    ["l", 62, 78],
    ["l", 62, 100],
  ),
  at: [96, 50],
};

/** A flat quarter of an ellipse with a small step below the surface: edges of tops and lips of drawers. */
export const THUMBNAIL: Profile = {
  name: "Thumbnail",
  tells: "A flat quarter of an ellipse, set down by a small step from the surface.",
  line: run([40, 14], ["l", 40, 26], ["h", 100, 74], ["l", 100, 100]),
  at: [82, 40],
};

/** Two half rounds side by side, as on the rails of early cases. */
export const DOUBLE_ARCH: Profile = {
  name: "Double arch",
  tells: "Two half-rounds side by side, meeting in a sharp quirk.",
  line: run([60, 0], ["h", 88, 25], ["v", 60, 50], ["h", 88, 75], ["v", 60, 100]),
  at: [60, 50],
};

export const SCOTIA: Profile = {
  name: "Scotia",
  tells: "A deep hollow of two radii, wider below than above.",
  line: run([84, 0], ["l", 84, 14], ["l", 78, 14], ["h", 44, 40], ["v", 98, 86], ["l", 98, 100]),
  at: [44, 40],
};

export const BEAD: Profile = {
  name: "Quirked bead",
  tells: "A round bead cut off from the flat by a narrow quirk.",
  line: run([80, 0], ["l", 80, 40], ["l", 66, 40], ["l", 66, 52], ["h", 90, 76], ["v", 66, 100]),
  at: [67, 46],
};

/** Where a profile ends. */
export const endOf = ({ line }: Profile): Point => {
  const last = line.steps.at(-1);
  if (last === undefined) return line.start;
  return last[0] === "c" ? [last[5], last[6]] : [last[1], last[2]];
};
