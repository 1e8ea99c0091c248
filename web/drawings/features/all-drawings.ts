import { BOARDS_DRAWINGS } from "./boards/boards-drawings.ts";
import { CARVING_DRAWINGS } from "./carving/carving-drawings.ts";
import { CASES_DRAWINGS } from "./cases/cases-drawings.ts";
import { CASTORS_DRAWINGS } from "./castors/castors-drawings.ts";
import { DRAWERS_DRAWINGS } from "./drawers/drawers-drawings.ts";
import { FEET_DRAWINGS } from "./feet/feet-drawings.ts";
import { FORMS_DRAWINGS } from "./forms/forms-drawings.ts";
import { FRONTS_DRAWINGS } from "./fronts/fronts-drawings.ts";
import { HANDLES_DRAWINGS } from "./handles/handles-drawings.ts";
import { HINGES_DRAWINGS } from "./hinges/hinges-drawings.ts";
import { INLAY_DRAWINGS } from "./inlay/inlay-drawings.ts";
import { JOINTS_DRAWINGS } from "./joints/joints-drawings.ts";
import { LOCKS_DRAWINGS } from "./locks/locks-drawings.ts";
import { MOULDINGS_DRAWINGS } from "./mouldings/mouldings-drawings.ts";
import { NAILS_DRAWINGS } from "./nails/nails-drawings.ts";
import { OVERVIEWS_DRAWINGS } from "./overviews/overviews-drawings.ts";
import { PLANES_DRAWINGS } from "./planes/planes-drawings.ts";
import { SAWS_DRAWINGS } from "./saws/saws-drawings.ts";
import { SCARS_DRAWINGS } from "./scars/scars-drawings.ts";
import { SCREWS_DRAWINGS } from "./screws/screws-drawings.ts";
import { UPHOLSTERY_DRAWINGS } from "./upholstery/upholstery-drawings.ts";
import { VENEER_DRAWINGS } from "./veneer/veneer-drawings.ts";
import { WEAR_DRAWINGS } from "./wear/wear-drawings.ts";

/** Every drawing by its key. They make a chunk of their own: only `FeatureDrawing` loads it, and not before it is shown. */
export const ALL_DRAWINGS = {
  ...BOARDS_DRAWINGS,
  ...CARVING_DRAWINGS,
  ...CASES_DRAWINGS,
  ...CASTORS_DRAWINGS,
  ...DRAWERS_DRAWINGS,
  ...FEET_DRAWINGS,
  ...FORMS_DRAWINGS,
  ...FRONTS_DRAWINGS,
  ...HANDLES_DRAWINGS,
  ...HINGES_DRAWINGS,
  ...INLAY_DRAWINGS,
  ...JOINTS_DRAWINGS,
  ...LOCKS_DRAWINGS,
  ...MOULDINGS_DRAWINGS,
  ...NAILS_DRAWINGS,
  ...OVERVIEWS_DRAWINGS,
  ...PLANES_DRAWINGS,
  ...SAWS_DRAWINGS,
  ...SCARS_DRAWINGS,
  ...SCREWS_DRAWINGS,
  ...UPHOLSTERY_DRAWINGS,
  ...VENEER_DRAWINGS,
  ...WEAR_DRAWINGS,
} as const;

export type DrawingKey = keyof typeof ALL_DRAWINGS;
