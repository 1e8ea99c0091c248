import type { Year } from "#server/domain/years.ts";
import type { ClaimSpans, DrawnSpan } from "#web/shared/years/claim-spans.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import type { PlateLine, PlateMark, PlatePoint, ShapeMark } from "./plate.ts";

/** Where years lie, px. */
export interface Scale {
  readonly axis: YearAxis;
  readonly left: number;
  readonly right: number;
}

/** The place of a year; without one the end of the scale that is asked for. */
export const placeOf = ({ axis, left, right }: Scale, year: Year | null, edge: "first" | "last"): number =>
  left + (axis.at(year, edge) / 100) * (right - left);

const THICK = { physical: 7, practice: 3.5 } as const;
const DIAMOND: readonly PlatePoint[] = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
];
const towards = (side: -1 | 1): readonly PlatePoint[] => [
  [-side, -1],
  [side, 0],
  [-side, 1],
];

interface ClaimToDraw {
  readonly id: string;
  readonly part: string;
  readonly spans: ClaimSpans;
  readonly isSoft: boolean;
  readonly y: number;
}

/** One dated claim on a scale: a bar where the thing was there, a diamond where it is recorded, a struck line where it is not found. */
export function claimMarks(
  { id, part, spans, isSoft, y }: ClaimToDraw,
  scale: Scale,
): { readonly marks: readonly PlateMark[]; readonly lines: readonly PlateLine[] } {
  const from = placeOf(scale, spans.pale[0], "first");
  const to = placeOf(scale, spans.pale[1], "last");
  const base = { part, tone: "ink", y } as const;
  if (spans.kind === "hold") {
    const high = isSoft ? THICK.practice : THICK.physical;
    const bar = (span: DrawnSpan | null, fill: "solid" | "pale"): ShapeMark[] => {
      if (span === null || (span[0] ?? scale.axis.first) >= scale.axis.last) return [];
      const left = placeOf(scale, span[0], "first");
      const wide = Math.max(placeOf(scale, span[1], "last") - left, 1.5);
      return [
        { ...base, id: `${id} ${fill}`, form: "shape", points: SQUARE, x: left + wide / 2, wide, high, fill },
      ];
    };
    return {
      lines: [],
      marks: [
        ...bar(spans.pale, "pale"),
        ...bar(spans.solid, "solid"),
        ...arrows({ ...base, id }, spans, high, scale),
      ],
    };
  }
  const line = {
    id: `${id} line`,
    parts: [part],
    points: [
      [from, y],
      [to, y],
    ],
    look: "bare",
  } as const;
  const mark = { ...base, id, form: "shape", x: (from + to) / 2, wide: 9, high: 9 } as const;
  return spans.kind === "record"
    ? { lines: [line], marks: [{ ...mark, points: DIAMOND, fill: "open" }] }
    : { lines: [{ ...line, look: "soft" }], marks: [{ ...mark, points: SALTIRE, fill: "solid" }] };
}

const SQUARE: readonly PlatePoint[] = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
];
const SALTIRE: readonly PlatePoint[] = [
  [-1, -0.8],
  [-0.8, -1],
  [0, -0.2],
  [0.8, -1],
  [1, -0.8],
  [0.2, 0],
  [1, 0.8],
  [0.8, 1],
  [0, 0.2],
  [-0.8, 1],
  [-1, 0.8],
  [-0.2, 0],
];

/** An arrow at each end of the scale that the years go on beyond. */
function arrows(
  base: { readonly id: string; readonly part: string; readonly tone: "ink"; readonly y: number },
  { solid, pale }: ClaimSpans,
  high: number,
  { axis, left, right }: Scale,
): readonly ShapeMark[] {
  const goesOn = (span: DrawnSpan | null, at: 0 | 1) =>
    span !== null &&
    (span[at] === null || (at === 0 ? (span[0] ?? 0) < axis.first : (span[1] ?? 0) > axis.last));
  return ([0, 1] as const)
    .filter((at) => goesOn(pale, at))
    .map((at) => ({
      ...base,
      id: `${base.id} on ${at}`,
      form: "shape",
      points: towards(at === 0 ? -1 : 1),
      x: at === 0 ? left - 3 : right + 3,
      wide: 6,
      high: high + 3,
      fill: goesOn(solid, at) ? "solid" : "pale",
    }));
}
