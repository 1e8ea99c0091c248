import type { Drawing } from "../mark.ts";
import { cuspedBracketFoot, ogeeBracketFoot, splayFoot, straightBracketFoot } from "./brackets.ts";
import {
  cabrioleLeg,
  clawAndBallFoot,
  padFoot,
  pawFoot,
  sabreLeg,
  slipperFoot,
  spadeFoot,
  taperedSquareLeg,
  trifidFoot,
} from "./cabrioles.ts";
import { stopFlutedLeg } from "./stop-fluted-leg.ts";
import { ballFoot, bunFoot, spigotHoles, turnedReededLeg } from "./turned-feet.ts";
import { ballTilter, gadroonedEdge, marlboroughPlinth, twistTurning } from "./turned-members.ts";

/** Drawings of feet, by key. */
export const FEET_DRAWINGS = {
  "straight-bracket-foot": straightBracketFoot,
  "ogee-bracket-foot": ogeeBracketFoot,
  "splay-foot": splayFoot,
  "cusped-bracket-foot": cuspedBracketFoot,
  "cabriole-leg": cabrioleLeg,
  "pad-foot": padFoot,
  "claw-and-ball-foot": clawAndBallFoot,
  "spade-foot": spadeFoot,
  "tapered-square-leg": taperedSquareLeg,
  "sabre-leg": sabreLeg,
  "trifid-foot": trifidFoot,
  "slipper-foot": slipperFoot,
  "paw-foot": pawFoot,
  "bun-foot": bunFoot,
  "ball-foot": ballFoot,
  "turned-reeded-leg": turnedReededLeg,
  "spigot-holes": spigotHoles,
  "twist-turning": twistTurning,
  "ball-tilter": ballTilter,
  "marlborough-plinth": marlboroughPlinth,
  "gadrooned-edge": gadroonedEdge,
  "stop-fluted-leg": stopFlutedLeg,
} as const satisfies Readonly<Record<string, Drawing>>;
