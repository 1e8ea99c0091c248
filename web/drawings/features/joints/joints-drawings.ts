import type { Drawing } from "../mark.ts";
import {
  equalDovetails,
  fewBroadDovetails,
  fineNarrowPins,
  handCutDovetail,
  lapDovetail,
  noGaugeLine,
} from "./dovetails.ts";
import {
  bowTieKeys,
  dowelledJoint,
  glueBlockScallops,
  peggedTenon,
  throughTenonedRail,
  triangularCornerBlocks,
} from "./frame-joints.ts";
import { mitredDovetail } from "./mitred.ts";
import {
  combJoint,
  dowelledCorner,
  lensInSlot,
  nailedRebatedCorner,
  pinAndCoveCorner,
} from "./other-corners.ts";
import { narrowNeckedDovetail, paredSockets, roundedSockets } from "./taken-apart.ts";
import {
  dovetailOutlineThroughVeneer,
  nailedLapDovetail,
  sawnThroughJoint,
  throughDovetailUnderMouldings,
  throughDovetailUnderVeneer,
  wedgedDovetails,
} from "./veneered-fronts.ts";

/** Drawings of joints, by key. */
export const JOINTS_DRAWINGS = {
  "hand-cut-dovetail": handCutDovetail,
  "lap-dovetail": lapDovetail,
  "no-gauge-line": noGaugeLine,
  "few-broad-dovetails": fewBroadDovetails,
  "fine-narrow-pins": fineNarrowPins,
  "equal-dovetails": equalDovetails,
  "pegged-tenon": peggedTenon,
  "dowelled-joint": dowelledJoint,
  "glue-block-scallops": glueBlockScallops,
  "triangular-corner-blocks": triangularCornerBlocks,
  "through-tenoned-rail": throughTenonedRail,
  "bow-tie-keys": bowTieKeys,
  "mitred-dovetail": mitredDovetail,
  "pin-and-cove-corner": pinAndCoveCorner,
  "comb-joint": combJoint,
  "dowelled-corner": dowelledCorner,
  "nailed-rebated-corner": nailedRebatedCorner,
  "lens-in-slot": lensInSlot,
  "rounded-sockets": roundedSockets,
  "pared-sockets": paredSockets,
  "narrow-necked-dovetail": narrowNeckedDovetail,
  "through-dovetail-under-veneer": throughDovetailUnderVeneer,
  "through-dovetail-under-mouldings": throughDovetailUnderMouldings,
  "dovetail-outline-through-veneer": dovetailOutlineThroughVeneer,
  "nailed-lap-dovetail": nailedLapDovetail,
  "wedged-dovetails": wedgedDovetails,
  "sawn-through-joint": sawnThroughJoint,
} as const satisfies Readonly<Record<string, Drawing>>;
