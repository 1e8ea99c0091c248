import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { inLines } from "./letters.ts";
import type { PathToDraw, Picture, PictureEdge, PictureNode } from "./path-picture.ts";
import { endId, isDated, lineEnd, pictureScale, placeEnd } from "./picture-scale.ts";
import type { PlatePoint } from "./plate.ts";
import { pushApart, type Wanted } from "./push-apart.ts";
import { tellPaths } from "./tell-paths.ts";

/** Measures of the drawing, px. */
const COLUMN = 184;
const BOX = 146;
const FIRST = BOX / 2 + 8;
const ROW = 46;
const LEAST_SCALE = 280;
const BEFORE_SCALE = 44;
const AFTER_SCALE = 16;
/** Space between two things of one column, and what a line that passes a column takes. */
const BETWEEN = 10;
const PASSING = 6;
const PADDING = 14;
const LINE = 15;
const LETTERS = 21;

/** Width that the layered drawing of these paths needs, px. */
export const widthForPaths = (paths: readonly PathToDraw[]): number =>
  scaleLeft(columns(paths)) + LEAST_SCALE + AFTER_SCALE;

const scaleLeft = (column: ReadonlyMap<string, number>): number =>
  FIRST + Math.max(0, ...column.values()) * COLUMN + BOX / 2 + BEFORE_SCALE;

/** The column of each term: as far right as its longest way from a feature. */
function columns(paths: readonly PathToDraw[]): ReadonlyMap<string, number> {
  const at = new Map<string, number>();
  const longest = Math.max(1, ...paths.map((path) => path.terms.length));
  for (let round = 0; round < longest; round++) {
    for (const { terms } of paths) {
      let left = -1;
      for (const { id } of terms) {
        left = Math.max(left + 1, at.get(id) ?? 0);
        if (left < longest) at.set(id, left);
      }
    }
  }
  return at;
}

const TERM = "term:";
const termNode = (id: string): string => TERM + id;
const passing = (edge: string, column: number): string => `${edge} @${column}`;
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** Things of a column, with what they lead to: boxes, and lines that pass. */
interface Thing {
  readonly id: string;
  readonly column: number;
  readonly high: number;
  readonly to: Set<string>;
}

/**
 * Places paths as a layered drawing: features at the left, terms between in columns by how many steps they are away,
 * dates at the right on a scale of years, one row an end. A line that passes a column has its own place in it, so that it
 * lies behind no box, and comes to its end along its row. Pure and total: the same paths give the same places.
 */
export function placePaths(
  paths: readonly PathToDraw[],
  axis: YearAxis,
  claimed: readonly [Year | null, Year | null],
  width: number,
): Picture {
  const column = columns(paths);
  const left = scaleLeft(column);
  const right = Math.max(width - AFTER_SCALE, left + LEAST_SCALE);
  const told = tellPaths(
    paths.map((path) => ({ path, nodes: [...path.terms.map(({ id }) => termNode(id)), endId(path)] })),
  );
  const lastColumn = Math.max(0, ...column.values());
  const columnOf = (node: string): number =>
    (node.startsWith(TERM) ? column.get(node.slice(TERM.length)) : undefined) ?? lastColumn + 1;
  const lines = new Map(
    paths.flatMap(({ terms }) =>
      terms.map(({ id, label }) => [termNode(id), inLines(label, LETTERS)] as const),
    ),
  );

  const things = thingsOf(paths, told.edges, columnOf, lines);
  const { rows, height } = rowsOf(paths, things);
  const places = new Map<string, number>(rows);
  for (const here of Map.groupBy(things.values(), (thing) => thing.column).values()) {
    const wanted = here.map(
      ({ id, high, to }): Wanted => ({ id, high, y: mean([...to].map((end) => rows.get(end) ?? 0)) }),
    );
    for (const [id, y] of pushApart(wanted, BETWEEN, 4)) places.set(id, y);
  }
  const yOf = (id: string): number => places.get(id) ?? 0;
  const xOf = (node: string): number => FIRST + columnOf(node) * COLUMN;

  const nodes = new Map<string, PictureNode>();
  for (const path of paths) {
    for (const [at, { id, label }] of path.terms.entries()) {
      const node = termNode(id);
      const isFeature = at === 0 || nodes.get(node)?.kind === "feature";
      nodes.set(node, {
        ...{ id: node, kind: isFeature ? "feature" : "term", label, x: xOf(node), y: yOf(node) },
        box: { wide: BOX, high: boxHeight(lines.get(node)), lines: lines.get(node) ?? [] },
      });
    }
    const ends = { before: left - BEFORE_SCALE / 2, below: 14 };
    nodes.set(endId(path), placeEnd(path, yOf(endId(path)), axis, { left, right }, ends));
  }

  const edges = told.edges.map((edge): PictureEdge => {
    const to = nodes.get(edge.to);
    const passes = range(columnOf(edge.from) + 1, columnOf(edge.to)).flatMap((at): PlatePoint[] => {
      const [x, y] = [FIRST + at * COLUMN, yOf(passing(edge.id, at))];
      return [
        [x - BOX / 2 - 4, y],
        [x + BOX / 2 + 4, y],
      ];
    });
    const y = yOf(edge.to);
    const end: readonly PlatePoint[] = to?.box
      ? [[xOf(edge.to) - BOX / 2 - 1, y]]
      : [
          [left - BEFORE_SCALE + 8, y],
          [lineEnd(to, left), y],
        ];
    return { ...edge, points: [[xOf(edge.from) + BOX / 2, yOf(edge.from)], ...passes, ...end] };
  });
  const lowest = Math.max(height, ...[...places.values()].map((y) => y + BETWEEN + ROW / 2));
  return {
    ...{ nodes: [...nodes.values()], edges, paths: told.paths },
    ...{ width: right + AFTER_SCALE, height: lowest, scale: pictureScale(axis, claimed, left, right) },
  };
}

const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, i) => from + i);

const boxHeight = (lines: readonly string[] | undefined): number =>
  PADDING + LINE * Math.max(1, lines?.length ?? 1);

/** Boxes and passing lines of all columns, each with the ends that lie beyond it. */
function thingsOf(
  paths: readonly PathToDraw[],
  edges: readonly Omit<PictureEdge, "points">[],
  columnOf: (node: string) => number,
  lines: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, Thing> {
  const things = new Map<string, Thing>();
  const add = (id: string, column: number, high: number, end: string) => {
    const thing = things.get(id) ?? { id, column, high, to: new Set<string>() };
    thing.to.add(end);
    things.set(id, thing);
  };
  const byEnds = new Map(edges.map((edge) => [`${edge.from}\n${edge.to}`, edge.id]));
  for (const path of paths) {
    const end = endId(path);
    const nodes = [...path.terms.map(({ id }) => termNode(id)), end];
    for (const [at, node] of nodes.entries()) {
      if (node !== end) add(node, columnOf(node), boxHeight(lines.get(node)), end);
      const to = nodes[at + 1];
      const edge = byEnds.get(`${node}\n${to}`);
      if (to === undefined || edge === undefined) continue;
      for (const column of range(columnOf(node) + 1, columnOf(to)))
        add(passing(edge, column), column, PASSING, end);
    }
  }
  return things;
}

/** The height of each end: a row each, feature by feature, each feature with room for the fullest of its columns. */
function rowsOf(
  paths: readonly PathToDraw[],
  things: ReadonlyMap<string, Thing>,
): { readonly rows: ReadonlyMap<string, number>; readonly height: number } {
  const rows = new Map<string, number>();
  const taken = new Set<string>();
  let top = 4;
  for (const group of Map.groupBy(paths, (path) => path.terms[0]?.id).values()) {
    const ends = [...new Set(group.map(endId))].filter((end) => !rows.has(end));
    const own = [...things.values()].filter(
      ({ id, to }) => !taken.has(id) && group.some((path) => to.has(endId(path))),
    );
    for (const { id } of own) taken.add(id);
    const stacks = [...Map.groupBy(own, ({ column }) => column).values()].map((stack) =>
      stack.reduce((sum, { high }) => sum + high + BETWEEN, 0),
    );
    const room = Math.max(
      ends.reduce((sum, end) => sum + rowHigh(group, end), 0),
      ...stacks,
    );
    let y = top + (room - ends.reduce((sum, end) => sum + rowHigh(group, end), 0)) / 2;
    for (const end of ends) {
      const high = rowHigh(group, end);
      rows.set(end, y + Math.min(high / 2, ROW / 2 - 6));
      y += high;
    }
    top += room + 6;
  }
  return { rows, height: top };
}

/** What has no years says so beside its mark, and needs no room for words below it. */
const rowHigh = (paths: readonly PathToDraw[], end: string): number =>
  paths.some((path) => endId(path) === end && isDated(path)) ? ROW - 4 : 26;
