import { mirrored } from "./pen.ts";

/** A cabriole leg seen from the front, its knee turned outwards; ends in a pad foot. `cx` is the inner top edge. */
export function cabriole(cx: number, top: number, foot: number, side: -1 | 1, width = 20): string {
  const at = mirrored(cx, side);
  const h = foot - top;
  return (
    `M${at(0, top)}L${at(width, top)}C${at(width + 7, top + h * 0.14)} ${at(width + 6, top + h * 0.3)} ${at(width - 3, top + h * 0.56)}` +
    `C${at(width - 7, top + h * 0.74)} ${at(width - 5, top + h * 0.86)} ${at(width + 1, foot - 6)}C${at(width + 5, foot - 3)} ${at(width + 3, foot)} ${at(width - 2, foot)}` +
    `L${at(width - 13, foot)}C${at(width - 17, foot)} ${at(width - 17, foot - 5)} ${at(width - 12, foot - 7)}C${at(width - 11, foot - h * 0.2)} ${at(width - 10, top + h * 0.56)} ${at(width - 13, top + h * 0.34)}` +
    `C${at(width - 15, top + h * 0.22)} ${at(2, top + h * 0.24)} ${at(0, top + h * 0.1)}z`
  );
}

/** The line under the pad of a cabriole leg drawn with the same arguments. */
export const cabriolePad = (cx: number, foot: number, side: -1 | 1, width = 20): string => {
  const at = mirrored(cx, side);
  return `M${at(width + 2, foot - 3)}L${at(width - 14, foot - 3)}`;
};

/**
 * A straight square leg seen from the front, its outer edge plumb; `inner` is how wide it is at the foot. With a plinth
 * it ends in a block. `cx` is the inner top edge.
 */
export function squareLeg(
  cx: number,
  top: number,
  foot: number,
  side: -1 | 1,
  like: { readonly width: number; readonly inner?: number; readonly plinth?: number },
): string {
  const { width, inner = width, plinth = 0 } = like;
  const at = mirrored(cx, side);
  const ankle = foot - plinth;
  const block =
    plinth > 0
      ? `L${at(width + 2, ankle)}L${at(width + 2, foot)}L${at(width - inner - 2, foot)}L${at(width - inner - 2, ankle)}`
      : "";
  return `M${at(0, top)}L${at(width, top)}L${at(width, ankle)}${block}L${at(width - inner, ankle)}z`;
}

/** A turned leg: square above, vase and ring below, ball foot. `cx` is its axis. */
export function turned(cx: number, top: number, foot: number, half = 6): string {
  const l = mirrored(cx, -1);
  const r = mirrored(cx, 1);
  const h = foot - top;
  const profile: readonly (readonly [number, number])[] = [
    [half, 0],
    [half, 0.22],
    [half * 0.55, 0.25],
    [half * 0.95, 0.29],
    [half * 0.5, 0.33],
    [half * 0.62, 0.45],
    [half * 0.95, 0.6],
    [half * 0.45, 0.68],
    [half * 0.9, 0.71],
    [half, 0.73],
    [half, 0.85],
    [half * 0.55, 0.87],
    [half * 0.95, 0.92],
    [half * 0.9, 0.97],
    [half * 0.5, 1],
  ];
  const down = profile.map(([dx, t]) => `L${l(dx, top + h * t)}`).join("");
  const up = profile
    .toReversed()
    .map(([dx, t]) => `L${r(dx, top + h * t)}`)
    .join("");
  return `M${l(half, top)}${down}${up}z`;
}

/**
 * A pair of bracket feet joined by their base: outer corners at `x` and `x + width`, from `top` down to `foot`.
 * Their inner edges are cymas rising to `top + rise`.
 */
export function bracketFeet(x: number, width: number, top: number, foot: number, rise = 6): string {
  const h = foot - top;
  const l = mirrored(x, 1);
  const r = mirrored(x + width, -1);
  return (
    `M${l(0, top)}L${l(0, foot)}L${l(21, foot)}C${l(21, foot - h * 0.3)} ${l(23, foot - h * 0.42)} ${l(29, foot - h * 0.42)}` +
    `C${l(36, foot - h * 0.42)} ${l(33, top + rise)} ${l(44, top + rise)}` +
    `L${r(44, top + rise)}C${r(33, top + rise)} ${r(36, foot - h * 0.42)} ${r(29, foot - h * 0.42)}` +
    `C${r(23, foot - h * 0.42)} ${r(21, foot - h * 0.3)} ${r(21, foot)}L${r(0, foot)}L${r(0, top)}z`
  );
}
