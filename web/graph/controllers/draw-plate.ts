import type { Core, ElementDefinition } from "cytoscape";
import { TYPE } from "../letters.ts";
import type { Plate, PlateLine, PlateMark } from "../plate.ts";

/** What lies above what: lines of the ground, other lines, bars, shapes, words. */
const LAYERS = { ground: 0, line: 1, bar: 2, shape: 3, words: 4 } as const;
/** Size of a point that only ends a piece of a line. */
const POINT = 0.1;

/** Puts a drawing on the canvas at its own size, without its extra lines; whatever was there is taken away. */
export function drawPlate(graph: Core, plate: Plate): void {
  graph.batch(() => {
    graph.elements().remove();
    const lines = plate.lines.filter(({ look }) => look !== "extra");
    graph.add([...lines.flatMap(lineElements), ...plate.marks.map(markElement)]);
  });
  graph.resize();
  graph.viewport({ zoom: 1, pan: { x: 0, y: 0 } });
}

const isGround = ({ look }: PlateLine) => look === "grid" || look === "knife" || look === "trunk";

/** A line as straight pieces between points that are not seen. */
export function lineElements(line: PlateLine): ElementDefinition[] {
  const { id, points, look, parts = [] } = line;
  const layer = isGround(line) ? LAYERS.ground : look === "extra" ? LAYERS.words : LAYERS.line;
  const ends = look === "way" ? "arrow" : look === "excluded" ? "tee" : "none";
  const data = { parts, look, layer, ground: isGround(line) ? "yes" : "no" };
  return points.flatMap(([x, y], i): ElementDefinition[] => [
    {
      group: "nodes",
      data: { ...data, id: `${id}#${i}`, form: "point", wide: POINT, high: POINT, size: 1, label: "" },
      position: { x, y },
    },
    ...(i === 0
      ? []
      : [
          {
            group: "edges" as const,
            data: {
              ...data,
              id: `${id}#${i - 1}>${i}`,
              source: `${id}#${i - 1}`,
              target: `${id}#${i}`,
              ends: i === points.length - 1 ? ends : "none",
            },
          },
        ]),
  ]);
}

function markElement(mark: PlateMark): ElementDefinition {
  const { id, part, tone, x, y, form } = mark;
  const base = {
    id,
    form,
    tone,
    parts: part === undefined ? [] : [part],
    ground: part === undefined ? "yes" : "no",
  };
  const place = { group: "nodes" as const, position: { x, y } };
  if (mark.form === "words") {
    const { align, size, lines } = mark;
    const text = {
      align,
      size: TYPE[size],
      label: lines.join("\n"),
      weight: size === "strong" ? "strong" : "plain",
    };
    return { ...place, data: { ...base, ...text, layer: LAYERS.words, wide: POINT, high: POINT } };
  }
  const { wide, high } = mark;
  if (mark.form === "box") {
    const text = { label: mark.lines.join("\n"), size: TYPE.small };
    return {
      ...place,
      data: { ...base, ...text, wide, high, layer: LAYERS.shape, round: mark.isRound ? "yes" : "no" },
    };
  }
  const { fill, points } = mark;
  const layer = fill === "open" || fill === "broken" ? LAYERS.shape : LAYERS.bar;
  const outline = points ? { points: points.flat().join(" ") } : {};
  return { ...place, data: { ...base, ...outline, wide, high, fill, layer, size: 1, label: "" } };
}
