import { line, n, type Point, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, outline, tell } from "../mark.ts";
import { headMarks, roseHead } from "../nails/nail-views.ts";
import { CORNER, corner, cornerTails, HEIGHT, onFront } from "./corner.ts";
import { type Layout, setOut } from "./tails.ts";

const HAND: Layout = { tails: 3, pin: 10, slope: 0.18, halfPin: 11, unevenness: 1.5 };
const tails = cornerTails(HAND, 0);
const { x, top } = CORNER;

/** Grain on the face of the front, which goes back to the left. */
const frontGrain = (from: number): string =>
  row(4, (i) => line(onFront(from + 0.06 * (i % 2), 18 + 30 * i), onFront(0.97, 20 + 29 * i)));

export const throughDovetailUnderVeneer: Drawing = {
  title: "Through dovetail under veneer",
  tells: "End grain of the tails runs out to the face of the front, and a veneer covers it.",
  draw: (level) => {
    // The veneer is broken away near the corner, so that the ground shows.
    const torn: Point[] = [
      onFront(0.52, 0),
      onFront(0.46, 22),
      onFront(0.58, 40),
      onFront(0.47, 62),
      onFront(0.6, 84),
      onFront(0.5, 104),
      onFront(0.55, HEIGHT),
    ];
    const lifted = torn.map(([px, py]): Point => [px + 3.5, py + 1]);
    const veneer = polygon(...torn, onFront(1, HEIGHT), onFront(1, 0));
    return [
      ...corner({ lap: 0, tails }, level),
      body(veneer),
      body(polygon(...torn, ...lifted.toReversed()), "edge"),
      ...(level === "full" ? [detail(frontGrain(0.6), veneer)] : []),
      tell([24, 222], onFront(0.14, ((tails[2]?.end[0] ?? 0) + (tails[2]?.end[1] ?? 0)) / 2)),
      tell([128, 22], [torn[0]?.[0] as number, (torn[0]?.[1] as number) - 1]),
    ];
  },
};

export const throughDovetailUnderMouldings: Drawing = {
  title: "Mouldings over a through-dovetailed front",
  tells: "Mitred mouldings are planted over the end grain of the tails.",
  draw: (level) => {
    const frame = (inset: number, v: number): Point[] => [
      onFront(inset, v),
      onFront(0.98 - inset, v),
      onFront(0.98 - inset, HEIGHT - v),
      onFront(inset, HEIGHT - v),
    ];
    const outer = frame(0.07, 8);
    const middle = frame(0.2, 22);
    const inner = frame(0.3, 36);
    return [
      ...corner({ lap: 0, tails }, level),
      body(polygon(...outer), "outline"),
      edge(polygon(...middle)),
      edge(polygon(...inner)),
      detail(outer.map((corner, i) => line(corner, inner[i] as Point)).join("")),
      tell([30, 226], onFront(0.04, ((tails[2]?.end[0] ?? 0) + (tails[2]?.end[1] ?? 0)) / 2)),
      tell([24, 20], onFront(0.86, 16)),
    ];
  },
};

/** A veneered front squarely before us: the end grain of the tails has telegraphed through near its ends. */
export const dovetailOutlineThroughVeneer: Drawing = {
  title: "Outlines of dovetails through the veneer",
  tells:
    "Small raised or sunk patches in a row near each end of the front, where end grain below moved less.",
  draw: (level) => {
    const face = polygon([14, 66], [226, 66], [226, 182], [14, 182]);
    const wedge = (side: -1 | 1, i: number): Point[] => {
      const at = side === -1 ? 14 : 226;
      const y = 78 + 36 * i;
      return [
        [at - side * 3, y],
        [at - side * 25, y],
        [at - side * 25, y + 23],
        [at - side * 3, y + 23],
      ];
    };
    const wedges = ([-1, 1] as const).flatMap((side) => [0, 1, 2].map((i) => wedge(side, i)));
    return [
      body(face),
      ...(level === "full"
        ? [
            detail(
              row(
                8,
                (i) =>
                  `M14 ${n(72 + 14 * i)}C70 ${n(60 + 16 * i)} 96 ${n(92 + 10 * i)} 130 ${n(80 + 12 * i)}S200 ${n(68 + 15 * i)} 226 ${n(76 + 13 * i)}`,
              ),
              face,
            ),
          ]
        : []),
      ...wedges.map((way) => knife(polygon(...way))),
      outline(face),
      tell([44, 36], [30, 76]),
      tell([190, 36], [208, 76]),
    ];
  },
};

/** A lap-dovetailed corner with a nail through a tail; see also the wedged one. */
export const nailedLapDovetail: Drawing = {
  title: "Lap dovetail with nails through it",
  tells: "A nail is driven through the tail. Look whether its hole is the first and dark at the edge.",
  draw: (level) => {
    const lapped = cornerTails({ tails: 2, pin: 16, slope: 0.22, halfPin: 14, unevenness: 2 }, 15);
    const heads = lapped.map(({ end: [a, b] }): Point => [x + 32, top + (a + b) / 2]);
    return [
      ...corner({ lap: 15, tails: lapped }, level),
      ...heads.flatMap(([hx, hy], i) => headMarks(roseHead(hx, hy, 9, 40 * i))),
      tell([172, 214], [(heads[1] as Point)[0] + 6, (heads[1] as Point)[1] + 6]),
    ];
  },
};

export const wedgedDovetails: Drawing = {
  title: "Dovetails spread with wedges",
  tells: "A thin wedge stands in the end of each tail, driven in to spread it.",
  draw: (level) => {
    const middles = tails.map(({ end: [a, b] }) => (a + b) / 2);
    const lowest = middles[2] as number;
    return [
      ...corner({ lap: 0, tails }, level),
      ...middles.flatMap((v) => [
        body(polygon([x, top + v - 4], [x, top + v + 4], [x + 34, top + v]), "edge"),
        body(
          polygon(onFront(0, v - 4), onFront(0.28, v - 4), onFront(0.28, v + 4), onFront(0, v + 4)),
          "edge",
        ),
      ]),
      tell([20, 222], onFront(0.2, lowest + 5)),
      tell([150, 222], [x + 30, top + lowest + 2]),
    ];
  },
};

/** By how much the drawer with a sawn joint was lowered. */
const LOWERED = 31;

export const sawnThroughJoint: Drawing = {
  title: "Joint sawn through",
  tells: "The edge cuts through a tail: half of it is gone, where a whole layout would end with a half pin.",
  draw: (level) => {
    // Set out for a taller drawer and cut along its new top edge, through the middle of a tail.
    const taller = setOut(HAND, HEIGHT + LOWERED, 46);
    const cutOff = taller.map(({ end, base }) => ({
      end: [Math.max(0, end[0] - LOWERED), end[1] - LOWERED] as const,
      base: [Math.max(0, base[0] - LOWERED), base[1] - LOWERED] as const,
    }));
    const above = polygon([x, top - 26], [x + 46, top - 26], [230, top - 26], [230, top], [x, top]);
    return [
      ...corner({ lap: 0, tails: cutOff }, level),
      detail(
        row(9, (i) => line([x + 8 + 18 * i, top - 1], [x + 2 + 18 * i, top - 12])),
        above,
      ),
      knife(line([x - 6, top], [236, top])),
      tell([150, 22], [x + 24, top - 2]),
    ];
  },
};
