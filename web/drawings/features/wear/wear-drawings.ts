import type { Drawing } from "../mark.ts";
import { compressionSet, crossGrainMoulding, cuppedWrongWay } from "./board-physics.ts";
import {
  gapsBetweenBoards,
  marginAtPanel,
  ovalTop,
  polygonalPeg,
  proudPeg,
  wideTopAndCleat,
} from "./shrinkage.ts";
import {
  galleriesLaidOpen,
  sharpArrises,
  straightWormHoles,
  unwornRunner,
  wearAtPointsOfUse,
  wearTooEven,
  wornDrawerSide,
  wornRunner,
  wornStretcher,
} from "./use.ts";

/** Drawings of wear, by key. */
export const WEAR_DRAWINGS = {
  "cupped-wrong-way": cuppedWrongWay,
  "compression-set": compressionSet,
  "cross-grain-moulding": crossGrainMoulding,
  "oval-top": ovalTop,
  "margin-at-panel": marginAtPanel,
  "gaps-between-boards": gapsBetweenBoards,
  "proud-peg": proudPeg,
  "polygonal-peg": polygonalPeg,
  "wide-top-and-cleat": wideTopAndCleat,
  "worn-drawer-side": wornDrawerSide,
  "worn-runner": wornRunner,
  "worn-stretcher": wornStretcher,
  "wear-at-points-of-use": wearAtPointsOfUse,
  "sharp-arrises": sharpArrises,
  "wear-too-even": wearTooEven,
  "unworn-runner": unwornRunner,
  "galleries-laid-open": galleriesLaidOpen,
  "straight-worm-holes": straightWormHoles,
} as const satisfies Readonly<Record<string, Drawing>>;
