import { box, dot, grain, line, type Point, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, span, tell } from "../mark.ts";
import { dashes } from "../oblique.ts";

/** A rail meeting a stile or leg, hidden parts dashed. */
const dashedBox = (x: number, y: number, w: number, h: number): string =>
  [
    [x, y, x + w, y],
    [x + w, y, x + w, y + h],
    [x + w, y + h, x, y + h],
    [x, y + h, x, y],
  ]
    .map(([a, b, c, d]) => dashes([a as number, b as number], [c as number, d as number]))
    .join("");

/** An eight-sided peg end, not quite regular. */
const pegEnd = (cx: number, cy: number, r: number): string =>
  polygon(
    ...[1, 0.9, 1.04, 0.92, 1, 0.94, 1.02].map((share, i): Point => {
      const a = (i / 7) * 2 * Math.PI + 0.2;
      return [cx + r * share * Math.cos(a), cy + r * share * Math.sin(a)];
    }),
  );

export const peggedTenon: Drawing = {
  title: "Pegged mortise and tenon",
  tells: "A rail enters a stile with a tenon (dashed), held by wooden pegs driven through.",
  draw: (level) => [
    body(box(20, 10, 66, 220)),
    body(box(86, 70, 140, 96)),
    ...(level === "full" ? [detail(grain(26, 16, 54, 208, 4, "y") + grain(94, 76, 126, 84, 6))] : []),
    edge(dashedBox(34, 84, 52, 68)),
    body(pegEnd(60, 100, 8)),
    body(pegEnd(60, 136, 8)),
    tell([130, 28], [68, 95]),
    tell([130, 212], [68, 141]),
  ],
};

export const dowelledJoint: Drawing = {
  title: "Dowelled joint",
  tells: "Two round pegs of one diameter in clean bored holes stand in place of a tenon.",
  draw: (level) => {
    const peg = (y: number) => [
      body(`M88 ${y - 11}H150V${y + 11}H88z`),
      edge(row(level === "small" ? 2 : 4, (i) => line([92 + 14 * i, y - 11], [100 + 14 * i, y + 11]))),
      body(`M150 ${y - 11}a5 11 0 0 1 0 22a5 11 0 0 1 0 -22z`, "edge"),
    ];
    return [
      body(box(16, 10, 56, 220)),
      ...[92, 148].map((y) => body(dot(62, y, 11))),
      body(polygon([72, 10], [88, 2], [88, 222], [72, 230]), "edge"),
      body(box(130, 70, 98, 100)),
      ...(level === "full" ? [detail(grain(160, 76, 62, 88, 5))] : []),
      ...peg(92),
      ...peg(148),
      span([118, 81], [118, 103]),
      tell([190, 30], [128, 88]),
      tell([140, 222], [70, 156]),
    ];
  },
};

/** A block glued behind a foot, its face rippled by the planer. */
export const glueBlockScallops: Drawing = {
  title: "Glue block with planer scallops",
  tells: "Even ripples cross the face of the block, where a hand-made block shows saw or knife.",
  draw: (level) => {
    const pitch = level === "small" ? 22 : 10;
    const count = Math.floor(132 / pitch);
    const wave = row(count, () => `q${pitch / 2} 5 ${pitch} 0`);
    return [
      body(polygon([14, 24], [226, 24], [226, 52], [14, 52])),
      body(`M46 76${wave}V168H46z`),
      body(`M46 76${wave}L${46 + count * pitch + 24} 52H70z`),
      body(
        polygon(
          [46 + count * pitch, 76],
          [46 + count * pitch + 24, 52],
          [46 + count * pitch + 24, 144],
          [46 + count * pitch, 168],
        ),
      ),
      detail(
        row(
          count - 1,
          (i) =>
            line([46 + pitch * (i + 1), 76], [70 + pitch * (i + 1), 52]) +
            line([46 + pitch * (i + 1), 76], [46 + pitch * (i + 1), 168]),
        ),
      ),
      span([46 + 3 * pitch, 184], [46 + 4 * pitch, 184]),
      span([46 + 4 * pitch, 184], [46 + 5 * pitch, 184]),
      tell([30, 222], [46 + pitch, 150]),
    ];
  },
};

export const triangularCornerBlocks: Drawing = {
  title: "Triangular corner blocks",
  tells: "Three-cornered blocks are glued into the inner corners of the seat frame, seen from below.",
  draw: () => [
    body(`${box(14, 20, 212, 196)}${box(42, 48, 156, 140)}`),
    ...(
      [
        [42, 48, 1, 1],
        [198, 48, -1, 1],
        [42, 188, 1, -1],
        [198, 188, -1, -1],
      ] as const
    ).flatMap(([x, y, sx, sy]) => [
      body(polygon([x, y], [x + sx * 46, y], [x, y + sy * 46])),
      detail(
        line([x + sx * 8, y + sy * 30], [x + sx * 30, y + sy * 8]) +
          line([x + sx * 6, y + sy * 18], [x + sx * 18, y + sy * 6]),
      ),
    ]),
    edge(
      [
        [14, 20],
        [196, 20],
        [14, 186],
        [196, 186],
      ]
        .map(([x, y]) => box(x as number, y as number, 30, 30))
        .join(""),
    ),
    tell([120, 118], [68, 76]),
  ],
};

export const throughTenonedRail: Drawing = {
  title: "Side rail tenoned through the rear leg",
  tells: "The end of the tenon shows as a patch of end grain on the back of the leg, often wedged.",
  draw: (level) => [
    body(polygon([70, 8], [140, 8], [148, 120], [140, 232], [82, 232], [74, 120])),
    body(polygon([140, 8], [166, 0], [174, 112], [166, 224], [140, 232], [148, 120]), "edge"),
    body(polygon([170, 92], [228, 84], [228, 140], [172, 148])),
    ...cut(box(94, 92, 34, 58)),
    body(polygon([94, 108], [128, 106], [128, 112], [94, 114]), "edge"),
    ...(level === "full"
      ? [
          detail(
            line([86, 16], [92, 84]) +
              line([122, 16], [126, 84]) +
              line([96, 160], [98, 224]) +
              line([124, 160], [122, 224]),
          ),
        ]
      : []),
    tell([24, 70], [92, 98]),
  ],
};

export const bowTieKeys: Drawing = {
  title: "Bow-tie keys",
  tells: "Keys in the form of a bow tie are let in across the joint between two boards.",
  draw: (level) => {
    const key = (y: number) =>
      polygon([92, y - 16], [120, y - 6], [148, y - 16], [148, y + 16], [120, y + 6], [92, y + 16]);
    return [
      body(box(16, 16, 104, 208)),
      body(box(120, 16, 104, 208)),
      ...(level === "full" ? [detail(grain(22, 20, 66, 200, 4, "y") + grain(152, 20, 66, 200, 4, "y"))] : []),
      ...[62, 120, 178].flatMap((y) => [
        body(key(y)),
        detail(line([98, y - 4], [142, y - 4]) + line([98, y + 4], [142, y + 4])),
      ]),
      knife(line([120, 6], [120, 16]) + line([120, 224], [120, 234])),
      tell([206, 92], [150, 114]),
    ];
  },
};
