import { box, dot, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, says, span, tell } from "../mark.ts";

/** A keyhole: a round above a slot. */
export const keyhole = (x: number, y: number, size = 1): string => {
  const r = 7 * size;
  return `M${x - 3 * size} ${y + 5 * size}A${r} ${r} 0 1 1 ${x + 3 * size} ${y + 5 * size}L${x + 5 * size} ${y + 24 * size}H${x - 5 * size}z`;
};

const screw = (x: number, y: number): readonly Mark[] => [
  body(dot(x, y, 6), "edge"),
  edge(line([x - 4, y + 3], [x + 4, y - 3])),
];

/** A till lock from behind, its cap off: plate, selvedge above, bolt. */
const lockPlate = (): readonly Mark[] => [
  body(box(20, 44, 200, 156)),
  body(box(20, 34, 200, 10)),
  body(box(92, 22, 58, 34)),
  ...[
    [32, 56],
    [208, 56],
    [32, 188],
    [208, 188],
  ].flatMap(([x, y]) => screw(x as number, y as number)),
];

export const drawerLock: Drawing = {
  title: "Drawer lock",
  tells: "Compare selvedge, screw holes and keyhole of the lock with the recess that holds it.",
  draw: () => [
    ...lockPlate(),
    body(box(54, 62, 132, 118)),
    body(dot(120, 120, 8), "edge"),
    body(keyhole(120, 112, 1.4)),
    body(dot(120, 112, 4), "edge"),
    edge(dot(66, 76, 3) + dot(174, 76, 3) + dot(66, 166, 3) + dot(174, 166, 3)),
    tell([196, 14], [186, 36]),
    tell([226, 220], [210, 194]),
  ],
};

/** One lever: a bar on the pivot with a belly for the key, its free end `drop` below that of the highest. */
const lever = (drop: number): string =>
  `M46 84L168 ${62 + drop}V${80 + drop}C150 ${84 + drop} 142 ${104 + drop} 118 ${102 + drop}C106 ${101 + drop} 96 ${94 + drop * 0.8} 50 ${100 + drop * 0.1}z`;

export const leverTumblers: Drawing = {
  title: "Lock with levers",
  tells: "Two or more levers on one pivot, their bellies at different heights: each must be lifted exactly.",
  draw: () => [
    ...lockPlate(),
    ...[40, 20, 0].map((drop) => body(lever(drop), "edge")),
    body(dot(54, 93, 8)),
    body(keyhole(120, 164, 1.2)),
    tell([196, 14], [150, 62]),
    tell([226, 190], [142, 138]),
  ],
};

export const tubularKey: Drawing = {
  title: "Round keyhole with a pin, and a tubular key",
  tells: "A small round hole with a pin in it; the end of the hollow key has slots of different depth.",
  draw: (level) => {
    const slots = [0, 60, 120, 180, 240, 300].slice(0, level === "small" ? 4 : 6);
    return [
      body(dot(70, 84, 48)),
      body(dot(70, 84, 20)),
      edge(dot(70, 84, 6)),
      ...slots.map((a) => {
        const angle = (a * Math.PI) / 180;
        return detail(
          line(
            [70 + 14 * Math.cos(angle), 84 + 14 * Math.sin(angle)],
            [70 + 20 * Math.cos(angle), 84 + 20 * Math.sin(angle)],
          ),
        );
      }),
      body(box(64, 186, 116, 28)),
      body(dot(44, 200, 26)),
      body(dot(44, 200, 15), "edge"),
      body("M180 186h20v5h-12v4h14v6h-18v5h12v8h-16z", "edge"),
      edge(line([180, 186], [180, 214])),
      tell([150, 30], [88, 76]),
      tell([214, 150], [196, 184]),
    ];
  },
};

/** Heights at which the key lifts the pins: each pair must part at the edge of the plug. */
const PINS = [10, 4, 14, 7, 11];

export const springPinCylinder: Drawing = {
  title: "Cylinder with spring pins",
  tells: "Pins in pairs under springs, lifted by a notched key until their joints stand in one line.",
  draw: () => {
    const plug = 132;
    const pins = PINS.flatMap((cutting, i) => {
      const x = 62 + 30 * i;
      return [
        body(box(x - 6, plug - 46 - 4, 12, 50), "edge"),
        body(box(x - 6, plug, 12, 40 - cutting), "edge"),
        detail(row(5, (j) => line([x - 6, 44 + 8 * j], [x + 6, 48 + 8 * j], [x - 6, 52 + 8 * j]))),
      ];
    });
    const notches = PINS.map((cutting, i) => {
      const x = 62 + 30 * i;
      return `L${x + 9} ${plug + 26}L${x + 4} ${plug + 40 - cutting}H${x - 4}L${x - 9} ${plug + 26}`;
    })
      .toReversed()
      .join("");
    return [
      ...cut(box(30, 30, 182, 178)),
      body(box(30, plug, 182, 56)),
      ...PINS.map((_, i) => body(box(62 + 30 * i - 6, 40, 12, plug - 40), "edge")),
      ...pins,
      body(
        `M212 ${plug + 56}V${plug + 26}${notches}L46 ${plug + 30}L34 ${plug + 50}L40 ${plug + 56}z`,
        "edge",
      ),
      knife(line([24, plug], [218, plug])),
      tell([226, 100], [214, plug - 1]),
    ];
  },
};

export const flatKeyCylinder: Drawing = {
  title: "Small cylinder with a flat notched key",
  tells: "A round cylinder with a narrow winding keyway, and a flat key notched along one edge.",
  draw: () => [
    body(dot(76, 82, 54)),
    body(dot(76, 82, 30)),
    edge("M73 60h6v14l-4 6 6 8v18h-7v-15l-5 -8 4 -8z"),
    body(
      "M92 180H186L200 194L190 204H180L172 196L164 206L154 198L146 206L136 196L126 206L116 198L108 206H92z",
    ),
    body(dot(64, 192, 32)),
    body(dot(54, 192, 8), "edge"),
    detail(line([96, 187], [184, 187])),
    tell([162, 34], [84, 74]),
    tell([206, 226], [160, 206]),
  ],
};

export const stampedVr: Drawing = {
  title: "Lock stamped with a crowned cipher",
  tells: "A crown over two letters is struck in the cap or the selvedge; the letters name the reign.",
  draw: () => [
    ...lockPlate(),
    body(box(54, 62, 132, 118)),
    edge("M96 104V86L104 94L112 82L120 92L128 82L136 94L144 86V104z"),
    edge(line([96, 110], [144, 110])),
    edge("M94 124l9 30 9 -30M130 154v-30h10a8 8 0 0 1 0 16h-10m8 0l10 14"),
    tell([206, 14], [146, 90]),
  ],
};

/** Sight of the front and of its back: a keyhole with nothing behind it. */
export const keyholeWithoutLock: Drawing = {
  title: "Keyhole without a lock",
  tells: "The keyhole goes in, but there is no recess, no lock and no bolt hole behind it.",
  draw: (level) => [
    body(box(16, 24, 96, 180)),
    body(box(128, 24, 96, 180)),
    body(keyhole(64, 66, 1.3)),
    body(keyhole(176, 66, 1.3)),
    ...(level === "full"
      ? [
          detail(
            row(
              5,
              (i) =>
                line([24, 118 + 16 * i], [100 - 6 * i, 119 + 16 * i]) +
                line([138 + 5 * i, 120 + 16 * i], [216, 118 + 16 * i]),
            ),
          ),
        ]
      : []),
    says(64, 222, "outside"),
    says(176, 222, "inside"),
    tell([226, 12], [188, 58]),
    span([136, 108], [216, 108]),
  ],
};

export const escutcheons: Drawing = {
  title: "Escutcheons",
  tells:
    "A shaped plate nailed on, a thread let in flush round the keyhole, and a lozenge inlaid in the front.",
  draw: () => [
    body(
      "M62 24C70 34 84 36 92 46C104 50 104 66 98 76C104 92 94 106 84 116C78 128 70 132 62 146C54 132 46 128 40 116C30 106 20 92 26 76C20 66 20 50 32 46C40 36 54 34 62 24z",
    ),
    body(keyhole(62, 74, 1.3)),
    edge(dot(62, 38, 3) + dot(62, 128, 3)),
    body(keyhole(172, 74, 2)),
    body(keyhole(172, 74, 1.3)),
    body(polygon([118, 160], [146, 184], [118, 226], [90, 184])),
    body(keyhole(118, 188, 0.9)),
    tell([128, 18], [92, 45]),
    tell([226, 30], [186, 68]),
    tell([186, 224], [134, 202]),
  ],
};
