import type { Core } from "cytoscape";
import type { PicturePath } from "../path-picture.ts";

/** Draws one path strong and the others faint; without one, all alike. */
export function lightPath(graph: Core, path: PicturePath | undefined): void {
  graph.batch(() => {
    graph.elements().removeClass("lit faint");
    if (!path) return;
    const lit = new Set<string>([...path.nodes, ...path.edges, ...path.nodes.map((node) => `bar:${node}`)]);
    graph.elements().forEach((element) => {
      const look = element.data("look") as string | undefined;
      if (look === "tick" || look === "grid" || look === "knife") return;
      element.addClass(lit.has(element.id()) ? "lit" : "faint");
    });
  });
}
