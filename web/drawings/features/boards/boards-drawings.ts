import type { Drawing } from "../mark.ts";
import { blockboardEdge, chipboardEdge, peeledFace, plywoodEdge } from "./boards.ts";

/** Drawings of boards made in a factory, by key. */
export const BOARDS_DRAWINGS = {
  "plywood-edge": plywoodEdge,
  "blockboard-edge": blockboardEdge,
  "chipboard-edge": chipboardEdge,
  "peeled-face": peeledFace,
} as const satisfies Readonly<Record<string, Drawing>>;
