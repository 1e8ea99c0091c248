import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import type { PathToDraw, Picture, PictureEdge, PictureNode, PicturePath } from "./path-picture.ts";

/** Measures of the drawing, px. */
const COLUMN = 192;
const FIRST = 82;
const ROW = 46;
const HEAD = 40;
const SCALE = 380;
const BEFORE_SCALE = 36;
const AFTER_SCALE = 24;
/** Words of an end stand to the right of it, but for the last stretch of the scale. */
const LAST_STRETCH = 110;
/** Space between two boxes of one column, and the height of a box by the lines of its label. */
const BETWEEN = 10;
const PADDING = 16;
const LINE = 15;
const LETTERS = 22;

/** Height of a box that holds a label. */
const boxHeight = (label: string): number => PADDING + LINE * Math.max(1, Math.ceil(label.length / LETTERS));

interface End {
  readonly id: string;
  readonly path: PathToDraw;
  readonly y: number;
}

const endId = (path: PathToDraw): string =>
  path.end === undefined
    ? `open:${path.terms.map((term) => term.id).join(">")}`
    : `date:${path.end}>${path.endLabel}`;

/** The column of each term: as far right as its longest way from a feature. */
function columns(paths: readonly PathToDraw[]): Map<string, number> {
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

/** Ends one below the other, in the order of the paths; an end that several paths share stands once. */
function ends(paths: readonly PathToDraw[]): Map<string, End> {
  const found = new Map<string, End>();
  for (const path of paths) {
    const id = endId(path);
    if (!found.has(id)) found.set(id, { id, path, y: HEAD + ROW / 2 + found.size * ROW });
  }
  return found;
}

/** Height of each term: the middle of what it leads to, then pushed apart within its column. */
function heights(
  paths: readonly PathToDraw[],
  column: ReadonlyMap<string, number>,
  end: ReadonlyMap<string, End>,
): Map<string, number> {
  const reached = new Map<string, number[]>();
  const tall = new Map<string, number>();
  for (const path of paths) {
    const y = end.get(endId(path))?.y ?? 0;
    for (const { id, label } of path.terms) {
      reached.set(id, [...(reached.get(id) ?? []), y]);
      tall.set(id, boxHeight(label));
    }
  }
  const height = new Map<string, number>();
  const byColumn = Map.groupBy(reached.keys(), (id) => column.get(id) ?? 0);
  for (const ids of byColumn.values()) {
    const wanted = ids
      .map((id) => ({ id, y: mean(reached.get(id) ?? []) }))
      .sort((a, b) => a.y - b.y || (a.id < b.id ? -1 : 1));
    let least = Number.NEGATIVE_INFINITY;
    for (const { id, y } of wanted) {
      const half = (tall.get(id) ?? 0) / 2;
      const placed = Math.max(y, least + half);
      height.set(id, placed);
      least = placed + half + BETWEEN;
    }
  }
  return height;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/**
 * Places paths as a layered drawing: features at the left, terms between in columns by how many steps they are away,
 * dates at the right on a scale of years, one row an end. Pure and total: the same paths give the same places.
 */
export function placePaths(
  paths: readonly PathToDraw[],
  axis: YearAxis,
  claimed: readonly [Year | null, Year | null],
): Picture {
  const column = columns(paths);
  const end = ends(paths);
  const height = heights(paths, column, end);
  const last = Math.max(0, ...column.values());
  const left = FIRST + last * COLUMN + COLUMN / 2 + BEFORE_SCALE;
  const right = left + SCALE;
  const onScale = (year: Year | null): number | null =>
    year === null ? null : left + (axis.at(year) / 100) * SCALE;

  const nodes = new Map<string, PictureNode>();
  const edges = new Map<string, PictureEdge>();
  const told: PicturePath[] = [];
  paths.forEach((path, i) => {
    const ids = path.terms.map((term) => `term:${term.id}`);
    path.terms.forEach((term, at) => {
      const id = `term:${term.id}`;
      const known = nodes.get(id);
      const kind = at === 0 || known?.kind === "feature" ? "feature" : "term";
      const x = FIRST + (column.get(term.id) ?? 0) * COLUMN;
      const y = height.get(term.id) ?? 0;
      nodes.set(id, { id, kind, label: term.label, x, y, tall: boxHeight(term.label) });
    });
    const to = end.get(endId(path));
    if (to) {
      const from = onScale(path.years[0]?.[0] ?? null);
      const until = onScale(path.years.at(-1)?.[1] ?? null);
      // What no year bounds stands before the scale, not on it.
      const isDated = path.end !== undefined && path.verdict !== "silent" && (from ?? until) !== null;
      const x = isDated ? (from ?? until ?? left) : left - BEFORE_SCALE / 2;
      nodes.set(to.id, {
        id: to.id,
        kind: isDated ? "date" : "open",
        label: path.endLabel,
        x,
        y: to.y,
        verdict: path.verdict,
        side: x > right - LAST_STRETCH ? "left" : "right",
        ...(isDated ? { span: [from, until] as const } : {}),
      });
      ids.push(to.id);
    }
    const used = ids.slice(1).map((id, at) => {
      const edge = `${ids[at]} ${id}`;
      const isExcluded = path.verdict === "excluded" && (edges.get(edge)?.isExcluded ?? true);
      edges.set(edge, { id: edge, from: ids[at] as string, to: id, isExcluded });
      return edge;
    });
    told.push({
      id: `path:${i}`,
      finding: path.finding,
      says: path.says,
      ...(path.source === undefined ? {} : { source: path.source }),
      verdict: path.verdict,
      nodes: ids,
      edges: used,
    });
  });
  const lowest = Math.max(HEAD, ...[...nodes.values()].map((node) => node.y));
  return {
    nodes: [...nodes.values()],
    edges: [...edges.values()],
    paths: told,
    width: right + AFTER_SCALE,
    height: lowest + ROW,
    scale: {
      left,
      right,
      ticks: axis.ticks.map((year) => ({ year, x: onScale(year) as number })),
      claimed: [onScale(claimed[0]), onScale(claimed[1])],
    },
  };
}
