import type { Drawing } from "../mark.ts";
import {
  figureRepeating,
  flatArcsOnGlueFace,
  latheChecks,
  straightLinesOnGlueFace,
  thickUnevenVeneer,
  veneerUnderOneMm,
  waveringLinesOnGlueFace,
} from "./leaves.ts";
import { figureBroken, thinVeneerOnOldCore, veneerOverPlugs } from "./over.ts";
import { veneerScrapedThin } from "./scraped.ts";

/** Drawings of veneer, by key. */
export const VENEER_DRAWINGS = {
  "thick-uneven-veneer": thickUnevenVeneer,
  "veneer-under-one-mm": veneerUnderOneMm,
  "flat-arcs-on-glue-face": flatArcsOnGlueFace,
  "straight-lines-on-glue-face": straightLinesOnGlueFace,
  "wavering-lines-on-glue-face": waveringLinesOnGlueFace,
  "lathe-checks": latheChecks,
  "figure-repeating": figureRepeating,
  "veneer-over-plugs": veneerOverPlugs,
  "thin-veneer-on-old-core": thinVeneerOnOldCore,
  "figure-broken": figureBroken,
  "veneer-scraped-thin": veneerScrapedThin,
} as const satisfies Readonly<Record<string, Drawing>>;
