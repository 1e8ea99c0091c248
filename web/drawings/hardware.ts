import { bothSides, dot, ellipse, mirrored } from "./pen.ts";

/** A cast bail handle on a shaped plate, centred; about 30 wide. Outline of the plate, bail and posts apart. */
export function bailHandle(cx: number, cy: number, size = 1): { outline: string; detail: string } {
  const s = size;
  const half = (side: -1 | 1) => mirrored(cx, side);
  const l = half(-1);
  const r = half(1);
  const outline =
    `M${l(0, cy - 7 * s)}C${l(2 * s, cy - 4 * s)} ${l(5 * s, cy - 7.5 * s)} ${l(8 * s, cy - 5.5 * s)}` +
    `C${l(11 * s, cy - 6 * s)} ${l(12 * s, cy - 3 * s)} ${l(15 * s, cy - 3 * s)}C${l(13 * s, cy)} ${l(13 * s, cy + 2 * s)} ${l(10 * s, cy + 3 * s)}` +
    `C${l(7 * s, cy + 3 * s)} ${l(4 * s, cy + 4 * s)} ${l(0, cy + 7 * s)}` +
    `C${r(4 * s, cy + 4 * s)} ${r(7 * s, cy + 3 * s)} ${r(10 * s, cy + 3 * s)}C${r(13 * s, cy + 2 * s)} ${r(13 * s, cy)} ${r(15 * s, cy - 3 * s)}` +
    `C${r(12 * s, cy - 3 * s)} ${r(11 * s, cy - 6 * s)} ${r(8 * s, cy - 5.5 * s)}C${r(5 * s, cy - 7.5 * s)} ${r(2 * s, cy - 4 * s)} ${r(0, cy - 7 * s)}z`;
  const bail = `M${l(9 * s, cy - 1.5 * s)}C${l(10 * s, cy + 8 * s)} ${l(5 * s, cy + 8.5 * s)} ${l(0, cy + 8.5 * s)}S${r(10 * s, cy + 8 * s)} ${r(9 * s, cy - 1.5 * s)}`;
  const posts = bothSides((side) => dot(cx + side * 9 * s, cy - 1.5 * s, 1.5 * s));
  return { outline, detail: bail + posts };
}

/** A key plate, centred on its keyhole; about 10 wide and 13 high. */
export function keyPlate(cx: number, cy: number, size = 1): { outline: string; detail: string } {
  const s = size;
  const l = mirrored(cx, -1);
  const r = mirrored(cx, 1);
  const outline =
    `M${l(0, cy - 7 * s)}C${l(3 * s, cy - 5 * s)} ${l(5 * s, cy - 4 * s)} ${l(4.5 * s, cy - s)}C${l(4.5 * s, cy + 3 * s)} ${l(2 * s, cy + 4 * s)} ${l(0, cy + 7 * s)}` +
    `C${r(2 * s, cy + 4 * s)} ${r(4.5 * s, cy + 3 * s)} ${r(4.5 * s, cy - s)}C${r(5 * s, cy - 4 * s)} ${r(3 * s, cy - 5 * s)} ${r(0, cy - 7 * s)}z`;
  const hole = `${ellipse(cx, cy - 1.5 * s, 1.2 * s, 1.2 * s)}M${l(0.4 * s, cy - 0.4 * s)}L${l(1 * s, cy + 3 * s)}L${r(1 * s, cy + 3 * s)}L${r(0.4 * s, cy - 0.4 * s)}`;
  return { outline, detail: hole };
}

/** Several of one thing as one shape: outlines and details joined. */
export function many(things: readonly { outline: string; detail: string }[]): {
  outline: string;
  detail: string;
} {
  return {
    outline: things.map((thing) => thing.outline).join(""),
    detail: things.map((thing) => thing.detail).join(""),
  };
}
