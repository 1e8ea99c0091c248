import { box, line, n } from "../../pen.ts";
import { row, run, turnedOn } from "../curves.ts";
import { body, type Drawing, edge, span, tell } from "../mark.ts";

/** Height of one turn of the twist. */
export const TURN = 44;

export const twistTurning: Drawing = {
  title: "Twist turning",
  tells: "A round bead winds about the member at even pitch, cut by hand or on a screw-cutting lathe.",
  draw: (level) => {
    const turn = TURN * (level === "small" ? 1.5 : 1);
    const turns = Math.floor(176 / turn);
    const top = 36;
    const side = (s: -1 | 1): string =>
      row(turns * 2, (i) => {
        const out = (i + (s === 1 ? 0 : 1)) % 2 === 0;
        const y = top + (turn / 2) * (i + 1);
        return `C${120 + s * (out ? 44 : 18)} ${n(y - turn * 0.4)} ${120 + s * (out ? 44 : 18)} ${n(y - turn * 0.1)} ${120 + s * 27} ${n(y)}`;
      });
    const foot = top + turn * turns;
    const back = row(turns * 2, (k) => {
      const i = turns * 2 - 1 - k;
      const out = (i + 1) % 2 === 0;
      const y = top + (turn / 2) * i;
      return `C${120 - (out ? 44 : 18)} ${n(y + turn * 0.4)} ${120 - (out ? 44 : 18)} ${n(y + turn * 0.1)} ${120 - 27} ${n(y)}`;
    });
    return [
      body(box(84, 8, 72, 28)),
      body(`M147 ${top}${side(1)}L93 ${n(foot)}${back}z`),
      edge(
        row(turns * 2 - 1, (i) => {
          const y = top + (turn / 2) * (i + 1);
          return `M147 ${n(y)}C130 ${n(y + 4)} 108 ${n(y + turn / 2 - 4)} 93 ${n(y + turn / 2)}`;
        }),
        box(70, top, 100, foot - top),
      ),
      body(box(84, foot, 72, 22)),
      span([186, top + turn / 2], [186, top + turn * 1.5]),
      tell([30, 60], [92, top + turn]),
    ];
  },
};

export const ballTilter: Drawing = {
  title: "Ball tilter in a rear foot",
  tells:
    "A ball with a flat side turns in a socket at the end of the rear leg, held by a thong or a metal ferrule.",
  draw: () => [
    body("M88 10H152L148 132H92z"),
    body("M92 120H148V150C148 160 140 170 132 176A24 24 0 0 0 108 176C100 170 92 160 92 150z"),
    body("M99 210A25 25 0 1 1 141 210z"),
    edge(line([104, 206], [136, 206])),
    edge("M120 172V96M116 96h8"),
    tell([206, 226], [143, 200]),
    tell([206, 120], [150, 138]),
  ],
};

export const marlboroughPlinth: Drawing = {
  title: "Straight leg on a plinth",
  tells: "A straight square leg stands on a block that is larger than the leg, its top edge moulded.",
  draw: () => [
    body(box(24, 10, 192, 40)),
    body(box(88, 10, 64, 160)),
    edge(line([100, 56], [100, 166]) + line([140, 56], [140, 166])),
    body("M88 162H152C152 170 158 172 162 174V226H78V174C82 172 88 170 88 162z"),
    edge(line([78, 180], [162, 180])),
    span([78, 236], [162, 236]),
    tell([214, 140], [160, 172]),
  ],
};

export const gadroonedEdge: Drawing = {
  title: "Gadrooned edge",
  tells: "Short slanting lobes follow each other along the edge like a rope.",
  draw: (level) => {
    const pitch = level === "small" ? 26 : 17;
    const lobe = (x: number) =>
      `M${x} 104C${x + 10} 104 ${x + 16} 116 ${x + 12} 136C${x + 10} 144 ${x + 2} 146 ${x - 6} 146`;
    return [
      body(box(14, 48, 212, 56)),
      body(box(14, 104, 212, 42)),
      edge(
        row(Math.ceil(212 / pitch) + 1, (i) => lobe(10 + pitch * i)),
        box(14, 104, 212, 42),
      ),
      body(turnedOn(120, run([106, 146], ["l", 106, 154]))),
      span([78, 168], [78 + pitch, 168]),
      span([78 + pitch, 168], [78 + 2 * pitch, 168]),
      tell([170, 214], [150, 140]),
    ];
  },
};
