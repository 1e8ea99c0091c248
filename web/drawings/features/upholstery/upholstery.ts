import { box, dot, line, n } from "../../pen.ts";
import { row } from "../curves.ts";
import {
  body,
  cut,
  type Detail,
  type Drawing,
  detail,
  edge,
  type Mark,
  outline,
  span,
  tell,
} from "../mark.ts";

/** A seat frame from below: rails round an opening. */
const frame = (): readonly Mark[] => [
  body(`${box(14, 20, 212, 190)}${box(44, 50, 152, 130)}`),
  edge(
    line([14, 20], [44, 50]) +
      line([226, 20], [196, 50]) +
      line([14, 210], [44, 180]) +
      line([226, 210], [196, 180]),
  ),
];

/** Bands woven over and under each other. */
function webbing(width: number, gap: number, level: Detail, hasHerringbone: boolean): readonly Mark[] {
  const step = width + gap;
  const across = Math.floor(150 / step);
  const down = Math.floor(128 / step);
  const column = (i: number) => 44 + gap / 2 + step * i + (152 - step * across) / 2;
  const band = (j: number) => 50 + gap / 2 + step * j + (130 - step * down) / 2;
  const bones = (x: number, y: number, w: number, h: number): string =>
    row(Math.floor(h / 8), (i) => line([x, y + 4 + 8 * i], [x + w / 2, y + 8 * i], [x + w, y + 4 + 8 * i]));
  return [
    ...Array.from({ length: down }, (_, j) => body(box(30, band(j), 180, width), "edge")),
    ...Array.from({ length: across }, (_, i) => [
      body(box(column(i), 36, width, 158), "edge"),
      ...(hasHerringbone && level === "full" ? [detail(bones(column(i) + 2, 40, width - 4, 148))] : []),
    ]).flat(),
    ...Array.from({ length: down * across }, (_, k): readonly Mark[] => {
      const [i, j] = [k % across, Math.floor(k / across)];
      if ((i + j) % 2 === 1) return [];
      const [x, y] = [column(i) - gap / 2, band(j)];
      return [body(box(x, y, step, width), "edge")];
    }).flat(),
  ];
}

export const narrowWebbing: Drawing = {
  title: "Narrow herringbone webbing set apart",
  tells: "Narrow bands, woven over and under, with gaps between them as wide as the bands.",
  draw: (level) => [
    ...frame(),
    ...webbing(level === "small" ? 24 : 19, level === "small" ? 24 : 19, level, true),
    span([44, 226], [63, 226]),
    tell([120, 8], [100, 60]),
  ],
};

export const wideWebbing: Drawing = {
  title: "Wide webbing set close",
  tells: "Broad bands lie edge to edge, woven over and under without gaps.",
  draw: (level) => [
    ...frame(),
    ...webbing(29, 0.01, level, false),
    span([48, 226], [77, 226]),
    tell([120, 8], [106, 60]),
  ],
};

export const coilSprungSeat: Drawing = {
  title: "Seat on coil springs",
  tells: "Cut through: coiled wire springs stand on webbing nailed under the rails.",
  draw: (level) => {
    const turns = level === "small" ? 3 : 5;
    const step = 84 / turns;
    const radius = (i: number) => 21 * (0.66 + (0.34 * Math.abs(i - turns / 2)) / (turns / 2));
    const spring = (x: number, isFront: boolean): string =>
      row(turns, (i) => {
        const y = 176 - step * i;
        const [r, next] = [radius(i + 0.25), radius(i + 0.75)];
        return isFront
          ? `M${n(x - r)} ${n(y)}C${n(x - r)} ${n(y + 7)} ${n(x + next)} ${n(y + 7)} ${n(x + next)} ${n(y - step / 2)}`
          : `M${n(x + next)} ${n(y - step / 2)}C${n(x + next)} ${n(y - step)} ${n(x - r)} ${n(y - step - 5)} ${n(x - r)} ${n(y - step)}`;
      });
    return [
      ...cut(box(14, 120, 26, 60)),
      ...cut(box(200, 120, 26, 60)),
      body("M14 180H226V186H14z"),
      ...[72, 120, 168].flatMap((x) => [detail(spring(x, false)), outline(spring(x, true))]),
      body("M22 118C40 66 80 46 120 46S200 66 218 118C196 96 160 88 120 88S44 96 22 118z"),
      tell([60, 220], [70, 178]),
      tell([196, 220], [178, 150]),
    ];
  },
};

export const zigzagSprings: Drawing = {
  title: "Zigzag springs",
  tells: "Waves of one wire run from rail to rail, clipped at both ends.",
  draw: (level) => {
    const waves = level === "small" ? 5 : 9;
    const step = 144 / waves;
    const wire = (x: number): string =>
      `M${x} 44v4${row(waves, (i) => `c${i % 2 ? -30 : 30} 0 ${i % 2 ? -30 : 30} ${n(step)} 0 ${n(step)}`)}V196`;
    return [
      body(box(14, 14, 212, 28)),
      body(box(14, 198, 212, 28)),
      ...[50, 100, 150].map((x) => edge(wire(x + (x - 100) * 0.1))),
      ...[50, 100, 150].flatMap((x) => [
        body(box(x - 8 + (x - 100) * 0.1, 34, 16, 14), "edge"),
        body(box(x - 8 + (x - 100) * 0.1, 192, 16, 14), "edge"),
      ]),
      tell([232, 90], [188, 104]),
    ];
  },
};

export const deepButtoning: Drawing = {
  title: "Deep buttoning",
  tells: "Buttons draw the stuffing in to deep folds that run in diamonds from one to the next.",
  draw: (level) => {
    const pitch = level === "small" ? 64 : 44;
    const at: (readonly [number, number])[] = [];
    for (let j = 0; j * pitch * 0.6 < 180; j++)
      for (let i = 0; i * pitch < 220; i++) {
        const x = 30 + pitch * i + (j % 2 ? pitch / 2 : 0);
        if (x < 216) at.push([x, 40 + pitch * 0.6 * j]);
      }
    const folds = at
      .map(([x, y]) =>
        [-1, 1]
          .map(
            (s) =>
              `M${x} ${y}C${x + s * pitch * 0.12} ${y + pitch * 0.28} ${x + s * pitch * 0.38} ${y + pitch * 0.32} ${x + (s * pitch) / 2} ${y + pitch * 0.6}`,
          )
          .join(""),
      )
      .join("");
    const whole =
      "M14 34C14 22 24 16 36 16H204C216 16 226 22 226 34V206C226 218 216 224 204 224H36C24 224 14 218 14 206z";
    return [
      body(whole),
      edge(folds, whole),
      ...at.filter(([, y]) => y < 214).map(([x, y]) => body(dot(x, y, level === "small" ? 7 : 5))),
      tell([232, 132], [(at[1]?.[0] ?? 0) + 12, (at[1]?.[1] ?? 0) + 16]),
    ];
  },
};
