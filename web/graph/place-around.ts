import type { Year } from "#server/domain/years.ts";
import { termKindWords } from "#web/shared/words/term-words.ts";
import { yearsDrawn } from "#web/shared/years/claim-spans.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import type { AroundRow, ExtraLink, TermRow } from "./around-row.ts";
import { claimMarks, placeOf, type Scale } from "./claim-marks.ts";
import { kindShapes } from "./kind-shapes.ts";
import { cutTo, inLines, type TYPE, widthOf } from "./letters.ts";
import type { Plate, PlateLine, PlateMark, PlatePoint } from "./plate.ts";

/** From this width on, words stand beside the years, not above them. */
const WIDE = 640;
const EDGE = 12;
const STEP = 14;
const SHAPE = 13;
const BARS_APART = 9;
const ARROW = 14;
/** Of the wide drawing: what the words over a line need, and the band of what has no years. */
const WORDS = 124;
const BAND = 228;

/** A row with its place. */
interface Placed<Row extends AroundRow = AroundRow> {
  readonly row: Row;
  readonly top: number;
  readonly high: number;
  /** Height of the line that leads to it. */
  readonly y: number;
  /** Where the shape stands. */
  readonly x: number;
}

interface Measures {
  readonly isWide: boolean;
  readonly width: number;
  readonly scale: Scale;
  /** Where the shapes of what has no years stand, and the room for their words. */
  readonly band: { readonly x: number; readonly wide: number };
  readonly trunk: (step: number) => number;
}

/**
 * Places a neighbourhood: the term on top, from it a trunk with a line to each neighbour, those of a neighbour after it on
 * a trunk of their own. A neighbour stands at the first year stated of it, with its claims as bars one below the other; what
 * has no years stands in a band before the scale. Pure: the same rows give the same places, no two rows meet.
 */
export function placeAround(
  rows: readonly AroundRow[],
  extras: readonly ExtraLink[],
  axis: YearAxis,
  width: number,
): Plate {
  const measures = measure(rows, axis, width);
  const placed: Placed[] = [];
  let top = 6;
  for (const row of rows) {
    const next = place(row, top, measures);
    placed.push(next);
    top += next.high;
  }
  const height = top + 6;
  const { scale, band, trunk, isWide } = measures;
  const grid = hasYears(rows)
    ? axis.ticks.map((year): PlateLine => {
        const x = placeOf(scale, year, "first");
        return {
          id: `grid ${year}`,
          look: "grid",
          points: [
            [x, 0],
            [x, height],
          ],
        };
      })
    : [];
  const drawn = placed.map((each) => draw(each, measures));
  return {
    width,
    height,
    scale: { left: scale.left, right: scale.right },
    ...(isWide && hasYears(rows) && rows.some(isUndated) ? { band: band.x - SHAPE / 2 } : {}),
    lines: [
      ...grid,
      ...trunks(placed, trunk),
      ...drawn.flatMap(({ lines }) => lines),
      ...extras.flatMap((extra) => drawExtra(extra, placed)),
    ],
    marks: drawn.flatMap(({ marks }) => marks),
  };
}

const isTerm = (row: AroundRow): row is TermRow => row.type === "term";
const isUndated = (row: AroundRow): boolean => isTerm(row) && row.step > 0 && row.claims.length === 0;
const hasYears = (rows: readonly AroundRow[]) => rows.some((row) => isTerm(row) && row.claims.length > 0);

function measure(rows: readonly AroundRow[], axis: YearAxis, width: number): Measures {
  const isWide = width >= WIDE;
  const trunk = (step: number) => EDGE + step * STEP;
  const steps = Math.max(1, ...rows.map(({ step }) => step));
  const after = trunk(steps - 1) + 8 + (isWide ? WORDS : 0);
  const bandWide = !isWide || !rows.some(isUndated) ? 22 : BAND;
  const left = after + bandWide;
  const right = width - ARROW;
  const wide = isWide && hasYears(rows) ? BAND - SHAPE - 14 : right - after - SHAPE - 4;
  return { isWide, width, trunk, scale: { axis, left, right }, band: { x: after + SHAPE / 2, wide } };
}

const nameOf = ({ number, label, kind }: TermRow): string =>
  `${number === undefined ? "" : `${number}  `}${label}\u00a0·\u00a0${termKindWords[kindInWords(kind)].one.replaceAll(" ", "\u00a0")}`;
const kindInWords = (kind: TermRow["kind"]) => kind.toUpperCase() as keyof typeof termKindWords;
const lettersIn = (wide: number, size: keyof typeof TYPE) => Math.floor(wide / widthOf("m", size));

/** The first year stated of a row; where no beginning is, its first end. Where it is not found comes last. */
function firstYear({ claims }: TermRow): Year | null {
  const there = claims.filter(({ spans }) => spans.kind !== "exclude");
  const bearing = there.length > 0 ? there : claims;
  const begins = bearing.flatMap(({ spans }) => spans.pale[0] ?? spans.solid?.[0] ?? []);
  const all = begins.length > 0 ? begins : bearing.flatMap(({ spans }) => yearsDrawn(spans));
  const stated = all.filter((year) => year !== null);
  return stated.length === 0 ? null : Math.min(...stated);
}

function place(row: AroundRow, top: number, { isWide, scale, band, trunk }: Measures): Placed {
  if (!isTerm(row)) return { row, top, high: 26, y: top + 13, x: trunk(row.step - 1) + 8 };
  const bars = Math.max(0, row.claims.length - 1) * BARS_APART;
  if (row.step === 0) {
    const y = top + (isWide || row.claims.length === 0 ? 14 : 36);
    return { row, top, high: y - top + bars + 18, y, x: trunk(0) };
  }
  if (row.claims.length > 0) {
    const y = top + (isWide ? 26 : 42);
    // Just before its first year, so that a mark of that year is seen.
    const before = SHAPE / 2 + (row.claims[0]?.spans.kind === "hold" ? 0 : 5);
    return { row, top, high: y - top + bars + 15, y, x: placeOf(scale, firstYear(row), "first") - before };
  }
  if (!isWide) return { row, top, high: 44, y: top + 26, x: trunk(row.step - 1) + 10 + SHAPE };
  const lines = inLines(nameOf(row), lettersIn(band.wide, "name")).length;
  return { row, top, high: 18 + lines * 16, y: top + 17, x: band.x };
}

interface Drawn {
  readonly marks: readonly PlateMark[];
  readonly lines: readonly PlateLine[];
}

function draw({ row, top, y, x }: Placed, measures: Measures): Drawn {
  const { isWide, scale, band, trunk, width } = measures;
  const part = row.id;
  if (!isTerm(row)) {
    const from = trunk(row.step - 1);
    return {
      lines: [
        {
          id: `${part} line`,
          parts: [part],
          look: "bare",
          points: [
            [from, y],
            [x, y],
          ],
        },
      ],
      marks: [
        {
          form: "words",
          id: `${part} words`,
          part,
          tone: "quiet",
          x: x + 4,
          y,
          align: "start",
          size: "small",
          lines: [row.words],
        },
      ],
    };
  }
  const bars = row.claims.map(({ id, spans, isSoft }, i) =>
    claimMarks({ id: `${part} ${id}`, part, spans, isSoft, y: y + i * BARS_APART }, scale),
  );
  const points = kindShapes[row.kind];
  const shape: PlateMark = {
    ...{ form: "shape", id: part, part, tone: "ink", x, y, wide: SHAPE, high: SHAPE },
    ...(row.step === 0 ? { y: top + 14, wide: SHAPE + 4, high: SHAPE + 4 } : {}),
    fill: row.step === 0 ? "solid" : "open",
    ...(points ? { points } : {}),
  };
  const words = (
    mark: Pick<Extract<PlateMark, { form: "words" }>, "x" | "y" | "lines" | "size"> & { id: string },
  ): PlateMark => ({
    ...{ form: "words", part, align: "start", tone: mark.size === "small" ? "quiet" : "ink" },
    ...mark,
  });
  const all = { lines: bars.flatMap(({ lines }) => lines), marks: bars.flatMap(({ marks }) => marks) };
  if (row.step === 0) {
    const room = (isWide && row.claims.length > 0 ? scale.left : width) - trunk(0) - 26;
    const name = cutTo(nameOf(row), room, "strong");
    return {
      lines: all.lines,
      marks: [
        ...all.marks,
        shape,
        words({ id: `${part} name`, x: trunk(0) + 16, y: top + 14, lines: [name], size: "strong" }),
      ],
    };
  }
  const from = trunk(row.step - 1);
  const label = isWide ? y - 9 : top + 10;
  const leader: PlateLine = {
    id: `${part} line`,
    parts: [part],
    look: row.look,
    points: [
      [from, y],
      [x - SHAPE / 2, y],
    ],
  };
  const relation = words({ id: `${part} words`, x: from + 8, y: label, lines: [row.words], size: "small" });
  return {
    lines: [leader, ...all.lines],
    marks: [...all.marks, shape, relation, words({ id: `${part} name`, size: "name", ...nameAt(row) })],
  };

  function nameAt(of: TermRow): { x: number; y: number; lines: readonly string[] } {
    const name = nameOf(of);
    if (of.claims.length === 0) {
      const lines = isWide
        ? inLines(name, lettersIn(band.wide, "name"))
        : [cutTo(name, scale.right - x - SHAPE, "name")];
      return { x: x + SHAPE / 2 + 6, y: y + ((lines.length - 1) * 16) / 2, lines };
    }
    if (!isWide) return { x: from + 8, y: top + 25, lines: [cutTo(name, scale.right - from - 8, "name")] };
    const first = from + WORDS;
    const fits = cutTo(name, scale.right - first, "name");
    const latest = scale.right - widthOf(fits, "name");
    return { x: Math.max(first, Math.min(x - SHAPE / 2, latest)), y: y - 15, lines: [fits] };
  }
}

/** For each term with others around it an upright line, from its own height to the last of them. */
function trunks(placed: readonly Placed[], trunk: Measures["trunk"]): readonly PlateLine[] {
  return placed.flatMap(({ row, y, top }, i): PlateLine[] => {
    if (!isTerm(row)) return [];
    const after = placed.slice(i + 1);
    const end = after.findIndex((next) => next.row.step <= row.step);
    const own = (end === -1 ? after : after.slice(0, end)).filter((next) => next.row.step === row.step + 1);
    const last = own.at(-1);
    if (!last) return [];
    const x = trunk(row.step);
    const from = row.step === 0 ? top + 14 : y;
    return [
      {
        id: `${row.id} trunk`,
        look: "trunk",
        points: [
          [x, from],
          [x, last.y],
        ],
      },
    ];
  });
}

/** A curve between two shapes, to the left of both. */
function drawExtra({ id, from, to }: ExtraLink, placed: readonly Placed[]): readonly PlateLine[] {
  const [a, b] = [from, to].map((end) => placed.find(({ row }) => row.id === end));
  if (!a || !b) return [];
  const bulge = Math.max(4, Math.min(a.x, b.x) - 20 - Math.abs(a.y - b.y) / 12);
  const points = Array.from({ length: 25 }, (_, i): PlatePoint => {
    const [t, s] = [i / 24, 1 - i / 24];
    return [
      s * s * (a.x - SHAPE / 2) + 2 * s * t * bulge + t * t * (b.x - SHAPE / 2),
      s * s * a.y + s * t * (a.y + b.y) + t * t * b.y,
    ];
  });
  return [{ id, parts: [from, to], look: "extra", points }];
}
