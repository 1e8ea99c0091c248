import type { Drawing } from "../mark.ts";
import {
  carvingBelowSurface,
  carvingProud,
  carvingWithoutReserve,
  cutterRidges,
  gougeCuts,
  pressedPattern,
  punchedGround,
  throughOldHoles,
} from "./carving.ts";
import { roughCarvedGround } from "./rough-carving.ts";

/** Drawings of carving, by key. */
export const CARVING_DRAWINGS = {
  "carving-proud": carvingProud,
  "carving-below-surface": carvingBelowSurface,
  "carving-without-reserve": carvingWithoutReserve,
  "gouge-cuts": gougeCuts,
  "cutter-ridges": cutterRidges,
  "through-old-holes": throughOldHoles,
  "pressed-pattern": pressedPattern,
  "punched-ground": punchedGround,
  "rough-carved-ground": roughCarvedGround,
} as const satisfies Readonly<Record<string, Drawing>>;
