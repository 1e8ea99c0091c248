import type { PathToDraw, PictureEdge, PicturePath } from "./path-picture.ts";

/** A path with the nodes it passes, by id. */
export interface PassedPath {
  readonly path: PathToDraw;
  readonly nodes: readonly string[];
}

const edgeId = (from: string, to: string): string => `${from} ${to}`;

/** The edges that paths pass, each once, without their points; and what each path lights up. */
export function tellPaths(passed: readonly PassedPath[]): {
  readonly edges: readonly Omit<PictureEdge, "points">[];
  readonly paths: readonly PicturePath[];
} {
  const edges = new Map<string, Omit<PictureEdge, "points">>();
  const paths = passed.map(({ path, nodes }, i): PicturePath => {
    const used = nodes.slice(1).map((to, at) => {
      const from = nodes[at] as string;
      const id = edgeId(from, to);
      const isExcluded = path.verdict === "excluded" && (edges.get(id)?.isExcluded ?? true);
      edges.set(id, { id, from, to, isExcluded });
      return id;
    });
    const { finding, says, source, verdict } = path;
    return {
      id: `path:${i}`,
      ...{ finding, says, verdict, nodes, edges: used },
      ...(source === undefined ? {} : { source }),
    };
  });
  return { edges: [...edges.values()], paths };
}
