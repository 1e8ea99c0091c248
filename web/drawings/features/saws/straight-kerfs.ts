import { n } from "../../pen.ts";
import { board, FACE, faceBox } from "../board.ts";
import { drift, row } from "../curves.ts";
import { type Detail, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";

const { x, y, width, height } = FACE;
const FOOT = y + height;
const inFace = faceBox(FACE);

/** Straight kerfs across the face from `from` to `to`, `pitch` apart, leaning by `lean` over the width of the board. */
export function kerfs(
  from: number,
  to: number,
  pitch: number,
  lean: number,
  unevenness: number,
  seed = 0,
): readonly { top: number; foot: number }[] {
  const lines: { top: number; foot: number }[] = [];
  for (let at = from, i = 0; at < to; i++) {
    lines.push({ top: at + lean + unevenness * drift(i, seed + 3), foot: at });
    at += pitch * (1 + unevenness * 0.16 * drift(i, seed));
  }
  return lines;
}

const drawn = (lines: readonly { top: number; foot: number }[]): string =>
  lines.map(({ top, foot }) => `M${n(top)} ${n(y)}L${n(foot)} ${n(FOOT)}`).join("");

/** The bays of a hand-sawn board: where each begins, how its kerfs lean and how far apart they stand. */
export const BAYS = [
  { from: x - 20, to: x + 66, pitch: 8, lean: 20 },
  { from: x + 66, to: x + 122, pitch: 6.2, lean: 34 },
  { from: x + 112, to: x + 200, pitch: 9, lean: 12 },
] as const;

export const pitSawMark: Drawing = {
  title: "Pit-saw or handsaw mark",
  tells: "Straight kerfs whose slope and spacing change from bay to bay along the board.",
  draw: (level) => {
    const wide = level === "small" ? 2.1 : 1;
    const [first, second] = BAYS;
    const telling = (bay: (typeof BAYS)[number], at: number) =>
      `M${n(at + bay.lean * 1.2)} ${n(y - 0.2 * height)}L${n(at)} ${n(FOOT)}`;
    return [
      ...board(FACE, level),
      ...BAYS.map(({ from, to, pitch, lean }, bay) =>
        detail(drawn(kerfs(from, to, pitch * wide, lean, 1.2, bay)), inFace),
      ),
      ...(level === "full"
        ? [
            edge(
              `M${x + 168} ${y + 96}l9 -7 -4 12 11 -4 -6 11 9 1M${x + 172} ${y + 120}l8 -6 -3 10 9 -3`,
              inFace,
            ),
          ]
        : []),
      knife(telling(first, x + 34)),
      knife(telling(second, x + 84)),
      tell([x + 20, 22], [x + 34 + first.lean * 1.16, 30]),
      tell([x + 152, 22], [x + 87 + second.lean * 1.16, 30]),
    ];
  },
};

/** Pitch of the drawn sash saw, in drawing units; the same from end to end. */
export const SASH_PITCH = 9;

export const sashSawMark: Drawing = {
  title: "Sash-saw mark",
  tells: "Straight kerfs of one pitch, square to the edge of the board; the last few centimetres are split.",
  draw: (level) => {
    const pitch = SASH_PITCH * (level === "small" ? 2 : 1);
    const count = Math.floor((width - 26) / pitch);
    const lines = row(count, (i) => `M${n(x + 6 + pitch * i)} ${y}V${FOOT}`);
    const split = x + 6 + pitch * (count - 1) + 5;
    return [
      ...board(FACE, level),
      detail(lines, inFace),
      ...(level === "full"
        ? [
            edge(`M${split} ${y}l3 22 -4 20 5 26 -3 24 4 30 -3 24`, inFace),
            detail(
              row(5, (i) => `M${split + 5} ${y + 18 + 27 * i}h${16 - 2 * (i % 3)}`),
              inFace,
            ),
            says(x + 6 + pitch * 9, 24, "ten pitches"),
          ]
        : []),
      knife(`M${x + 6 + pitch * 4} ${y - 18}V${FOOT}`),
      knife(`M${x + 6 + pitch * (level === "small" ? 8 : 14)} ${y - 18}V${FOOT}`),
      span([x + 6 + pitch * 4, y - 10], [x + 6 + pitch * (level === "small" ? 8 : 14), y - 10]),
    ];
  },
};

/** Pitch of the drawn band saw and the number of kerfs from one mark of the joint to the next. */
export const BAND_PITCH = 3.2;
export const KERFS_PER_TURN = 18;

const bandLines = (level: Detail): { fine: string; joints: readonly number[] } => {
  const joints = [0, 1, 2].map((turn) => x + 24 + turn * BAND_PITCH * KERFS_PER_TURN);
  const step = BAND_PITCH * (level === "small" ? 3 : 1);
  const fine = row(Math.floor(width / step), (i) => {
    const at = x + step * (i + 0.6) + 0.5 * drift(i);
    return `M${n(at)} ${y}C${n(at + drift(i, 1))} ${y + 40} ${n(at - drift(i, 2))} ${y + 100} ${n(at)} ${FOOT}`;
  });
  return { fine, joints };
};

export const bandSawMark: Drawing = {
  title: "Band-saw mark",
  tells:
    "Fine straight kerfs a millimetre or two apart, and one deeper line that comes back at a fixed distance.",
  draw: (level) => {
    const { fine, joints } = bandLines(level);
    const [a, b, c] = joints as [number, number, number];
    return [
      ...board(FACE, level),
      detail(fine, inFace),
      ...joints.map((at) => knife(`M${n(at)} ${y - 6}V${FOOT}`)),
      span([a, y - 14], [b, y - 14]),
      span([b, y - 14], [c, y - 14]),
    ];
  },
};
