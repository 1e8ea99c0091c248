import type { Piece } from "#server/domain/examination.ts";
import { readPieceFile } from "../answers/read-piece-file.ts";

/** A feature by itself on a fitting part, to be walked to its years. */
export interface FeatureToWalk {
  readonly id: string;
  readonly says: string;
  readonly piece: Piece;
}

const alone = (
  feature: string,
  part: { readonly label: string; readonly kind: string },
  says: string,
  region = "region.london",
): FeatureToWalk => ({
  id: feature,
  says,
  piece: readPieceFile({
    title: "Example",
    invented: true,
    examined: 2026,
    attribution: { date: "1760/1780", region },
    parts: [{ id: "part", ...part }],
    observations: [{ id: "seen", part: "part", feature, seen: "present" }],
  }),
});

/** Features whose ways to their years differ: over tools, designs and registers, with assumptions and without, early and late. */
export const FEATURES_TO_WALK: readonly FeatureToWalk[] = [
  alone(
    "feature.rounded-dovetail-sockets",
    { label: "Drawer", kind: "part.drawer" },
    "dovetail sockets with rounded corners",
  ),
  alone(
    "feature.gimlet-point-screw",
    { label: "Screw", kind: "part.fastener" },
    "a gimlet-pointed screw, in Pennsylvania",
    "region.pennsylvania",
  ),
  alone("feature.wire-nail", { label: "Back board", kind: "part.back" }, "a wire nail"),
  alone("feature.flat-key-cylinder", { label: "Lock", kind: "part.lock" }, "a lock with a flat key"),
  alone(
    "feature.diamond-year-at-top",
    { label: "Handle", kind: "part.handle" },
    "a registration diamond with its year letter at the top",
  ),
  alone("feature.pit-saw-mark", { label: "Back board", kind: "part.back" }, "pit-saw marks"),
];
