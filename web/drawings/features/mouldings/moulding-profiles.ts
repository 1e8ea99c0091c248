import type { Point } from "../../pen.ts";
import { closed, open, placed } from "../curves.ts";
import { cut, type Drawing, knife, type Mark, says, tell } from "../mark.ts";
import { ragged } from "../oblique.ts";
import {
  ASTRAGAL,
  BEAD,
  CAVETTO,
  CYMA_RECTA,
  CYMA_REVERSA,
  DOUBLE_ARCH,
  endOf,
  OVOLO,
  type Profile,
  SCOTIA,
  THUMBNAIL,
} from "./profiles.ts";

/** A profile in section, its wood going on to the left to a broken end. */
function section(
  profile: Profile,
  dx: number,
  dy: number,
  size: number,
  left: number,
  weight: "outline" | "edge" = "outline",
): readonly Mark[] {
  const line = placed(profile.line, dx, dy, size);
  const [, ey] = endOf(profile);
  const foot: Point = [left, dy + ey * size];
  const top: Point = [left, dy + profile.line.start[1] * size];
  const wood = `${closed(line, foot).replace(/z$/, "")}${ragged(foot, top, 6, 4)}z`;
  return cut(wood, weight);
}

const drawn = (profile: Profile): Drawing => ({
  title: `${profile.name}, in profile`,
  tells: profile.tells,
  draw: () => {
    const line = placed(profile.line, 62, 44, 1.5);
    return [
      ...section(profile, 62, 44, 1.5, 20),
      knife(open(line)),
      tell([234, 44 + 1.5 * profile.at[1] + 2], [62 + 1.5 * profile.at[0] + 2, 44 + 1.5 * profile.at[1] + 2]),
    ];
  },
});

export const ovoloProfile: Drawing = drawn(OVOLO);
export const cavettoProfile: Drawing = drawn(CAVETTO);
export const cymaRectaProfile: Drawing = drawn(CYMA_RECTA);
export const cymaReversaProfile: Drawing = drawn(CYMA_REVERSA);
export const astragalProfile: Drawing = drawn(ASTRAGAL);
export const thumbnailProfile: Drawing = drawn(THUMBNAIL);
export const doubleArchProfile: Drawing = drawn(DOUBLE_ARCH);
export const scotiaProfile: Drawing = drawn(SCOTIA);
export const quirkedBeadProfile: Drawing = drawn(BEAD);

/** Nine profiles with their names: what the word moulding covers. */
export const mouldingProfiles: Drawing = {
  title: "Mouldings in profile",
  tells:
    "Ovolo, cavetto, cyma recta, cyma reversa, astragal, thumbnail, double arch, scotia and bead: rounds, hollows and double curves.",
  draw: (level) => {
    const all = [OVOLO, CAVETTO, CYMA_RECTA, CYMA_REVERSA, ASTRAGAL, THUMBNAIL, DOUBLE_ARCH, SCOTIA, BEAD];
    const shown = level === "small" ? all.slice(0, 4) : all;
    const columns = level === "small" ? 2 : 3;
    const size = level === "small" ? 0.84 : 0.46;
    const cell = 228 / columns;
    return shown.flatMap((profile, i) => {
      const dx = 14 + cell * (i % columns) + cell * 0.16;
      const dy = 10 + (level === "small" ? 116 : 76) * Math.floor(i / columns);
      return [
        ...section(profile, dx, dy, size, dx - cell * 0.16, "edge"),
        ...(level === "small"
          ? []
          : [says(dx + 20, dy + 62, profile.name.toLowerCase().replace("quirked ", ""))]),
        ...(i === 0 ? [tell([dx + 100 * size + 6, dy - 6], [dx + 62 * size, dy + 60 * size])] : []),
      ];
    });
  },
};
