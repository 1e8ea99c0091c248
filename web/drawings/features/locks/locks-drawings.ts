import type { Drawing } from "../mark.ts";
import {
  drawerLock,
  escutcheons,
  flatKeyCylinder,
  keyholeWithoutLock,
  leverTumblers,
  springPinCylinder,
  stampedVr,
  tubularKey,
} from "./locks.ts";

/** Drawings of locks, by key. */
export const LOCKS_DRAWINGS = {
  "drawer-lock": drawerLock,
  "lever-tumblers": leverTumblers,
  "tubular-key": tubularKey,
  "spring-pin-cylinder": springPinCylinder,
  "flat-key-cylinder": flatKeyCylinder,
  "stamped-vr": stampedVr,
  "keyhole-without-lock": keyholeWithoutLock,
  escutcheons: escutcheons,
} as const satisfies Readonly<Record<string, Drawing>>;
