import type { Drawing } from "../mark.ts";
import { bowSawMark, brightKerf, machineFretwork, pitAndCircularFaces, rivenFace } from "./other-faces.ts";
import { circularSawMark, largeCircularSawMark, smallArcsInRebate } from "./round-kerfs.ts";
import { bandSawMark, pitSawMark, sashSawMark } from "./straight-kerfs.ts";

/** Drawings of saws, by key. */
export const SAWS_DRAWINGS = {
  "bow-saw-mark": bowSawMark,
  "riven-face": rivenFace,
  "pit-and-circular-faces": pitAndCircularFaces,
  "bright-kerf": brightKerf,
  "machine-fretwork": machineFretwork,
  "circular-saw-mark": circularSawMark,
  "large-circular-saw-mark": largeCircularSawMark,
  "small-arcs-in-rebate": smallArcsInRebate,
  "pit-saw-mark": pitSawMark,
  "sash-saw-mark": sashSawMark,
  "band-saw-mark": bandSawMark,
} as const satisfies Readonly<Record<string, Drawing>>;
