import type { Drawing } from "../mark.ts";
import {
  bellflower,
  freshInlayRecess,
  inlayCrossesRepair,
  lineAndBerry,
  stickMosaic,
  stringing,
} from "./inlay.ts";
import { partAndCounterpart, sawGapMarquetry } from "./marquetry.ts";

/** Drawings of inlay, by key. */
export const INLAY_DRAWINGS = {
  stringing: stringing,
  "line-and-berry": lineAndBerry,
  bellflower: bellflower,
  "fresh-inlay-recess": freshInlayRecess,
  "inlay-crosses-repair": inlayCrossesRepair,
  "stick-mosaic": stickMosaic,
  "saw-gap-marquetry": sawGapMarquetry,
  "part-and-counterpart": partAndCounterpart,
} as const satisfies Readonly<Record<string, Drawing>>;
