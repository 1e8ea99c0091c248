import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { inLines, widthOf } from "./letters.ts";
import type { PathToDraw, Picture, PictureEdge, PictureNode } from "./path-picture.ts";
import { endId, isDated, lineEnd, pictureScale, placeEnd } from "./picture-scale.ts";
import type { PlatePoint } from "./plate.ts";
import { tellPaths } from "./tell-paths.ts";

/** Measures of the drawing, px. */
const EDGE = 6;
const STEP = 16;
const AFTER_SCALE = 14;
const LINE = 15;
const DATED = 48;
const OPEN = 44;

/** A term with the paths that lead through it and no further term first, and those that go on. */
interface Branch {
  readonly id: string;
  readonly label: string;
  readonly depth: number;
  readonly ends: PathToDraw[];
  readonly further: Map<string, Branch>;
}

/**
 * Places paths for a narrow page: the years across all of it, each feature with what it leads to below it, a step further
 * in for each step, dates as bars under their words. A term that several features lead to stands below each of them. Pure.
 */
export function placePathRows(
  paths: readonly PathToDraw[],
  axis: YearAxis,
  claimed: readonly [Year | null, Year | null],
  width: number,
): Picture {
  const deepest = Math.max(1, ...paths.map(({ terms }) => terms.length));
  const left = EDGE + deepest * STEP + 10;
  const right = width - AFTER_SCALE;
  const nodes: PictureNode[] = [];
  const points = new Map<string, readonly PlatePoint[]>();
  const nodeOf = new Map<PathToDraw, readonly string[]>();
  let top = 4;

  const lead = (from: string, to: string, depth: number, start: number, x: number, y: number) => {
    const trunk = EDGE + depth * STEP + STEP / 2;
    points.set(`${from} ${to}`, [
      [trunk, start],
      [trunk, y],
      [x, y],
    ]);
  };
  const draw = (branch: Branch, above: readonly string[], start: number) => {
    const id = [...above, `term:${branch.id}`].join(" > ");
    const x = EDGE + branch.depth * STEP;
    const room = right - x - 16;
    const lines = inLines(branch.label, Math.floor(room / widthOf("m", "small")));
    const wide = Math.min(room + 16, Math.max(...lines.map((line) => widthOf(line, "small"))) + 26);
    const high = 14 + lines.length * LINE;
    const y = top + high / 2;
    const box = { wide, high, lines };
    nodes.push({
      id,
      kind: branch.depth === 0 ? "feature" : "term",
      label: branch.label,
      x: x + wide / 2,
      y,
      box,
    });
    const from = above.at(-1);
    if (from !== undefined) lead(from, id, branch.depth - 1, start, x - 1, y);
    const bottom = top + high;
    top = bottom + 8;
    for (const path of branch.ends) {
      const end = `${id} > ${endId(path)}`;
      const before = EDGE + (branch.depth + 1) * STEP + 8;
      const endY = top + (isDated(path) ? 26 : OPEN / 2 - 4);
      const node = placeEnd(path, endY, axis, { left, right }, { before, below: -16 });
      nodes.push({ ...node, id: end });
      lead(id, end, branch.depth, bottom, lineEnd(node, left), endY);
      nodeOf.set(path, [...above, id, end]);
      top += isDated(path) ? DATED : OPEN;
    }
    for (const next of branch.further.values()) draw(next, [...above, id], bottom);
    if (branch.depth === 0) top += 10;
  };
  for (const branch of branches(paths).values()) draw(branch, [], 0);

  const told = tellPaths(paths.map((path) => ({ path, nodes: nodeOf.get(path) ?? [] })));
  return {
    nodes,
    edges: told.edges.map((edge): PictureEdge => ({ ...edge, points: points.get(edge.id) ?? [] })),
    paths: told.paths,
    ...{ width, height: top + 4, scale: pictureScale(axis, claimed, left, right) },
  };
}

function branches(paths: readonly PathToDraw[]): ReadonlyMap<string, Branch> {
  const roots = new Map<string, Branch>();
  for (const path of paths) {
    let [level, last]: [Map<string, Branch>, Branch | undefined] = [roots, undefined];
    for (const [depth, { id, label }] of path.terms.entries()) {
      const branch: Branch = level.get(id) ?? { id, label, depth, ends: [], further: new Map() };
      level.set(id, branch);
      [level, last] = [branch.further, branch];
    }
    last?.ends.push(path);
  }
  return roots;
}
