import type { Year, YearsJson } from "#server/domain/years.ts";
import type { PlatePoint } from "./plate.ts";

/** A node of the path view with its place; px, y runs down. */
export interface PictureNode {
  readonly id: string;
  readonly kind: "feature" | "term" | "date" | "open";
  readonly label: string;
  readonly x: number;
  readonly y: number;
  /** Of a feature or term: size of its box, px, and its label in lines. */
  readonly box?: { readonly wide: number; readonly high: number; readonly lines: readonly string[] };
  /** Of a date: where its years begin and end on the scale, px; null where nothing bounds that end. */
  readonly span?: readonly [number | null, number | null];
  /** Of an end: where its words begin or end. */
  readonly words?: { readonly x: number; readonly y: number; readonly align: "start" | "end" };
  /** What the path that ends here says. */
  readonly verdict?: "against" | "unusual" | "for" | "silent" | "excluded";
}

export interface PictureEdge {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** From the one to the other; no stretch lies behind a box. */
  readonly points: readonly PlatePoint[];
  /** True if every path through it is an excluded way. */
  readonly isExcluded: boolean;
}

/** A path as the list beside the drawing tells it; `nodes` and `edges` are what it lights up. */
export interface PicturePath {
  readonly id: string;
  readonly finding: string;
  readonly says: string;
  readonly source?: string;
  readonly verdict: NonNullable<PictureNode["verdict"]>;
  readonly nodes: readonly string[];
  readonly edges: readonly string[];
}

export interface Picture {
  readonly nodes: readonly PictureNode[];
  readonly edges: readonly PictureEdge[];
  readonly paths: readonly PicturePath[];
  readonly width: number;
  readonly height: number;
  /** The scale of years: where it runs, years with their places, the claimed years. */
  readonly scale: {
    readonly left: number;
    readonly right: number;
    readonly ticks: readonly { readonly year: Year; readonly x: number }[];
    readonly claimed: readonly [number | null, number | null];
  };
}

/** One path to be drawn: what the report says of it, with names. */
export interface PathToDraw {
  readonly finding: string;
  readonly terms: readonly { readonly id: string; readonly label: string }[];
  /** The claim that ends it; none where the chain has no date. */
  readonly end?: string;
  /** Words at the end: its years, or why it says nothing. */
  readonly endLabel: string;
  readonly years: YearsJson;
  readonly verdict: PicturePath["verdict"];
  readonly says: string;
  /** Where its date comes from, with the basis. */
  readonly source?: string;
}
