import { box, line, n } from "../../pen.ts";
import { closed, drift, open, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";

/** A surface cut through: its level `LEVEL` is where the flat of the part lies. */
const LEVEL = 108;
const FOOT = 196;

export const carvingProud: Drawing = {
  title: "Carving proud of the surface",
  tells: "Cut through: the ornament stands above the flat of the part. Wood was left for it from the start.",
  draw: (level) => {
    const upper = run(
      [14, LEVEL],
      ["l", 58, LEVEL],
      ["c", 62, 84, 74, 70, 88, 72],
      ["c", 96, 74, 96, 88, 104, 88],
      ["c", 108, 62, 134, 62, 138, 88],
      ["c", 146, 88, 146, 74, 154, 72],
      ["c", 168, 70, 180, 84, 184, LEVEL],
      ["l", 226, LEVEL],
    );
    return [
      ...cut(closed(upper, [226, FOOT], [14, FOOT])),
      knife(line([14, LEVEL], [226, LEVEL])),
      span([208, 66], [208, LEVEL]),
      tell([40, 40], [78, 72]),
      ...(level === "full" ? [says(30, 98, "flat")] : []),
    ];
  },
};

export const carvingBelowSurface: Drawing = {
  title: "Carving sunk below the surface",
  tells: "Cut through: no part of the ornament stands above the flat around it.",
  draw: (level) => {
    const upper = run(
      [14, LEVEL],
      ["l", 58, LEVEL],
      ["c", 60, 134, 70, 142, 80, 140],
      ["c", 84, 122, 98, 116, 104, 128],
      ["c", 108, 112, 132, 112, 136, 128],
      ["c", 142, 116, 156, 122, 160, 140],
      ["c", 170, 142, 180, 134, 182, LEVEL],
      ["l", 226, LEVEL],
    );
    return [
      ...cut(closed(upper, [226, FOOT], [14, FOOT])),
      knife(line([14, LEVEL], [226, LEVEL])),
      span([120, LEVEL], [120, 118]),
      tell([64, 40], [88, 118]),
      ...(level === "full" ? [says(208, 98, "flat")] : []),
    ];
  },
};

/** A knee from the front, plain line dashed. */
export const carvingWithoutReserve: Drawing = {
  title: "Carved knee without reserve",
  tells:
    "The carved leg (right) keeps the outline of a plain one; carving planned from the start swells beyond it (left).",
  draw: (level) => {
    const knee = (x: number, swell: number) =>
      `${open(
        run(
          [x - 30, 20],
          ["c", x - 40 - swell, 48, x - 38 - swell, 88, x - 26, 120],
          ["c", x - 18, 150, x - 16, 180, x - 18, 216],
          ["l", x + 18, 216],
          ["c", x + 16, 180, x + 18, 150, x + 26, 120],
          ["c", x + 38 + swell, 88, x + 40 + swell, 48, x + 30, 20],
        ),
      )}z`;
    const leaf = (x: number, out: number): string =>
      `M${x} 36C${x - 12 - out} 52 ${x - 14 - out} 84 ${x} 116C${x + 14 + out} 84 ${x + 12 + out} 52 ${x} 36zM${x} 44V112M${x - 4} 62c-8 -2 -14 2 -18 8M${x + 4} 62c8 -2 14 2 18 8M${x - 4} 84c-8 -2 -12 2 -14 8M${x + 4} 84c8 -2 12 2 14 8`;
    return [
      body(knee(66, 14)),
      edge(leaf(66, 10)),
      body(knee(174, 0)),
      edge(leaf(174, 4)),
      knife(
        open(run([36, 20], ["c", 26, 48, 28, 88, 40, 120])) +
          open(run([96, 20], ["c", 106, 48, 104, 88, 92, 120])),
      ),
      tell([18, 226], [30, 108]),
      tell([226, 226], [204, 104]),
      ...(level === "full" ? [says(66, 234, "planned")] : []),
    ];
  },
};

/** Short facets in the ground, each with its own width. */
export const gougeCuts: Drawing = {
  title: "Gouge cuts that start and stop",
  tells: "Short facets of different width in the ground, ending at stop cuts along the ornament.",
  draw: (level) => {
    const leaf = "M120 46C164 62 176 118 120 190C64 118 76 62 120 46z";
    const ground = `${box(16, 30, 208, 176)}${leaf}`;
    const columns = level === "small" ? 6 : 12;
    const facet = (i: number): string => {
      const column = i % columns;
      const x = 18 + (200 / columns) * column + 5 * drift(i);
      const y = 34 + (level === "small" ? 30 : 17) * Math.floor(i / columns) + 4 * drift(i, 2);
      const w = (level === "small" ? 9 : 5) + 2 * drift(i, 4);
      return `M${n(x)} ${n(y)}C${n(x + w)} ${n(y - 4)} ${n(x + w * 2)} ${n(y - 2)} ${n(x + w * 2.4)} ${n(y + 3)}C${n(x + w * 1.6)} ${n(y + 7)} ${n(x + w * 0.5)} ${n(y + 6)} ${n(x)} ${n(y)}z`;
    };
    return [
      body(box(16, 30, 208, 176)),
      detail(row(columns * (level === "small" ? 6 : 11), facet), ground),
      body(leaf),
      edge(
        "M120 52V182M120 88c-10 -8 -20 -8 -26 -4M120 88c10 -8 20 -8 26 -4M120 124c-10 -8 -18 -8 -24 -4M120 124c10 -8 18 -8 24 -4",
      ),
      knife("M76 92C78 118 90 152 120 190"),
      tell([30, 226], [90, 148]),
      tell([206, 16], [190, 60]),
    ];
  },
};

/** Distance between the ridges of the drawn cutter. */
export const RIDGES = 9;

export const cutterRidges: Drawing = {
  title: "Even cutter ridges in carved ground",
  tells: "Fine parallel ridges of one tip radius, at even steps, run on through the whole ground.",
  draw: (level) => {
    const step = RIDGES * (level === "small" ? 2 : 1);
    const leaf = "M120 46C164 62 176 118 120 190C64 118 76 62 120 46z";
    const ground = `${box(16, 30, 208, 176)}${leaf}`;
    return [
      body(box(16, 30, 208, 176)),
      detail(
        row(Math.floor(176 / step), (i) => `M16 ${30 + step * (i + 0.5)}H224`),
        ground,
      ),
      body(leaf),
      edge("M120 52V182M120 88c-10 -8 -20 -8 -26 -4M120 88c10 -8 20 -8 26 -4"),
      span([36, 30 + step * 2.5], [36, 30 + step * 3.5]),
      span([36, 30 + step * 3.5], [36, 30 + step * 4.5]),
      tell([206, 16], [196, 30 + step * 2.5]),
    ];
  },
};

export const throughOldHoles: Drawing = {
  title: "Carving through an old hole",
  tells: "The gouge has cut into a hole that was there before: its edge is broken by the cut.",
  draw: () => {
    const upper = run(
      [14, 90],
      ["l", 54, 90],
      ["c", 60, 116, 84, 128, 108, 126],
      ["c", 122, 124, 128, 96, 140, 92],
      ["c", 158, 88, 170, 110, 186, 90],
      ["l", 226, 90],
    );
    return [
      ...cut(closed(upper, [226, FOOT], [14, FOOT])),
      body("M84 124C92 126 96 127 98 126.5V176H84z", "edge"),
      body("M196 90H208V150H196z", "edge"),
      knife("M78 121C84 125 92 127 104 126.5"),
      tell([56, 40], [90, 122]),
      tell([226, 40], [204, 88]),
      says(202, 168, "older hole", "middle"),
    ];
  },
};

/** Fibres in a section: cut off by a gouge, bent down under a stamp. */
export const pressedPattern: Drawing = {
  title: "Pressed pattern and cut pattern",
  tells: "Fibres bend and run on under a pressed hollow (left); a carver's cut ends them (right).",
  draw: (level) => {
    const pressed = run(
      [14, 92],
      ["l", 34, 92],
      ["c", 44, 92, 48, 122, 66, 122],
      ["c", 84, 122, 88, 92, 98, 92],
      ["l", 112, 92],
    );
    const carved = run(
      [128, 92],
      ["l", 148, 92],
      ["c", 152, 116, 164, 124, 176, 122],
      ["c", 190, 120, 200, 110, 204, 92],
      ["l", 226, 92],
    );
    const fibres = level === "small" ? [1, 3, 5] : [1, 2, 3, 4, 5, 6, 7];
    const right = closed(carved, [226, FOOT], [128, FOOT]);
    return [
      body(closed(pressed, [112, FOOT], [14, FOOT])),
      detail(
        fibres
          .map((i) => {
            const y = 92 + 11 * i;
            const dip = 30 * (1 - i / 9);
            return `M14 ${y}H34C46 ${y} 48 ${y + dip} 66 ${y + dip}S86 ${y} 98 ${y}H112`;
          })
          .join(""),
      ),
      body(right),
      detail(fibres.map((i) => `M128 ${92 + 11 * i}H226`).join(""), right),
      tell([40, 40], [66, 120]),
      tell([206, 40], [190, 116]),
      says(63, 218, "pressed"),
      says(177, 218, "cut"),
    ];
  },
};

/** A flat leaf cut to depth by a template: the same tool all over. */
export const punchedGround: Drawing = {
  title: "Punched ground",
  tells: "A small star of one punch is struck again and again over the ground behind the carving.",
  draw: (level) => {
    const leaf = "M120 40C176 66 172 130 120 196C68 130 64 66 120 40z";
    const star = (x: number, y: number) =>
      row(3, (i) => {
        const a = (i * Math.PI) / 3;
        const r = level === "small" ? 8 : 4.5;
        return line([x - r * Math.cos(a), y - r * Math.sin(a)], [x + r * Math.cos(a), y + r * Math.sin(a)]);
      });
    const pitch = level === "small" ? 30 : 15;
    const stars = row(Math.floor(200 / pitch), (i) =>
      row(Math.floor(170 / pitch), (j) => star(26 + pitch * i + (j % 2 ? 5 : 0), 42 + pitch * j)),
    );
    return [
      body(box(16, 30, 208, 176)),
      edge(stars, `${box(16, 30, 208, 176)}${leaf}`),
      body(leaf),
      edge(
        "M120 46V188M120 84c-12 -8 -24 -8 -32 -2M120 84c12 -8 24 -8 32 -2M120 124c-10 -8 -20 -8 -28 -2M120 124c10 -8 20 -8 28 -2",
      ),
      tell([206, 14], [192, 52]),
    ];
  },
};
