import type { Drawing } from "../mark.ts";
import {
  evenColourUnderHandle,
  filledHolesByHandle,
  ghostOfEarlierPlate,
  haloOfPolish,
  holesInsideFront,
  largeHoleBetweenTwo,
  outerPlugUnderPlate,
  plateRefixed,
  plugsInsideOnly,
  splitPinDents,
} from "./front-scars.ts";
import {
  contactLineOfDrawer,
  filledMortises,
  hingeRecessWithoutLeaf,
  lostLockHole,
  roundPlugs,
  scarsOfLostShelf,
  shadowOfLostBlock,
  stepOfOxidation,
} from "./lost-parts.ts";
import { feetUnlikeTheCase, oldHolesThatDoNotFit } from "./of-another-life.ts";

/** Drawings of scars, by key. */
export const SCARS_DRAWINGS = {
  "ghost-of-earlier-plate": ghostOfEarlierPlate,
  "halo-of-polish": haloOfPolish,
  "plate-refixed": plateRefixed,
  "filled-holes-by-handle": filledHolesByHandle,
  "holes-inside-front": holesInsideFront,
  "plugs-inside-only": plugsInsideOnly,
  "outer-plug-under-plate": outerPlugUnderPlate,
  "large-hole-between-two": largeHoleBetweenTwo,
  "even-colour-under-handle": evenColourUnderHandle,
  "split-pin-dents": splitPinDents,
  "shadow-of-lost-block": shadowOfLostBlock,
  "step-of-oxidation": stepOfOxidation,
  "scars-of-lost-shelf": scarsOfLostShelf,
  "hinge-recess-without-leaf": hingeRecessWithoutLeaf,
  "filled-mortises": filledMortises,
  "round-plugs": roundPlugs,
  "lost-lock-hole": lostLockHole,
  "contact-line-of-drawer": contactLineOfDrawer,
  "old-holes-that-do-not-fit": oldHolesThatDoNotFit,
  "feet-unlike-the-case": feetUnlikeTheCase,
} as const satisfies Readonly<Record<string, Drawing>>;
