import type { Point } from "../../pen.ts";
import { drift, row } from "../curves.ts";
import { type Drawing, detail, edge, knife, span, tell } from "../mark.ts";
import { arrises, goingBack, hollows, surface } from "./surface.ts";

const BACK: Point = [46, -104];
const START: Point = [14, 160];

export const handPlaneTroughs: Drawing = {
  title: "Hand-plane troughs",
  tells: "Shallow furrows as wide as a plane iron, with nick lines that keep their place for a whole stroke.",
  draw: (level) => {
    const widths = level === "small" ? [56, 58, 52] : [40, 44, 40, 42];
    const at = arrises(START[0], widths);
    const nicks = (trough: number) => {
      const from = at[trough] as number;
      const width = widths[trough] as number;
      return row(level === "small" ? 1 : 3, (i) =>
        goingBack([from + width * (0.25 + 0.22 * i), START[1] + 5], BACK),
      );
    };
    const nick: Point = [(at[1] as number) + (widths[1] as number) * 0.36, START[1] + 6];
    return [
      ...surface({ profile: hollows(START, widths, 7), foot: 206, back: BACK }),
      edge(
        at
          .slice(1, -1)
          .map((x) => goingBack([x, START[1]], BACK))
          .join(""),
      ),
      detail(widths.map((_, trough) => nicks(trough)).join("")),
      knife(goingBack(nick, BACK)),
      tell([(at[1] as number) + 20, 24], [nick[0] + BACK[0], nick[1] + BACK[1] - 2]),
      span([at[2] as number, 218], [at[3] as number, 218]),
    ];
  },
};

export const forePlaneTroughs: Drawing = {
  title: "Fore-plane troughs on a hidden face",
  tells:
    "Parallel hollows that cross the grain at a slight angle, where the maker stopped at the first plane.",
  draw: (level) => {
    const widths = level === "small" ? [72, 74] : [48, 50, 48];
    const at = arrises(START[0], widths);
    const grain: Point = [18, -104];
    const run: Point = [62, -104];
    return [
      ...surface({ profile: hollows(START, widths, 12), foot: 206, back: run }),
      edge(
        at
          .slice(1, -1)
          .map((x) => goingBack([x, START[1]], run))
          .join(""),
      ),
      detail(
        row(level === "small" ? 3 : 6, (i) =>
          goingBack([42 + 22 * i, START[1] + 2], grain, 0.06 + 0.05 * (i % 3), 0.9 - 0.08 * (i % 2)),
        ),
      ),
      knife(goingBack([at[1] as number, START[1]], run, 0, 1.14)),
      tell([(at[1] as number) + 110, 26], [(at[1] as number) + 73, 41]),
      tell([60, 30], [42 + 22 + 13, 62]),
    ];
  },
};

/** Shares of the length of the board at which a chattering iron left its ripples. */
const CHATTER = [0, 7, 12, 20, 25, 34, 39, 48].map((x) => 84 + x);

export const handPlaneChatter: Drawing = {
  title: "Chatter of a hand plane",
  tells: "Short ripples in a patch, unevenly spaced, with the nick lines of the plane running through them.",
  draw: (level) => {
    const back: Point = [40, -96];
    const y = 158;
    const profile = hollows([14, y], [70], 0.2);
    const ripples = CHATTER.slice(1).map((x, i) => x - (CHATTER[i] as number));
    const rippled = hollows([84, y], ripples, 5);
    const rest = hollows([132, y], [54], 0.2);
    const whole = { start: profile.start, steps: [...profile.steps, ...rippled.steps, ...rest.steps] };
    return [
      ...surface({ profile: whole, foot: 204, back }),
      detail(
        CHATTER.map((x, i) =>
          goingBack([x, y], back, 0.1 + 0.1 * Math.abs(drift(i)), 0.9 - 0.12 * Math.abs(drift(i, 4))),
        ).join(""),
      ),
      ...(level === "full" ? [detail(row(3, (i) => `M${24 + 9 * i} ${136 - 25 * i}H${182 + 11 * i}`))] : []),
      knife(goingBack([CHATTER[2] as number, y], back) + goingBack([CHATTER[3] as number, y], back)),
      span([CHATTER[2] as number, 216], [CHATTER[3] as number, 216]),
      span([CHATTER[3] as number, 216], [CHATTER[4] as number, 216]),
      tell([80, 24], [(CHATTER[2] as number) + 42, 56]),
    ];
  },
};
