import type { Picture, PictureNode } from "./path-picture.ts";
import type { Plate, PlateLine, PlateMark, ShapeMark, Tone } from "./plate.ts";

const TONES: Readonly<Record<NonNullable<PictureNode["verdict"]>, Tone>> = {
  against: "against",
  unusual: "doubt",
  for: "ink",
  silent: "quiet",
  excluded: "quiet",
};
const SQUARE = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** The picture of paths as a drawing: text in boxes for terms, bars on the scale for years. */
export function plateOfPaths({ nodes, edges, width, height, scale }: Picture): Plate {
  const upright = (id: string, x: number, look: "grid" | "knife"): PlateLine => ({
    ...{ id, look },
    points: [
      [x, 0],
      [x, height],
    ],
  });
  return {
    ...{ width, height, scale },
    lines: [
      ...scale.ticks.map(({ year, x }) => upright(`grid:${year}`, x, "grid")),
      ...scale.claimed.flatMap((x, i) => (x === null ? [] : [upright(`claimed:${i}`, x, "knife")])),
      ...edges.map(
        ({ id, points, isExcluded }): PlateLine => ({
          ...{ id, parts: [id], points },
          look: isExcluded ? "excluded" : "way",
        }),
      ),
    ],
    marks: nodes.flatMap((node) => marksOf(node, scale)),
  };
}

function marksOf(node: PictureNode, scale: Picture["scale"]): readonly PlateMark[] {
  const { id, x, y, kind, box, words, verdict = "for" } = node;
  const base = { part: id, tone: TONES[verdict], x, y };
  if (box) return [{ ...base, ...box, id, form: "box", tone: "ink", isRound: kind === "feature" }];
  const fill = kind === "open" ? "open" : verdict === "excluded" ? "broken" : "solid";
  return [
    ...(node.span ? [bar(node, node.span, scale)] : []),
    { ...base, id, form: "shape", wide: 8, high: 8, fill },
    ...(words
      ? [{ ...base, ...words, id: `words:${id}`, form: "words", size: "small", lines: [node.label] } as const]
      : []),
  ];
}

function bar(
  { id, y, verdict = "for" }: PictureNode,
  [begin, end]: readonly [number | null, number | null],
  { left, right }: Picture["scale"],
): ShapeMark {
  const from = begin ?? left;
  const wide = Math.max((end ?? right) - from, 2);
  return {
    ...{ id: `bar:${id}`, part: id, form: "shape", points: SQUARE, tone: TONES[verdict], fill: "pale" },
    ...{ x: from + wide / 2, y, wide, high: verdict === "excluded" ? 2 : 8 },
  };
}
