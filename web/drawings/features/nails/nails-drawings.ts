import type { Drawing } from "../mark.ts";
import { clenchedNail, nailHoles } from "./clenched.ts";
import {
  cutNail,
  cutNailHammeredHead,
  cutNailPinchMarks,
  cutNailStampedHead,
  twoSidedShank,
} from "./cut-nails.ts";
import { fewTackHoles, firstHole, holesMissRebate, nailBesideOlderHole } from "./holes.ts";
import { gimpPin, shearedTack } from "./tacks.ts";
import {
  brassNailCastInOne,
  corrugatedFastener,
  domeOnWireShank,
  panelPin,
  wireNail,
  wireStaple,
} from "./wire-nails.ts";
import { forgedTack, fourSidedShank, roseHeadNail, sprig, tHeadNail } from "./wrought-nails.ts";

/** Drawings of nails, by key. */
export const NAILS_DRAWINGS = {
  "clenched-nail": clenchedNail,
  "nail-holes": nailHoles,
  "two-sided-shank": twoSidedShank,
  "cut-nail-hammered-head": cutNailHammeredHead,
  "cut-nail-stamped-head": cutNailStampedHead,
  "cut-nail": cutNail,
  "cut-nail-pinch-marks": cutNailPinchMarks,
  "first-hole": firstHole,
  "nail-beside-older-hole": nailBesideOlderHole,
  "holes-miss-rebate": holesMissRebate,
  "few-tack-holes": fewTackHoles,
  "wire-nail": wireNail,
  "panel-pin": panelPin,
  "dome-on-wire-shank": domeOnWireShank,
  "brass-nail-cast-in-one": brassNailCastInOne,
  "corrugated-fastener": corrugatedFastener,
  "wire-staple": wireStaple,
  "rose-head-nail": roseHeadNail,
  "four-sided-shank": fourSidedShank,
  "t-head-nail": tHeadNail,
  "forged-tack": forgedTack,
  sprig: sprig,
  "gimp-pin": gimpPin,
  "sheared-tack": shearedTack,
} as const satisfies Readonly<Record<string, Drawing>>;
