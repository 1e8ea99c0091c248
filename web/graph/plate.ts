/** A point of a drawing in px; y runs down. */
export type PlatePoint = readonly [x: number, y: number];

/** Which of the page's colours; never all that tells two things apart. */
export type Tone = "ink" | "quiet" | "line" | "scribe" | "against" | "doubt";

interface MarkBase {
  readonly id: string;
  /** What a tap on it chooses, and what it is lit with; ground if undefined. */
  readonly part?: string;
  readonly tone: Tone;
  /** Middle of the mark, px. */
  readonly x: number;
  readonly y: number;
}

/** A closed shape; `points` lie between -1 and 1 of half its size. Without points it is a circle. */
export interface ShapeMark extends MarkBase {
  readonly form: "shape";
  readonly points?: readonly PlatePoint[];
  readonly wide: number;
  readonly high: number;
  /** open: the paper's colour within an outline. solid, pale: its tone, without one. */
  readonly fill: "open" | "broken" | "solid" | "pale";
}

/** A box with its words inside. */
export interface BoxMark extends MarkBase {
  readonly form: "box";
  readonly wide: number;
  readonly high: number;
  readonly isRound: boolean;
  readonly lines: readonly string[];
}

/** Words that begin, have their middle or end at x; y is the middle of their height. */
export interface WordsMark extends MarkBase {
  readonly form: "words";
  readonly lines: readonly string[];
  readonly align: "start" | "middle" | "end";
  readonly size: "axis" | "small" | "name" | "strong";
}

export type PlateMark = ShapeMark | BoxMark | WordsMark;

export type LineLook = "grid" | "knife" | "trunk" | "hard" | "soft" | "bare" | "way" | "excluded" | "extra";

/** A line through points. Extra ones are drawn only while they are lit. */
export interface PlateLine {
  readonly id: string;
  /** It is lit with any of these. */
  readonly parts?: readonly string[];
  readonly points: readonly PlatePoint[];
  readonly look: LineLook;
}

/** A drawing as marks and lines with their places: the same on the screen and on paper. Lines lie below marks. */
export interface Plate {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PlateLine[];
  readonly marks: readonly PlateMark[];
  /** Where the axis of years runs, px from the left. */
  readonly scale: { readonly left: number; readonly right: number };
  /** Where the band of what has no years begins, if there is one. */
  readonly band?: number;
}
