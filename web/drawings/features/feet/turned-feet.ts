import { box, ellipse, line, polygon } from "../../pen.ts";
import { type Run, run, turnedOn } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, type Mark, span, tell } from "../mark.ts";

const CX = 120;

/** The bottom of a case over a foot, and the round tenon between the two. */
const caseOver = (y: number, tenon: number): readonly Mark[] => [
  body(box(24, y - 46, 192, 32)),
  body(polygon([24, y - 14], [216, y - 14], [210, y], [30, y]), "edge"),
  edge(`M${CX - tenon} ${y}V${y - 30}M${CX + tenon} ${y}V${y - 30}`),
];

const rings = (...at: readonly (readonly [y: number, r: number])[]): Mark =>
  detail(
    at
      .map(
        ([y, r]) =>
          `M${CX - r} ${y}C${CX - r * 0.5} ${y + r * 0.12} ${CX + r * 0.5} ${y + r * 0.12} ${CX + r} ${y}`,
      )
      .join(""),
  );

const foot = (way: Run): Mark => body(turnedOn(CX, way));

export const bunFoot: Drawing = {
  title: "Turned bun foot",
  tells: "A flattened turned ball, broader than high, on a round tenon let into the case.",
  draw: () => [
    ...caseOver(92, 13),
    foot(
      run(
        [30, 92],
        ["l", 30, 100],
        ["c", 52, 102, 66, 118, 66, 140],
        ["c", 66, 166, 50, 182, 34, 186],
        ["l", 34, 194],
      ),
    ),
    rings([100, 30], [186, 34]),
    span([CX - 66, 212], [CX + 66, 212]),
    span([210, 100], [210, 194]),
    tell([26, 26], [CX - 14, 70]),
  ],
};

export const ballFoot: Drawing = {
  title: "Turned ball foot",
  tells: "A turned ball about as high as it is broad, on a round tenon.",
  draw: () => [
    ...caseOver(78, 13),
    foot(
      run(
        [18, 78],
        ["l", 18, 84],
        ["h", 28, 90],
        ["v", 18, 98],
        ["c", 48, 98, 58, 124, 58, 148],
        ["c", 58, 180, 40, 198, 28, 202],
        ["l", 28, 210],
      ),
    ),
    rings([84, 18], [98, 18], [202, 28]),
    span([CX - 58, 226], [CX + 58, 226]),
    span([206, 98], [206, 208]),
  ],
};

export const turnedReededLeg: Drawing = {
  title: "Turned and reeded leg",
  tells: "A tapering turned leg with upright reeds, cut in after turning.",
  draw: (level) => {
    const reeds = level === "small" ? [-0.4, 0.4] : [-0.78, -0.5, -0.17, 0.17, 0.5, 0.78];
    return [
      body(box(CX - 34, 12, 68, 30)),
      foot(
        run(
          [26, 42],
          ["h", 32, 48],
          ["v", 26, 54],
          ["l", 22, 58],
          ["h", 34, 68],
          ["l", 20, 176],
          ["l", 26, 180],
          ["h", 30, 186],
          ["v", 22, 192],
          ["l", 16, 194],
          ["c", 20, 206, 14, 222, 9, 230],
        ),
      ),
      edge(reeds.map((t) => `M${CX + 33 * t} 70L${CX + 20 * t} 176`).join("")),
      detail(
        line([CX - 26, 54], [CX + 26, 54]) +
          line([CX - 34, 68], [CX + 34, 68]) +
          line([CX - 20, 176], [CX + 20, 176]) +
          line([CX - 22, 192], [CX + 22, 192]),
      ),
      // The leg cut across: reeds stand round it.
      ...cut(reedSection(200, 116, 28, level === "small" ? 8 : 14)),
      tell([60, 120], [CX - 25, 116]),
    ];
  },
};

/** Round reeds in a ring. */
function reedSection(cx: number, cy: number, r: number, count: number): string {
  const at = (i: number): readonly [number, number] => {
    const a = (i / count) * 2 * Math.PI;
    return [cx + r * Math.cos(a), cy + r * Math.sin(a)];
  };
  const [x0, y0] = at(0);
  const bow = ((2 * Math.PI * r) / count) * 0.56;
  return `M${x0} ${y0}${Array.from({ length: count }, (_, i) => {
    const [x, y] = at(i + 1);
    return `A${bow} ${bow} 0 0 1 ${x} ${y}`;
  }).join("")}z`;
}

export const spigotHoles: Drawing = {
  title: "Turned foot under a case, from beneath",
  tells:
    "One round spigot hole at each corner of the case bottom: turned feet stood here before the brackets.",
  draw: (level) => {
    const corner = (x: number, y: number, sx: -1 | 1, sy: -1 | 1): readonly Mark[] => [
      body(`M${x} ${y}h${sx * 62}v${sy * 12}h${-sx * 50}v${sy * 38}h${-sx * 12}z`, "edge"),
      body(ellipse(x + sx * 32, y + sy * 30, 10, 10)),
      ...(level === "full"
        ? [{ kind: "tone", tone: "dark", d: ellipse(x + sx * 32, y + sy * 30, 10, 10) } as const]
        : []),
    ];
    return [
      body(box(20, 34, 200, 166)),
      detail([70, 100, 132, 164].map((y, i) => line([40 + 4 * i, y], [196 - 6 * i, y + 1])).join("")),
      ...corner(20, 34, 1, 1),
      ...corner(220, 34, -1, 1),
      ...corner(20, 200, 1, -1),
      ...corner(220, 200, -1, -1),
      tell([120, 16], [62, 58]),
      tell([120, 224], [62, 178]),
    ];
  },
};
