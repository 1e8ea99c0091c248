import { keyPlate } from "./hardware.ts";
import { box, grain, line } from "./pen.ts";
import { type Shape, shape } from "./shape.ts";

/** A framed door with a fielded panel arched at its head; hinges on the side away from `meets`. */
export function door(
  key: string,
  label: string,
  x: number,
  y: number,
  width: number,
  height: number,
  meets: "left" | "right",
): { shapes: Shape[]; hinges: string; plate: { outline: string; detail: string } } {
  const frame = 13;
  const px = x + frame;
  const pw = width - 2 * frame;
  const py = y + frame;
  const ph = height - 2 * frame;
  const arch = (inset: number): string => {
    const ax = px + inset;
    const aw = pw - 2 * inset;
    const shoulder = py + inset + 15;
    return `M${ax} ${py + ph - inset}V${shoulder}h${aw * 0.12}c2 0 2-2 2-4C${ax + aw * 0.26} ${py + inset} ${ax + aw * 0.4} ${py + inset} ${ax + aw / 2} ${py + inset}S${ax + aw * 0.74} ${py + inset} ${ax + aw * 0.88 - 2} ${shoulder - 4}c0 2 0 4 2 4h${aw * 0.12}V${py + ph - inset}z`;
  };
  const hingeX = meets === "right" ? x - 1.5 : x + width - 2.5;
  const hinges = [0.1, 0.84].map((t) => box(hingeX, y + height * t, 4, 14)).join("");
  return {
    shapes: [
      shape(`${key}-door`, "part.door", `${label}, frame`, box(x, y, width, height) + arch(0), {
        weight: "edge",
        detail:
          line([x + frame, y], [x + frame, py]) +
          line([x + width - frame, y], [x + width - frame, py]) +
          line([x + frame, y + height], [x + frame, py + ph]) +
          line([x + width - frame, y + height], [x + width - frame, py + ph]),
      }),
      shape(`${key}-panel`, "part.door-panel", `${label}, panel`, arch(0), {
        detail: arch(6) + grain(px + 12, py + 30, pw - 24, ph - 44, 3, "y"),
      }),
    ],
    hinges,
    plate: keyPlate(meets === "left" ? x + 6.5 : x + width - 6.5, y + height * 0.52, 0.8),
  };
}
