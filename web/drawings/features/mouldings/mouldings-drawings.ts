import type { Drawing } from "../mark.ts";
import {
  fadingAtEnds,
  freshMouldingOnOldBoard,
  nickLinesAlong,
  ridgesAcross,
  rippleMoulding,
} from "./moulding-marks.ts";
import {
  astragalProfile,
  cavettoProfile,
  cymaRectaProfile,
  cymaReversaProfile,
  doubleArchProfile,
  mouldingProfiles,
  ovoloProfile,
  quirkedBeadProfile,
  scotiaProfile,
  thumbnailProfile,
} from "./moulding-profiles.ts";

/** Drawings of mouldings, by key. */
export const MOULDINGS_DRAWINGS = {
  "nick-lines-along": nickLinesAlong,
  "ridges-across": ridgesAcross,
  "fading-at-ends": fadingAtEnds,
  "ripple-moulding": rippleMoulding,
  "fresh-moulding-on-old-board": freshMouldingOnOldBoard,
  "ovolo-profile": ovoloProfile,
  "cavetto-profile": cavettoProfile,
  "cyma-recta-profile": cymaRectaProfile,
  "cyma-reversa-profile": cymaReversaProfile,
  "astragal-profile": astragalProfile,
  "thumbnail-profile": thumbnailProfile,
  "double-arch-profile": doubleArchProfile,
  "scotia-profile": scotiaProfile,
  "quirked-bead-profile": quirkedBeadProfile,
  "moulding-profiles": mouldingProfiles,
} as const satisfies Readonly<Record<string, Drawing>>;
