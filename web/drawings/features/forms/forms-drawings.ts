import type { Drawing } from "../mark.ts";
import { bookcase, chestOnChest, clockCase, cornerCupboard, sideboard } from "./case-forms.ts";
import {
  chestOfDrawers,
  dropLeafTable,
  fallFrontDesk,
  highChest,
  press,
  sideChair,
  wardrobe,
} from "./measured-forms.ts";
import { cardTable, joinedStool, sixBoardChest, tripodTable, windsorChair } from "./other-forms.ts";

/** Drawings of forms, by key. */
export const FORMS_DRAWINGS = {
  "chest-of-drawers": chestOfDrawers,
  "high-chest": highChest,
  "drop-leaf-table": dropLeafTable,
  "side-chair": sideChair,
  "fall-front-desk": fallFrontDesk,
  wardrobe: wardrobe,
  press: press,
  "six-board-chest": sixBoardChest,
  "tripod-table": tripodTable,
  "card-table": cardTable,
  "joined-stool": joinedStool,
  "windsor-chair": windsorChair,
  sideboard: sideboard,
  bookcase: bookcase,
  "clock-case": clockCase,
  "chest-on-chest": chestOnChest,
  "corner-cupboard": cornerCupboard,
} as const satisfies Readonly<Record<string, Drawing>>;
