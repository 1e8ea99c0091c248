import type { Core } from "cytoscape";
import type { Plate } from "../plate.ts";
import { lineElements } from "./draw-plate.ts";

/** Draws these parts strong, with their extra lines, and all others faint; without any, all alike. */
export function lightParts(graph: Core, plate: Plate, lit: ReadonlySet<string> | undefined): void {
  graph.batch(() => {
    graph.elements().removeClass("lit faint");
    graph.elements("[look = 'extra']").remove();
    if (!lit) return;
    const isLit = (parts: readonly string[] = []) => parts.some((part) => lit.has(part));
    const extra = plate.lines.filter(({ look, parts }) => look === "extra" && isLit(parts));
    graph.add(extra.flatMap(lineElements));
    graph.elements().forEach((element) => {
      if (element.data("ground") !== "yes") element.addClass(isLit(element.data("parts")) ? "lit" : "faint");
    });
  });
}
