import type { Point } from "../pen.ts";

/** How much is drawn: `small` leaves out what a drawing of 64 px cannot hold. */
export type Detail = "small" | "full";

/** Side of the square every drawing stands in, in drawing units. y runs down. */
export const SIDE = 240;

export type Weight = "outline" | "edge" | "detail";
/** Surfaces told apart by lines: a cut through wood or metal, wood darkened by air, a dull film or shadow. */
export type Tone = "section" | "dark" | "dots";

/** One stroke or surface of a drawing. Marks are laid one over the other in order; bodies hide what lies under them. */
export type Mark =
  | { readonly kind: "body"; readonly d: string; readonly weight: Weight; readonly within?: string }
  | { readonly kind: "tone"; readonly d: string; readonly tone: Tone }
  | { readonly kind: "line"; readonly d: string; readonly weight: Weight; readonly within?: string }
  | { readonly kind: "knife"; readonly d: string; readonly within?: string }
  | { readonly kind: "tell"; readonly from: Point; readonly to: Point }
  | { readonly kind: "span"; readonly from: Point; readonly to: Point }
  | {
      readonly kind: "says";
      readonly at: Point;
      readonly text: string;
      readonly anchor: "start" | "middle" | "end";
    }
  | { readonly kind: "scale"; readonly mm: number; readonly unitsPerMm: number }
  /** A drawing made in units of its own, set in at (x, y). */
  | {
      readonly kind: "inset";
      readonly x: number;
      readonly y: number;
      readonly scale: number;
      readonly marks: readonly Mark[];
    };

/** A drawing of something to look for, made by construction and not to measure unless it has a scale bar. */
export interface Drawing {
  readonly title: string;
  /** One sentence for those who do not see it, naming what tells. */
  readonly tells: string;
  readonly draw: (detail: Detail) => readonly Mark[];
}

const inside = (within: string | undefined) => (within === undefined ? {} : { within });

/** A closed shape that hides what lies behind it. */
export const body = (d: string, weight: Weight = "outline", within?: string): Mark => ({
  kind: "body",
  d,
  weight,
  ...inside(within),
});

export const outline = (d: string, within?: string): Mark => ({
  kind: "line",
  d,
  weight: "outline",
  ...inside(within),
});
export const edge = (d: string, within?: string): Mark => ({
  kind: "line",
  d,
  weight: "edge",
  ...inside(within),
});
export const detail = (d: string, within?: string): Mark => ({
  kind: "line",
  d,
  weight: "detail",
  ...inside(within),
});

/** A cut face: hidden ground, hatching at 45 degrees, outline. */
export const cut = (d: string, weight: Weight = "outline"): readonly Mark[] => [
  body(d, weight),
  { kind: "tone", d, tone: "section" },
];

/** A surface told apart by fine lines or dots, without an outline of its own. */
export const toned = (d: string, tone: Tone): Mark => ({ kind: "tone", d, tone });

/** A line scribed along what tells. It never stands alone: a `tell` or a `span` belongs to it. */
export const knife = (d: string, within?: string): Mark => ({ kind: "knife", d, ...inside(within) });

/** A knife line from the margin to what tells, ending in a crow's foot. */
export const tell = (from: Point, to: Point): Mark => ({ kind: "tell", from, to });

/** A measure that tells, between two end ticks. */
export const span = (from: Point, to: Point): Mark => ({ kind: "span", from, to });

/** A word or two beside the lines; left out of small drawings. */
export const says = (
  x: number,
  y: number,
  text: string,
  anchor: "start" | "middle" | "end" = "middle",
): Mark => ({
  kind: "says",
  at: [x, y],
  text,
  anchor,
});

/** A scale bar at the foot of the drawing. */
export const scaleBar = (unitsPerMm: number, mm: number): Mark => ({ kind: "scale", mm, unitsPerMm });
