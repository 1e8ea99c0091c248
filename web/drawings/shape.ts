/**
 * What a line drawing is made of. Units are drawing units: about one CSS pixel where the drawing fills its column.
 * y runs down. Path data is SVG path syntax.
 */
export interface Shape {
  /** Unique in its view. */
  readonly key: string;
  /** Kind of part it shows, a term id such as `part.drawer-front`. */
  readonly kind: string;
  /** What a person calls it: "second drawer, front". */
  readonly label: string;
  /** Closed outline, filled by hatching only; holes by the even-odd rule. */
  readonly outline: string;
  readonly weight: "outline" | "edge";
  /** Lines at detail weight: beads, dovetails, nails, grain. */
  readonly detail?: string;
  /** Shapes of one slot are sights of one and the same thing. */
  readonly slot?: string;
}

/** A dimension mark with end ticks; says which measure it is, since a drawing by construction has none of its own. */
export interface Dimension {
  readonly along: "x" | "y";
  readonly from: number;
  readonly to: number;
  /** The other coordinate. */
  readonly at: number;
  readonly says: string;
}

/** One side of a form. Shapes stand in reading order: top to bottom, left to right. */
export interface View {
  readonly key: string;
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** Lines that belong to no part: the ground, a part of the case seen behind. */
  readonly ground?: string;
  readonly dimensions: readonly Dimension[];
  /** A few words beside the lines. */
  readonly captions?: readonly { readonly x: number; readonly y: number; readonly says: string }[];
}

/** A form as we draw it, by construction and not to measure. */
export interface DrawnForm {
  readonly form: string;
  readonly label: string;
  readonly views: readonly [View, ...View[]];
  /** The same form as a feature makes it: drawn where that was seen. The first that was seen counts. */
  readonly asSeen?: readonly { readonly feature: string; readonly views: DrawnForm["views"] }[];
}

type Rest = Partial<Pick<Shape, "weight" | "detail" | "slot">>;

/** Makes a shape; the weight is `edge` unless said. */
export const shape = (key: string, kind: string, label: string, outline: string, rest: Rest = {}): Shape => ({
  key,
  kind,
  label,
  outline,
  weight: rest.weight ?? "edge",
  ...(rest.detail === undefined ? {} : { detail: rest.detail }),
  ...(rest.slot === undefined ? {} : { slot: rest.slot }),
});
