import type { Drawing } from "../mark.ts";
import {
  dustboards,
  liningsOfDifferentTone,
  lowestDrawerNotDarker,
  nailedRunners,
  pluggedSideGroove,
  sideHungDrawer,
  telescopicSlides,
} from "./carried.ts";
import {
  cockbeadOnAperture,
  cockbeadOnDrawer,
  halfRoundCaseMoulding,
  lippedFront,
  ovoloLippedFront,
  stackedCoreFront,
} from "./front-edge.ts";
import {
  bottomInDeepRebate,
  bottomInGroove,
  bottomNailedUp,
  drawerOnItsSides,
  quarterRoundSlips,
  severalTonguedBoards,
  sideLowerAndRounded,
} from "./lower-corner.ts";
import {
  bottomFreeAtBack,
  bottomGrainFrontToBack,
  bottomGrainSideToSide,
  bottomWithMuntin,
  runnerStrips,
  shortGlueBlocks,
} from "./underside.ts";

/** Drawings of drawers, by key. */
export const DRAWERS_DRAWINGS = {
  "side-hung-drawer": sideHungDrawer,
  "plugged-side-groove": pluggedSideGroove,
  dustboards: dustboards,
  "nailed-runners": nailedRunners,
  "telescopic-slides": telescopicSlides,
  "lowest-drawer-not-darker": lowestDrawerNotDarker,
  "linings-of-different-tone": liningsOfDifferentTone,
  "lipped-front": lippedFront,
  "ovolo-lipped-front": ovoloLippedFront,
  "half-round-case-moulding": halfRoundCaseMoulding,
  "cockbead-on-aperture": cockbeadOnAperture,
  "cockbead-on-drawer": cockbeadOnDrawer,
  "stacked-core-front": stackedCoreFront,
  "bottom-nailed-up": bottomNailedUp,
  "bottom-in-groove": bottomInGroove,
  "quarter-round-slips": quarterRoundSlips,
  "bottom-in-deep-rebate": bottomInDeepRebate,
  "drawer-on-its-sides": drawerOnItsSides,
  "side-lower-and-rounded": sideLowerAndRounded,
  "several-tongued-boards": severalTonguedBoards,
  "bottom-grain-front-to-back": bottomGrainFrontToBack,
  "bottom-grain-side-to-side": bottomGrainSideToSide,
  "bottom-with-muntin": bottomWithMuntin,
  "short-glue-blocks": shortGlueBlocks,
  "runner-strips": runnerStrips,
  "bottom-free-at-back": bottomFreeAtBack,
} as const satisfies Readonly<Record<string, Drawing>>;
