import { line } from "../../pen.ts";
import { type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";
import { CORNER, corner, cornerTails, ends, gaugeLine, HEIGHT, onFront, overcuts } from "./corner.ts";
import type { Layout } from "./tails.ts";

const LAP = 15;
const { top, foot } = CORNER;

const HAND: Layout = { tails: 4, pin: 7, slope: 0.16, halfPin: 8, unevenness: 1.4 };

export const handCutDovetail: Drawing = {
  title: "Dovetails cut by hand",
  tells:
    "A scribed gauge line along the shoulders, saw cuts that run past it, and tails that differ a little.",
  draw: (level) => {
    const tails = cornerTails(HAND, 0);
    const { base } = ends(0);
    return [
      ...corner({ lap: 0, tails }, level),
      edge(overcuts(tails, 0, HAND.slope, 12)),
      knife(line([base, top - 10], [base, foot + 14])),
      tell([156, 226], [base + 2, foot + 8]),
      ...(level === "full"
        ? [
            says(160, 230, "gauge line", "start"),
            tell([196, 104], [base + 14, top + (tails[1]?.base[0] ?? 0) + 2]),
          ]
        : []),
    ];
  },
};

export const lapDovetail: Drawing = {
  title: "Lap dovetail",
  tells: "The tails stop short of the face: no end grain shows on the front.",
  draw: (level) => {
    const tails = cornerTails(HAND, LAP);
    return [
      ...corner({ lap: LAP, tails }, level),
      detail(gaugeLine(LAP)),
      knife(line([ends(LAP).end, top - 8], [ends(LAP).end, foot + 8])),
      tell([30, 220], onFront(0.3, 116)),
      span([CORNER.x, foot + 16], [ends(LAP).end, foot + 16]),
    ];
  },
};

export const noGaugeLine: Drawing = {
  title: "No gauge line at the joint",
  tells: "No line is scribed along the shoulders; the tails end unevenly, set out by knife or eye.",
  draw: (level) => {
    const tails = cornerTails({ ...HAND, tails: 3, unevenness: 3 }, 0).map(({ end, base }, i) => ({
      end,
      base: [base[0] + (i - 1), base[1] - i] as const,
    }));
    const { base } = ends(0);
    return [
      ...corner({ lap: 0, tails }, level),
      tell([170, 222], [base + 2, top + (tails[2]?.base[1] ?? 0)]),
      tell([186, 40], [base + 2, top + (tails[0]?.base[0] ?? 0)]),
    ];
  },
};

export const fewBroadDovetails: Drawing = {
  title: "Few broad dovetails",
  tells: "Three or fewer wide tails to a corner, with stout pins.",
  draw: (level) => {
    const tails = cornerTails({ tails: 2, pin: 16, slope: 0.24, halfPin: 15, unevenness: 2 }, 0);
    const [first] = tails;
    return [
      ...corner({ lap: 0, tails }, level),
      detail(gaugeLine(0)),
      span(
        [ends(0).base + 12, top + (first?.base[0] ?? 0)],
        [ends(0).base + 12, top + (first?.base[1] ?? 0)],
      ),
    ];
  },
};

export const fineNarrowPins: Drawing = {
  title: "Very fine pins",
  tells: "Pins that come almost to a point between wide tails, many to a side.",
  draw: (level) => {
    const tails = cornerTails(
      { tails: level === "small" ? 4 : 6, pin: 1.4, slope: 0.14, halfPin: 4, unevenness: 0.6 },
      LAP,
    );
    const second = tails[1];
    return [
      ...corner({ lap: LAP, tails }, level),
      detail(gaugeLine(LAP)),
      tell([160, 40], [ends(LAP).end + 3, top + (second?.end[1] ?? 0) + 0.7]),
    ];
  },
};

const EQUAL_TAILS = 5;
const EQUAL_SLOPE = 0.13;
/** As wide at its narrow end as a tail is at its own. */
const EQUAL_PIN = HEIGHT / EQUAL_TAILS / 2 - EQUAL_SLOPE * (ends(LAP).base - ends(LAP).end);

/** Pins and tails alike, turned about. */
export const EQUAL: Layout = {
  tails: EQUAL_TAILS,
  pin: EQUAL_PIN,
  slope: EQUAL_SLOPE,
  halfPin: EQUAL_PIN / 2,
};
/** Length of the tails behind the lap. */
export const LAPPED_LENGTH = ends(LAP).base - ends(LAP).end;

export const equalDovetails: Drawing = {
  title: "Machine-cut equal dovetails",
  tells: "Pins and tails of one width, one slope and one pitch; no gauge line and no saw cuts past it.",
  draw: (level) => {
    const tails = cornerTails(EQUAL, LAP);
    const at = ends(LAP).base + 10;
    const middle = (i: number) => {
      const tail = tails[i];
      return top + ((tail?.base[0] ?? 0) + (tail?.base[1] ?? 0)) / 2;
    };
    return [
      ...corner({ lap: LAP, tails }, level),
      span([at, middle(0)], [at, middle(1)]),
      span([at, middle(1)], [at, middle(2)]),
      span([at, middle(2)], [at, middle(3)]),
    ];
  },
};
