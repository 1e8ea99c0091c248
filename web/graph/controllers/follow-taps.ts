import type { Core, EventObject } from "cytoscape";

/** Tells the part that a tap falls on; nothing where it falls beside all. Gives back the way to stop. */
export function followTaps(graph: Core, onTap: (part: string | undefined) => void): () => void {
  const tap = (event: EventObject) => {
    const parts = event.target === graph ? [] : (event.target.data("parts") as readonly string[]);
    onTap(parts[0]);
  };
  graph.on("tap", tap);
  return () => {
    graph.off("tap", tap);
  };
}
