import type { Drawing } from "../mark.ts";
import { ceramicKnob } from "./ceramic-knob.ts";
import {
  bailOnPlate,
  bailOnSplitPins,
  bailOnTwoRoses,
  dropHandle,
  piercedPlate,
  postsThroughFront,
  swanNeckBail,
  willowPlate,
} from "./drop-and-bail.ts";
import { sandCastBack, standardBolt, wireOrCastBail } from "./how-made.ts";
import { diamondYearAtRight, diamondYearAtTop } from "./registration-diamonds.ts";
import {
  brassKnob,
  cutGlassKnob,
  lionMaskRing,
  mushroomKnob,
  plasticKnob,
  pressedGlassKnob,
  ringOnRosette,
  spunHollowKnob,
  stampedOrCast,
  stampedOvalPlate,
  wedgedKnob,
} from "./rings-and-knobs.ts";

/** Drawings of handles, by key. */
export const HANDLES_DRAWINGS = {
  "drop-handle": dropHandle,
  "bail-on-plate": bailOnPlate,
  "bail-on-split-pins": bailOnSplitPins,
  "willow-plate": willowPlate,
  "pierced-plate": piercedPlate,
  "bail-on-two-roses": bailOnTwoRoses,
  "swan-neck-bail": swanNeckBail,
  "posts-through-front": postsThroughFront,
  "sand-cast-back": sandCastBack,
  "wire-or-cast-bail": wireOrCastBail,
  "standard-bolt": standardBolt,
  "diamond-year-at-top": diamondYearAtTop,
  "diamond-year-at-right": diamondYearAtRight,
  "stamped-oval-plate": stampedOvalPlate,
  "lion-mask-ring": lionMaskRing,
  "ring-on-rosette": ringOnRosette,
  "brass-knob": brassKnob,
  "mushroom-knob": mushroomKnob,
  "wedged-knob": wedgedKnob,
  "cut-glass-knob": cutGlassKnob,
  "pressed-glass-knob": pressedGlassKnob,
  "spun-hollow-knob": spunHollowKnob,
  "stamped-or-cast": stampedOrCast,
  "plastic-knob": plasticKnob,
  "ceramic-knob": ceramicKnob,
} as const satisfies Readonly<Record<string, Drawing>>;
