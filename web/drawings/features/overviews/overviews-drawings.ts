import type { Drawing } from "../mark.ts";
import { nailKinds, sawMarks, screwKinds } from "./overviews.ts";

/** Drawings of overviews, by key. */
export const OVERVIEWS_DRAWINGS = {
  "saw-marks": sawMarks,
  "nail-kinds": nailKinds,
  "screw-kinds": screwKinds,
} as const satisfies Readonly<Record<string, Drawing>>;
