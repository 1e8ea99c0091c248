import { openTurns } from "../../ports/open-turns.ts";

/** Turns for others while a sheet or a plan of a look is drawn up, whose single steps can take ten milliseconds and more. */
export const turnsOfLook = () => openTurns({ slice: 5 });
