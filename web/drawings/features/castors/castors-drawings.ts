import type { Drawing } from "../mark.ts";
import {
  brassCastorWheel,
  brassSocketCastor,
  ceramicCastorWheel,
  leatherCastorWheel,
  pressedCastorCup,
  rubberTyredCastor,
  swivellingCastor,
  woodCastorWheel,
} from "./castors.ts";

/** Drawings of castors, by key. */
export const CASTORS_DRAWINGS = {
  "wood-castor-wheel": woodCastorWheel,
  "leather-castor-wheel": leatherCastorWheel,
  "brass-castor-wheel": brassCastorWheel,
  "ceramic-castor-wheel": ceramicCastorWheel,
  "rubber-tyred-castor": rubberTyredCastor,
  "swivelling-castor": swivellingCastor,
  "brass-socket-castor": brassSocketCastor,
  "pressed-castor-cup": pressedCastorCup,
} as const satisfies Readonly<Record<string, Drawing>>;
