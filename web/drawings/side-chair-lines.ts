import { bothSides, grain, line, mirrored } from "./pen.ts";

/** Path data for the back and seat of a side chair about its axis. */
export const AXIS = 130;
export const CREST = 26;
export const SEAT = 208;
export const FLOOR = 352;

const l = mirrored(AXIS, -1);
const r = mirrored(AXIS, 1);

/** A yoke crest rail with turned-up ears. */
export const crest =
  `M${l(0, CREST + 1)}C${l(14, CREST + 1)} ${l(20, CREST + 10)} ${l(34, CREST + 9)}C${l(48, CREST + 8)} ${l(50, CREST - 2)} ${l(62, CREST - 4)}` +
  `C${l(66, CREST - 3)} ${l(66, CREST + 4)} ${l(61, CREST + 10)}C${l(55, CREST + 20)} ${l(42, CREST + 24)} ${l(22, CREST + 24)}L${r(22, CREST + 24)}` +
  `C${r(42, CREST + 24)} ${r(55, CREST + 20)} ${r(61, CREST + 10)}C${r(66, CREST + 4)} ${r(66, CREST - 3)} ${r(62, CREST - 4)}` +
  `C${r(50, CREST - 2)} ${r(48, CREST + 8)} ${r(34, CREST + 9)}C${r(20, CREST + 10)} ${r(14, CREST + 1)} ${r(0, CREST + 1)}z`;

/** A lobed shell at the middle of the crest, and its flutes. */
export const shell =
  `M${l(15, CREST + 13)}C${l(18, CREST + 2)} ${l(8, CREST - 3)} ${l(0, CREST - 3)}C${r(8, CREST - 3)} ${r(18, CREST + 2)} ${r(15, CREST + 13)}` +
  `C${r(10, CREST + 17)} ${r(5, CREST + 19)} ${r(0, CREST + 19)}C${l(5, CREST + 19)} ${l(10, CREST + 17)} ${l(15, CREST + 13)}z`;
export const shellFlutes = [-11, -5.5, 0, 5.5, 11]
  .map((dx) => line([AXIS + dx * 0.25, CREST + 17], [AXIS + dx, CREST + Math.abs(dx) * 0.45]))
  .join("");

/** The two stiles, bowed a little, from crest to seat. */
export const stiles = bothSides((side) => {
  const at = mirrored(AXIS, side);
  return `M${at(47, CREST + 21)}C${at(56, CREST + 62)} ${at(52, SEAT - 58)} ${at(48, SEAT)}L${at(39, SEAT)}C${at(43, SEAT - 60)} ${at(47, CREST + 66)} ${at(37, CREST + 23.5)}z`;
});

/** A vase-shaped splat with one heart-shaped piercing. */
export const splat =
  `M${l(17, CREST + 24)}C${l(17, CREST + 44)} ${l(28, CREST + 48)} ${l(28, CREST + 70)}C${l(28, CREST + 98)} ${l(9, CREST + 104)} ${l(9, CREST + 128)}C${l(9, CREST + 142)} ${l(18, CREST + 150)} ${l(18, SEAT - 8)}` +
  `L${r(18, SEAT - 8)}C${r(18, CREST + 150)} ${r(9, CREST + 142)} ${r(9, CREST + 128)}C${r(9, CREST + 104)} ${r(28, CREST + 98)} ${r(28, CREST + 70)}C${r(28, CREST + 48)} ${r(17, CREST + 44)} ${r(17, CREST + 24)}z` +
  `M${l(0, CREST + 60)}C${l(4, CREST + 50)} ${l(16, CREST + 54)} ${l(13, CREST + 68)}C${l(11, CREST + 80)} ${l(2, CREST + 86)} ${l(0, CREST + 94)}C${r(2, CREST + 86)} ${r(11, CREST + 80)} ${r(13, CREST + 68)}C${r(16, CREST + 54)} ${r(4, CREST + 50)} ${r(0, CREST + 60)}z`;
export const splatGrain = grain(AXIS - 8, CREST + 104, 16, 66, 2, "y");

/** The shoe that holds the foot of the splat. */
export const shoe = `M${l(22, SEAT)}L${l(19, SEAT - 8)}L${r(19, SEAT - 8)}L${r(22, SEAT)}z`;

/** The slip seat above its rail, and the rail with a double-arched lower edge. */
export const seat = `M${l(56, SEAT)}C${l(30, SEAT - 4)} ${r(30, SEAT - 4)} ${r(56, SEAT)}L${r(72, SEAT + 7)}L${l(72, SEAT + 7)}z`;
export const seatRail =
  `M${l(78, SEAT + 7)}L${r(78, SEAT + 7)}L${r(75, SEAT + 25)}C${r(60, SEAT + 25)} ${r(56, SEAT + 31)} ${r(40, SEAT + 31)}C${r(22, SEAT + 31)} ${r(18, SEAT + 25)} ${r(0, SEAT + 25)}` +
  `C${l(18, SEAT + 25)} ${l(22, SEAT + 31)} ${l(40, SEAT + 31)}C${l(56, SEAT + 31)} ${l(60, SEAT + 25)} ${l(75, SEAT + 25)}z`;

/** Carved knees: a leaf down the outside of each front leg, and its veins. */
export const knees = bothSides((side) => {
  const at = mirrored(AXIS, side);
  return `M${at(64, SEAT + 30)}C${at(70, SEAT + 26)} ${at(78, SEAT + 30)} ${at(79, SEAT + 40)}C${at(78, SEAT + 54)} ${at(71, SEAT + 60)} ${at(69, SEAT + 74)}C${at(67, SEAT + 60)} ${at(62, SEAT + 48)} ${at(64, SEAT + 30)}z`;
});
export const kneeVeins = bothSides((side) => {
  const at = mirrored(AXIS, side);
  return `M${at(69, SEAT + 68)}C${at(70, SEAT + 52)} ${at(71, SEAT + 44)} ${at(70, SEAT + 33)}M${at(70, SEAT + 50)}L${at(76, SEAT + 40)}M${at(70, SEAT + 54)}L${at(66, SEAT + 44)}`;
});

/** Rear legs below the seat, raking a little, seen from the front (inside) or from behind. */
export const rearLegs = (top: number, foot: number): string =>
  bothSides((side) => {
    const at = mirrored(AXIS, side);
    return `M${at(49, top)}L${at(39, top)}C${at(39, top + 50)} ${at(42, foot - 40)} ${at(43, foot)}L${at(53, foot)}C${at(51, foot - 40)} ${at(49, top + 60)} ${at(49, top)}z`;
  });

/** A turned stretcher lying across, swelling at its middle between two rings. */
export function turnedAcross(half: number, y: number, rise: number): { outline: string; detail: string } {
  const run: readonly (readonly [number, number])[] = [
    [half, 0.8],
    [half * 0.78, 0.8],
    [half * 0.74, 0.45],
    [half * 0.5, 0.7],
    [half * 0.24, 0.55],
    [half * 0.18, 1],
    [half * 0.12, 0.6],
    [0, 0.95],
  ];
  const upper = [
    ...run.map(([dx, t]) => l(dx, y - rise * t)),
    ...run.toReversed().map(([dx, t]) => r(dx, y - rise * t)),
  ];
  const lower = [
    ...run.map(([dx, t]) => r(dx, y + rise * t)),
    ...run.toReversed().map(([dx, t]) => l(dx, y + rise * t)),
  ];
  const rings = [-0.78, -0.18, 0.18, 0.78]
    .map((t) => line([AXIS + half * t, y - rise * 0.8], [AXIS + half * t, y + rise * 0.8]))
    .join("");
  return { outline: `M${[...upper, ...lower].join("L")}z`, detail: rings };
}
