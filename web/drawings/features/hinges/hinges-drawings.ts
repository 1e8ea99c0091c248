import type { Drawing } from "../mark.ts";
import {
  castIronButt,
  continuousHinge,
  extrudedHinge,
  foldedSheetHinge,
  loosePinHinge,
  wroughtButt,
} from "./butts.ts";
import {
  butterflyHinge,
  cardTableHinge,
  cupHinge,
  hHinge,
  ratTailHinge,
  strapHinge,
} from "./surface-hinges.ts";

/** Drawings of hinges, by key. */
export const HINGES_DRAWINGS = {
  "cast-iron-butt": castIronButt,
  "wrought-butt": wroughtButt,
  "folded-sheet-hinge": foldedSheetHinge,
  "extruded-hinge": extrudedHinge,
  "loose-pin-hinge": loosePinHinge,
  "continuous-hinge": continuousHinge,
  "butterfly-hinge": butterflyHinge,
  "h-hinge": hHinge,
  "rat-tail-hinge": ratTailHinge,
  "strap-hinge": strapHinge,
  "card-table-hinge": cardTableHinge,
  "cup-hinge": cupHinge,
} as const satisfies Readonly<Record<string, Drawing>>;
