import type { Drawing } from "../mark.ts";
import { hexagonSocketScrew, twinThreadScrew } from "./late-screws.ts";
import { platedScrew } from "./plated-screw.ts";
import {
  crossHeadScrew,
  replacementScrewInOldHole,
  ribbedCrossHeadScrew,
  sharpCrossHeadScrew,
  squareSocketScrew,
} from "./recessed-screws.ts";
import {
  filedPointScrew,
  gimletPointScrew,
  handFiledScrew,
  machineCutBluntScrew,
  offCentreSlot,
  rolledThreadScrew,
} from "./slotted-screws.ts";

/** Drawings of screws, by key. */
export const SCREWS_DRAWINGS = {
  "twin-thread-screw": twinThreadScrew,
  "hexagon-socket-screw": hexagonSocketScrew,
  "cross-head-screw": crossHeadScrew,
  "sharp-cross-head-screw": sharpCrossHeadScrew,
  "ribbed-cross-head-screw": ribbedCrossHeadScrew,
  "square-socket-screw": squareSocketScrew,
  "replacement-screw-in-old-hole": replacementScrewInOldHole,
  "hand-filed-screw": handFiledScrew,
  "machine-cut-blunt-screw": machineCutBluntScrew,
  "gimlet-point-screw": gimletPointScrew,
  "filed-point-screw": filedPointScrew,
  "rolled-thread-screw": rolledThreadScrew,
  "off-centre-slot": offCentreSlot,
  "plated-screw": platedScrew,
} as const satisfies Readonly<Record<string, Drawing>>;
