import { box, dot, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, says, span, tell, toned } from "../mark.ts";
import { BATWING, bail, bothHalves } from "./plate-outlines.ts";

export const sandCastBack: Drawing = {
  title: "Back of a sand-cast plate",
  tells:
    "A grainy back with pits, and file strokes along the edge; below, cut through, its thickness varies.",
  draw: (level) => {
    const plate = bothHalves(120, 78, BATWING, 1.2);
    return [
      body(plate),
      toned(plate, "dots"),
      ...[
        [80, 72],
        [138, 92],
        [168, 66],
        [104, 98],
      ].map(([x, y]) => body(dot(x as number, y as number, 2.4), "edge")),
      ...(level === "full"
        ? [edge(row(9, (i) => line([58 + 4 * i, 44 + Math.abs(i - 4)], [61 + 4 * i, 52 + Math.abs(i - 4)])))]
        : []),
      ...cut("M30 176C70 172 120 182 168 174S206 178 212 180V192C180 198 140 190 100 196S50 190 30 192z"),
      span([80, 175], [80, 195]),
      span([196, 177], [196, 194]),
      tell([30, 16], [68, 46]),
      tell([214, 140], [140, 96]),
    ];
  },
};

export const wireOrCastBail: Drawing = {
  title: "Bail of wire beside a cast one",
  tells:
    "The wire (above) is of one thickness throughout; a cast bail (below) swells in the middle and is filed.",
  draw: (level) => [
    body(bail(120, 22, 84, 74, 5, 10)),
    body(bail(120, 126, 84, 82, 4, 22)),
    ...(level === "full" ? [detail(row(7, (i) => line([100 + 6 * i, 200], [104 + 6 * i, 214])))] : []),
    ...[36, 204].flatMap((x) => [body(dot(x, 20, 7)), body(dot(x, 124, 7))]),
    span([150, 91], [151, 101]),
    knife(line([120, 88], [120, 104]) + line([120, 192], [120, 224])),
    span([120, 197], [120, 219]),
    ...(level === "full" ? [says(120, 50, "wire"), says(120, 154, "cast")] : []),
  ],
};

/** The edge of a bolt thread: even and rolled, or cut by hand. */
export const standardBolt: Drawing = {
  title: "Machine-threaded handle bolt",
  tells:
    "An even fine thread and a regular hexagon nut; an old bolt has a hand-cut thread and a round or square nut.",
  draw: (level) => {
    const turns = level === "small" ? 8 : 20;
    const step = 120 / turns;
    return [
      body(box(20, 62, 60, 28)),
      body(
        `M80 62${row(turns, () => `l${step / 2} 4 ${step / 2} -4`)}V90${row(turns, () => `l${-step / 2} -4 ${-step / 2} 4`)}z`,
      ),
      detail(row(turns - 1, (i) => line([80 + step * (i + 0.5), 66], [80 + step * (i + 1), 86]))),
      body("M76 164L92 136H124L140 164L124 192H92z"),
      body(dot(108, 164, 16)),
      edge(dot(108, 164, 12)),
      span([120, 48], [120 + step, 48]),
      span([120 + step, 48], [120 + 2 * step, 48]),
      tell([200, 206], [134, 178]),
    ];
  },
};
