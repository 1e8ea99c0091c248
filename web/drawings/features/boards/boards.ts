import { box, line, n, polygon } from "../../pen.ts";
import { drift, row } from "../curves.ts";
import { body, type Detail, type Drawing, detail, edge, type Mark, span, tell, toned } from "../mark.ts";

/** The sheet: its near edge, and how far its face runs back. */
const LEFT = 14;
const RIGHT = 184;
const TOP = 108;
const FOOT = 192;
const BACK = [38, -44] as const;

const backOf = (x: number, y: number): readonly [number, number] => [x + BACK[0], y + BACK[1]];
const face = polygon([LEFT, TOP], [RIGHT, TOP], backOf(RIGHT, TOP), backOf(LEFT, TOP));

/** One layer of the sheet, on the near edge and on the right end. */
const layer = (from: number, to: number) => ({
  near: box(LEFT, from, RIGHT - LEFT, to - from),
  end: polygon([RIGHT, from], backOf(RIGHT, from), backOf(RIGHT, to), [RIGHT, to]),
});

/** A line along the near edge, and one along the right end. */
const alongNear = (y: number): string => line([LEFT, y], [RIGHT, y]);
const alongEnd = (y: number): string => line([RIGHT, y], backOf(RIGHT, y));

const faceGrain = (level: Detail): readonly Mark[] =>
  level === "small"
    ? []
    : [detail("M44 98C84 94 130 100 186 95M58 84C100 80 150 86 200 80M66 74C110 71 160 76 212 71")];

const sheet = (): readonly Mark[] => {
  const whole = layer(TOP, FOOT);
  return [body(face), body(whole.near), body(whole.end)];
};

export const plywoodEdge: Drawing = {
  title: "Edge of plywood",
  tells: "At the bare edge thin layers lie on each other, long grain and end grain by turns.",
  draw: (level) => {
    const count = 5;
    const height = (FOOT - TOP) / count;
    const layers = Array.from({ length: count }, (_, i) => layer(TOP + i * height, TOP + (i + 1) * height));
    const lines = level === "small" ? 1 : 3;
    const long = (make: (y: number) => string, odd: boolean): string =>
      layers
        .map((_, i) =>
          (i % 2 === 1) === odd
            ? row(lines, (k) => make(TOP + i * height + ((k + 1) * height) / (lines + 1)))
            : "",
        )
        .join("");
    return [
      ...sheet(),
      ...faceGrain(level),
      // What is long grain on the near edge is end grain round the corner.
      detail(long(alongNear, false) + long(alongEnd, true)),
      ...layers.map(({ near, end }, i) => toned(i % 2 === 1 ? near : end, "dots")),
      edge(row(count - 1, (i) => alongNear(TOP + (i + 1) * height) + alongEnd(TOP + (i + 1) * height))),
      span([232, 70], [232, 148]),
      tell([60, 228], [76, 134]),
      tell([150, 228], [138, 152]),
    ];
  },
};

export const blockboardEdge: Drawing = {
  title: "Edge of blockboard",
  tells: "Strips of solid wood side by side between two veneers; over them the face has faint stripes.",
  draw: (level) => {
    const skin = 13;
    const count = 5;
    const width = (RIGHT - LEFT) / count;
    const at = (i: number): number => LEFT + i * width;
    const core = layer(TOP + skin, FOOT - skin);
    const rings = (i: number): string => {
      const middle = at(i) + width / 2;
      const up = i % 2 === 0 ? 1 : -1;
      const foot = up === 1 ? FOOT - skin : TOP + skin;
      return row(level === "small" ? 2 : 4, (k) => {
        const r = (level === "small" ? 12 : 7) * (k + 1);
        const half = Math.min(r, width / 2 - 1);
        return `M${n(middle - half)} ${n(foot)}Q${n(middle)} ${n(foot - up * r * 2)} ${n(middle + half)} ${n(foot)}`;
      });
    };
    return [
      ...sheet(),
      detail(row(count, rings), core.near),
      edge(row(count - 1, (i) => line([at(i + 1), TOP + skin], [at(i + 1), FOOT - skin]))),
      edge([TOP + skin, FOOT - skin].map((y) => alongNear(y) + alongEnd(y)).join("")),
      detail(row(count - 1, (i) => line([at(i + 1), TOP], backOf(at(i + 1), TOP)))),
      tell([60, 228], [82, 176]),
      tell([96, 18], [118, 84]),
      span([at(3), 214], [at(4), 214]),
    ];
  },
};

export const chipboardEdge: Drawing = {
  title: "Edge of chipboard",
  tells:
    "Chips of every direction under a thin facing, coarse in the middle and finer outside; wet edges swell.",
  draw: (level) => {
    const skin = 7;
    const fine = 17;
    const columns = level === "small" ? 6 : 11;
    const rows = level === "small" ? 2 : 3;
    const chip = (i: number): string => {
      const x = LEFT + 8 + ((RIGHT - LEFT - 12) * ((i % columns) + 0.35 + 0.3 * drift(i))) / columns;
      const y = TOP + 32 + (26 * Math.floor(i / columns)) / Math.max(1, rows - 1) + 4 * drift(i, 3);
      const turn = Math.PI * drift(i, 5);
      const reach = (level === "small" ? 9 : 7) + 2 * drift(i, 1);
      const [ux, uy] = [Math.cos(turn) * reach, Math.sin(turn) * reach * 0.7];
      return polygon(
        [x - ux, y - uy],
        [x + uy * 0.35, y - ux * 0.3],
        [x + ux, y + uy],
        [x - uy * 0.3, y + ux * 0.25],
      );
    };
    const whole = layer(TOP, FOOT);
    const swollen = `M${LEFT} ${TOP}H${RIGHT}V${FOOT + 9}C150 ${FOOT + 10} 140 ${FOOT} 120 ${FOOT}H${LEFT}z`;
    return [
      body(face),
      body(polygon([RIGHT, TOP], backOf(RIGHT, TOP), backOf(RIGHT, FOOT), [RIGHT, FOOT + 9])),
      body(swollen),
      toned(layer(TOP + skin, TOP + skin + fine).near, "dots"),
      toned(layer(FOOT - fine, FOOT).near, "dots"),
      toned(whole.end, "dots"),
      detail(row(columns * rows, chip), whole.near),
      edge(alongNear(TOP + skin) + alongEnd(TOP + skin)),
      edge(swollen),
      tell([60, 228], [84, 158]),
      tell([200, 226], [168, FOOT + 9]),
      tell([24, 60], [40, TOP + 3]),
    ];
  },
};

/** The face of peeled ply: loops of figure that come back, and fine checks. */
export const peeledFace: Drawing = {
  title: "Face of peeled plywood",
  tells:
    "Broad loops of figure swim over the whole width and come back; no joint, and fine checks along the grain.",
  draw: (level) => {
    const whole = box(14, 40, 212, 164);
    const loops = level === "small" ? 2 : 4;
    const eye = (cx: number): string =>
      row(loops, (k) => {
        const rx = 10 + (level === "small" ? 16 : 9) * k;
        const ry = 18 + (level === "small" ? 28 : 17) * k;
        return `M${cx - rx} 122C${cx - rx} ${122 - ry * 1.2} ${cx + rx} ${122 - ry * 1.2} ${cx + rx} 122C${cx + rx} ${122 + ry * 1.2} ${cx - rx} ${122 + ry * 1.2} ${cx - rx} 122z`;
      });
    const checks = row(level === "small" ? 4 : 10, (i) => {
      const x = 30 + ((i * 67) % 186);
      const y = 56 + ((i * 41) % 120);
      return `M${x} ${y}v${14 + ((i * 7) % 10)}`;
    });
    return [
      body(whole),
      detail(eye(66) + eye(174) + "M120 40C112 90 128 150 120 204", whole),
      edge(checks, whole),
      span([66, 222], [174, 222]),
      tell([30, 16], [56, 100]),
      tell([210, 16], [182, 100]),
    ];
  },
};
