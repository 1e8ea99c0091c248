import type { Core, ElementDefinition } from "cytoscape";
import type { Picture } from "../path-picture.ts";

/** The years above the scale and the two knife lines of the claim, as elements that take no part in anything. */
function scaleElements({ scale, height }: Picture): ElementDefinition[] {
  const fixed = (id: string, look: string, x: number, y: number, data: object = {}): ElementDefinition => ({
    group: "nodes",
    data: { id, look, ...data },
    position: { x, y },
    selectable: false,
    grabbable: false,
  });
  const ticks = scale.ticks.flatMap(({ year, x }) => [
    fixed(`tick:${year}`, "tick", x, 14, { label: String(year) }),
    fixed(`grid:${year}`, "grid", x, 26 + (height - 26) / 2, { high: height - 26 }),
  ]);
  const knives = scale.claimed.flatMap((x, i) =>
    x === null ? [] : [fixed(`claimed:${i}`, "knife", x, 26 + (height - 26) / 2, { high: height - 26 })],
  );
  return [...ticks, ...knives];
}

/** Puts a picture on the canvas at its own size; whatever was there is taken away. */
export function drawPicture(graph: Core, picture: Picture): void {
  const nodes: ElementDefinition[] = picture.nodes.map((node) => ({
    group: "nodes",
    data: {
      id: node.id,
      look: node.kind,
      label: node.label,
      verdict: node.verdict ?? "none",
      tall: node.tall ?? 0,
      side: node.side ?? "right",
    },
    position: { x: node.x, y: node.y },
  }));
  const bars: ElementDefinition[] = picture.nodes.flatMap((node) => {
    if (!node.span || node.verdict === "silent") return [];
    const from = node.span[0] ?? picture.scale.left;
    const to = Math.max(node.span[1] ?? picture.scale.right, from + 2);
    return [
      {
        group: "nodes",
        data: { id: `bar:${node.id}`, look: "bar", wide: to - from, verdict: node.verdict ?? "none" },
        position: { x: (from + to) / 2, y: node.y },
      },
    ];
  });
  const edges: ElementDefinition[] = picture.edges.map((edge) => ({
    group: "edges",
    data: { id: edge.id, source: edge.from, target: edge.to, excluded: edge.isExcluded ? "yes" : "no" },
  }));
  graph.batch(() => {
    graph.elements().remove();
    graph.add([...scaleElements(picture), ...bars, ...nodes, ...edges]);
  });
  graph.resize();
  graph.viewport({ zoom: 1, pan: { x: 0, y: 0 } });
}
