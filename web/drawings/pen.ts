/** Path data for the things drawings are made of. Coordinates in drawing units, rounded to a tenth. */
export const n = (value: number): string => String(Math.round(value * 10) / 10);
export type Point = readonly [x: number, y: number];

/** A closed rectangle. */
export const box = (x: number, y: number, width: number, height: number): string =>
  `M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}z`;

/** A closed polygon. */
export const polygon = (...points: readonly Point[]): string =>
  `${points.map(([x, y], i) => `${i ? "L" : "M"}${n(x)} ${n(y)}`).join("")}z`;

/** An open line through points. */
export const line = (...points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i ? "L" : "M"}${n(x)} ${n(y)}`).join("");

/** A closed ellipse. */
export const ellipse = (cx: number, cy: number, rx: number, ry: number): string =>
  `M${n(cx - rx)} ${n(cy)}a${n(rx)} ${n(ry)} 0 1 0 ${n(2 * rx)} 0a${n(rx)} ${n(ry)} 0 1 0 ${n(-2 * rx)} 0z`;

/** A small filled-looking dot (nail head, peg) as a closed path. */
export const dot = (x: number, y: number, r = 1): string => ellipse(x, y, r, r);

/** Mirrors path-making: draws with `make` at both sides of the axis `cx`; `side` is -1 left, 1 right. */
export const bothSides = (make: (side: -1 | 1) => string): string => make(-1) + make(1);

/** Path through x-mirrored coordinates: `at(dx, y)` lies `dx` outwards of `cx` on the given side. */
export const mirrored =
  (cx: number, side: -1 | 1) =>
  (dx: number, y: number): string =>
    `${n(cx + side * dx)} ${n(y)}`;

/** A few long grain lines in a box, along x or y. Never straight, never the same twice, always the same again. */
export function grain(
  x: number,
  y: number,
  width: number,
  height: number,
  lines: number,
  along: "x" | "y" = "x",
): string {
  let path = "";
  for (let i = 1; i <= lines; i++) {
    const wave = ((i * 37) % 11) - 5;
    const shift = ((i * 53) % 17) / 100;
    if (along === "x") {
      const at = y + (height * i) / (lines + 1);
      const sway = (wave / 5) * Math.min(3, height / 12);
      path += `M${n(x + width * (0.04 + shift))} ${n(at)}C${n(x + width * 0.35)} ${n(at + sway)} ${n(x + width * 0.6)} ${n(at - sway)} ${n(x + width * (0.96 - shift / 2))} ${n(at + sway / 2)}`;
    } else {
      const at = x + (width * i) / (lines + 1);
      const sway = (wave / 5) * Math.min(3, width / 12);
      path += `M${n(at)} ${n(y + height * (0.04 + shift))}C${n(at + sway)} ${n(y + height * 0.35)} ${n(at - sway)} ${n(y + height * 0.6)} ${n(at + sway / 2)} ${n(y + height * (0.96 - shift / 2))}`;
    }
  }
  return path;
}
