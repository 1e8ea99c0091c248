import type { Drawing } from "../mark.ts";
import { caneThroughHoles, sheetCaneInGroove } from "./caning.ts";
import { slipSeat } from "./slip-seat.ts";
import { coilSprungSeat, deepButtoning, narrowWebbing, wideWebbing, zigzagSprings } from "./upholstery.ts";

/** Drawings of upholstery, by key. */
export const UPHOLSTERY_DRAWINGS = {
  "cane-through-holes": caneThroughHoles,
  "sheet-cane-in-groove": sheetCaneInGroove,
  "narrow-webbing": narrowWebbing,
  "wide-webbing": wideWebbing,
  "coil-sprung-seat": coilSprungSeat,
  "zigzag-springs": zigzagSprings,
  "deep-buttoning": deepButtoning,
  "slip-seat": slipSeat,
} as const satisfies Readonly<Record<string, Drawing>>;
