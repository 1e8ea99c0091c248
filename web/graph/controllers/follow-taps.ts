import type { Core, EventObject } from "cytoscape";
import type { Picture } from "../path-picture.ts";

/** A tap on a term, an end or a line lights the first path through it; a tap beside them puts it out. */
export function followTaps(
  graph: Core,
  picture: Picture,
  onLight: (path: string | undefined) => void,
): () => void {
  const tap = (event: EventObject) => {
    const id = event.target === graph ? undefined : (event.target.id() as string);
    const path = picture.paths.find(({ nodes, edges }) => id && (nodes.includes(id) || edges.includes(id)));
    onLight(path?.id);
  };
  graph.on("tap", tap);
  return () => {
    graph.off("tap", tap);
  };
}
