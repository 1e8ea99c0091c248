import { type Drawing, type Mark, says, tell } from "../mark.ts";
import { cutNailStampedHead } from "../nails/cut-nails.ts";
import { wireNail } from "../nails/wire-nails.ts";
import { roseHeadNail } from "../nails/wrought-nails.ts";
import { circularSawMark } from "../saws/round-kerfs.ts";
import { bandSawMark, pitSawMark, sashSawMark } from "../saws/straight-kerfs.ts";
import { screwMarks } from "../screws/screw.ts";
import { GIMLET, HAND_FILED, MACHINE_CUT } from "../screws/slotted-screws.ts";

/** Four drawings side by side, each in its simple form, with its name. */
const four = (drawings: readonly (readonly [Drawing, string])[]): readonly Mark[] =>
  drawings.flatMap(([drawing, name], i): Mark[] => {
    const [x, y] = [4 + 120 * (i % 2), 4 + 118 * Math.floor(i / 2)];
    return [{ kind: "inset", x, y, scale: 0.46, marks: drawing.draw("small") }, says(x + 52, y + 108, name)];
  });

export const sawMarks: Drawing = {
  title: "Four kinds of saw mark",
  tells:
    "Pit saw: straight, changing slope. Sash saw: straight, one pitch. Circular saw: arcs. Band saw: fine, one line coming back.",
  draw: () =>
    four([
      [pitSawMark, "pit saw"],
      [sashSawMark, "sash saw"],
      [circularSawMark, "circular saw"],
      [bandSawMark, "band saw"],
    ]),
};

export const nailKinds: Drawing = {
  title: "Three kinds of nail",
  tells:
    "Wrought: hammered head, tapered on four sides. Cut: tapered on two sides. Wire: round, of one thickness.",
  draw: () =>
    [roseHeadNail, cutNailStampedHead, wireNail].flatMap((drawing, i): Mark[] => {
      const name = ["wrought", "cut", "wire"][i] as string;
      const view = drawing.draw("small").filter((mark) => mark.kind === "body" && isLeftOf(mark.d, 96));
      return [
        { kind: "inset", x: -14 + 80 * i, y: 4, scale: 0.88, marks: view },
        tell([66 + 80 * i, 150], [50 + 80 * i, 120]),
        says(41 + 80 * i, 226, name),
      ];
    }),
};

/** Whether a path of absolute coordinates starts to the left of `x`. */
const isLeftOf = (d: string, x: number): boolean => Number(/^M([\d.]+)/.exec(d)?.[1] ?? Number.NaN) < x;

export const screwKinds: Drawing = {
  title: "Three kinds of screw",
  tells:
    "Filed by hand: uneven thread, blunt. Cut by machine: even thread, blunt. Pointed: the thread runs out to a tip.",
  draw: (level) => {
    const coarse = level === "small" ? 1.7 : 1;
    return [HAND_FILED, MACHINE_CUT, GIMLET].flatMap((screw, i): Mark[] => [
      ...screwMarks({
        ...screw,
        axis: 46 + 76 * i,
        head: 30,
        foot: 204,
        pitch: screw.pitch * coarse,
        shank: { top: screw.shank.top * 0.8, foot: screw.shank.foot * 0.8 },
        crest: { top: screw.crest.top * 0.8, foot: screw.crest.foot * 0.8 },
        depth: screw.depth * 0.8,
      }),
      tell([76 + 76 * i, 226], [52 + 76 * i, 207]),
      says(40 + 76 * i, 232, ["filed", "blunt", "pointed"][i] as string),
    ]);
  },
};
