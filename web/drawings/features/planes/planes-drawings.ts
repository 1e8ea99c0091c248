import type { Drawing } from "../mark.ts";
import { bitFloors, screwPitHole } from "./bored-holes.ts";
import { forePlaneTroughs, handPlaneChatter, handPlaneTroughs } from "./hand-planed.ts";
import {
  abrasiveScratches,
  machineSandingScratches,
  planerScallops,
  swirlArcs,
  toothedGround,
} from "./machined.ts";

/** Drawings of planes, by key. */
export const PLANES_DRAWINGS = {
  "screw-pit-hole": screwPitHole,
  "bit-floors": bitFloors,
  "hand-plane-troughs": handPlaneTroughs,
  "fore-plane-troughs": forePlaneTroughs,
  "hand-plane-chatter": handPlaneChatter,
  "planer-scallops": planerScallops,
  "swirl-arcs": swirlArcs,
  "machine-sanding-scratches": machineSandingScratches,
  "abrasive-scratches": abrasiveScratches,
  "toothed-ground": toothedGround,
} as const satisfies Readonly<Record<string, Drawing>>;
