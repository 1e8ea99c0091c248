import type { Core } from "cytoscape";

/** Draws these parts strong and all others faint; without any, all alike. */
export function lightParts(graph: Core, lit: ReadonlySet<string> | undefined): void {
  graph.batch(() => {
    graph.elements().removeClass("lit faint");
    if (!lit) return;
    graph.elements().forEach((element) => {
      if (element.data("ground") === "yes") return;
      const parts = element.data("parts") as readonly string[];
      const isLit = parts.some((part) => lit.has(part));
      if (isLit || element.data("look") !== "extra") element.addClass(isLit ? "lit" : "faint");
    });
  });
}
