import { box, dot, ellipse, line, polygon } from "../../pen.ts";
import { open, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, span, tell, toned } from "../mark.ts";

/** A castor from its side and from its front: jaws over a wheel. */
const SIDE = { x: 82, y: 176 } as const;
const FRONT = { x: 186, y: 176 } as const;
const R = 38;

/** The cup of a leg, the neck and the jaws. `cup` is drawn over the end of the leg. */
const jaws = (): readonly Mark[] => [
  body(
    `${open(
      run(
        [SIDE.x - 14, 96],
        ["l", SIDE.x + 14, 96],
        ["c", SIDE.x + 16, 118, SIDE.x + 6, 136, SIDE.x + 8, 176],
        ["c", SIDE.x + 8, 190, SIDE.x - 8, 190, SIDE.x - 8, 176],
        ["c", SIDE.x - 10, 146, SIDE.x - 18, 126, SIDE.x - 14, 96],
      ),
    )}z`,
  ),
  body(dot(SIDE.x, SIDE.y, 4), "edge"),
];

const fork = (): readonly Mark[] => [
  body(
    `${open(
      run(
        [FRONT.x - 12, 96],
        ["l", FRONT.x + 12, 96],
        ["c", FRONT.x + 22, 116, FRONT.x + 28, 130, FRONT.x + 26, 186],
        ["l", FRONT.x + 19, 186],
        ["c", FRONT.x + 20, 140, FRONT.x + 14, 130, FRONT.x, 126],
        ["c", FRONT.x - 14, 130, FRONT.x - 20, 140, FRONT.x - 19, 186],
        ["l", FRONT.x - 26, 186],
        ["c", FRONT.x - 28, 130, FRONT.x - 22, 116, FRONT.x - 12, 96],
      ),
    )}z`,
  ),
  body(box(FRONT.x - 30, SIDE.y - 4, 60, 8), "edge"),
];

/** A plain turned collar between leg and jaws. */
const collar = (x: number): readonly Mark[] => [
  body(polygon([x - 22, 76], [x + 22, 76], [x + 22, 88], [x - 22, 88])),
  body(polygon([x - 15, 88], [x + 15, 88], [x + 15, 98], [x - 15, 98]), "edge"),
  body(polygon([x - 26, 16], [x + 26, 16], [x + 22, 76], [x - 22, 76])),
];

/** Wheel from the side and from the front; then what is over it. */
const castor = (wheelSide: readonly Mark[], wheelFront: readonly Mark[]): readonly Mark[] => [
  ...wheelSide,
  ...collar(SIDE.x),
  ...jaws(),
  ...fork(),
  ...wheelFront,
  ...collar(FRONT.x),
];

const rim = (half: number): string =>
  `M${FRONT.x - half} ${FRONT.y - R + 6}C${FRONT.x - half} ${FRONT.y - R - 2} ${FRONT.x + half} ${FRONT.y - R - 2} ${FRONT.x + half} ${FRONT.y - R + 6}V${FRONT.y + R - 6}C${FRONT.x + half} ${FRONT.y + R + 2} ${FRONT.x - half} ${FRONT.y + R + 2} ${FRONT.x - half} ${FRONT.y + R - 6}z`;

export const woodCastorWheel: Drawing = {
  title: "Castor wheel of hardwood",
  tells: "A thick solid wheel with grain, turned from hard wood.",
  draw: (level) => [
    ...castor(
      [
        body(dot(SIDE.x, SIDE.y, R)),
        detail(
          row(
            level === "small" ? 2 : 4,
            (i) => `M${SIDE.x - 30} ${SIDE.y - 20 + 14 * i}c18 ${4 - i} 40 ${-3 + i} 60 ${i - 1}`,
          ),
          dot(SIDE.x, SIDE.y, R),
        ),
      ],
      [
        body(rim(17)),
        detail(
          row(level === "small" ? 2 : 4, (i) =>
            line([FRONT.x - 10 + 7 * i, FRONT.y - 30], [FRONT.x - 11 + 7 * i, FRONT.y + 30]),
          ),
        ),
      ],
    ),
    tell([26, 226], [SIDE.x - 28, SIDE.y + 18]),
  ],
};

/** Number of leather discs in the drawn wheel. */
export const LEATHER_DISCS = 7;

export const leatherCastorWheel: Drawing = {
  title: "Castor wheel of leather discs",
  tells: "From the front the wheel shows a stack of thin discs pressed together.",
  draw: (level) => {
    const count = level === "small" ? 4 : LEATHER_DISCS;
    return [
      ...castor(
        [body(dot(SIDE.x, SIDE.y, R)), edge(dot(SIDE.x, SIDE.y, 13))],
        [
          body(rim(17)),
          edge(
            row(count - 1, (i) =>
              line(
                [FRONT.x - 17 + (34 / count) * (i + 1), FRONT.y - R + 3],
                [FRONT.x - 17 + (34 / count) * (i + 1), FRONT.y + R - 3],
              ),
            ),
          ),
        ],
      ),
      span([FRONT.x - 17, 226], [FRONT.x + 17, 226]),
      tell([150, 226], [FRONT.x - 12, FRONT.y + R - 4]),
    ];
  },
};

export const brassCastorWheel: Drawing = {
  title: "Castor wheel of brass",
  tells: "A thin cast wheel with a turned rim and hub, solid or hollow.",
  draw: () => [
    ...castor(
      [body(dot(SIDE.x, SIDE.y, R)), edge(dot(SIDE.x, SIDE.y, R - 6)), edge(dot(SIDE.x, SIDE.y, 14))],
      [
        body(rim(9)),
        body(ellipse(FRONT.x, FRONT.y, 16, 13), "edge"),
        edge(
          line([FRONT.x - 9, FRONT.y - 26], [FRONT.x + 9, FRONT.y - 26]) +
            line([FRONT.x - 9, FRONT.y + 26], [FRONT.x + 9, FRONT.y + 26]),
        ),
      ],
    ),
    tell([26, 226], [SIDE.x - 24, SIDE.y + 24]),
    span([FRONT.x - 9, 226], [FRONT.x + 9, 226]),
  ],
};

export const ceramicCastorWheel: Drawing = {
  title: "Castor wheel of ceramic",
  tells: "A smooth glazed wheel with a rounded rim; a chip shows the pale body.",
  draw: () => [
    ...castor(
      [
        body(dot(SIDE.x, SIDE.y, R)),
        detail("M58 156A32 32 0 0 1 78 144"),
        body("M58 202l12 2 4 9 -8 1z", "edge"),
      ],
      [
        body(
          `M${FRONT.x} ${FRONT.y - R}A17 ${R} 0 0 1 ${FRONT.x} ${FRONT.y + R}A17 ${R} 0 0 1 ${FRONT.x} ${FRONT.y - R}z`,
        ),
        detail(`M${FRONT.x - 9} ${FRONT.y - 18}v30`),
      ],
    ),
    tell([22, 228], [62, 208]),
  ],
};

export const rubberTyredCastor: Drawing = {
  title: "Castor with a rubber tyre",
  tells: "A soft tread lies in a groove round the rim of the wheel.",
  draw: () => [
    ...castor(
      [
        body(dot(SIDE.x, SIDE.y, R)),
        toned(dot(SIDE.x, SIDE.y, R) + dot(SIDE.x, SIDE.y, R - 10), "dark"),
        edge(dot(SIDE.x, SIDE.y, R - 10)),
        edge(dot(SIDE.x, SIDE.y, 9)),
      ],
      [
        body(rim(13)),
        toned(rim(8), "dark"),
        edge(
          line([FRONT.x - 8, FRONT.y - R + 4], [FRONT.x - 8, FRONT.y + R - 4]) +
            line([FRONT.x + 8, FRONT.y - R + 4], [FRONT.x + 8, FRONT.y + R - 4]),
        ),
      ],
    ),
    tell([22, 228], [SIDE.x - 22, SIDE.y + 30]),
  ],
};

export const swivellingCastor: Drawing = {
  title: "Swivelling castor",
  tells: "The wheel stands beside an upright spindle and trails behind it, free to turn with the push.",
  draw: () => [
    body(box(60, 34, 120, 14)),
    ...[76, 164].flatMap((x) => [body(polygon([x - 5, 34], [x + 5, 34], [x + 2, 22], [x - 2, 22]), "edge")]),
    body(polygon([106, 48], [134, 48], [130, 70], [110, 70])),
    body(dot(92, 168, R + 6)),
    body("M104 70H136C140 100 118 128 98 172A8 8 0 0 1 84 164C92 132 106 104 104 70z"),
    body(dot(92, 168, 5), "edge"),
    knife(line([120, 12], [120, 222]) + line([92, 168], [92, 222])),
    span([92, 218], [120, 218]),
    tell([190, 106], [132, 88]),
  ],
};

const LEG = polygon([78, 10], [162, 10], [148, 84], [92, 84]);

export const brassSocketCastor: Drawing = {
  title: "Castor with a brass socket",
  tells: "A cast cup or box takes the end of the leg, which was cut to fit it.",
  draw: () => [
    body(LEG),
    detail(line([106, 16], [110, 80]) + line([134, 16], [130, 80])),
    body(polygon([84, 78], [156, 78], [156, 88], [152, 88], [146, 130], [94, 130], [88, 88], [84, 88])),
    edge(line([88, 88], [152, 88])),
    edge(dot(120, 106, 5)),
    body(
      `${open(
        run(
          [106, 130],
          ["l", 134, 130],
          ["c", 138, 152, 126, 166, 128, 190],
          ["c", 128, 202, 112, 202, 112, 190],
          ["c", 110, 166, 102, 152, 106, 130],
        ),
      )}z`,
    ),
    body(dot(120, 188, 34)),
    edge(dot(120, 188, 28)),
    body(
      `${open(
        run(
          [106, 130],
          ["l", 134, 130],
          ["c", 138, 152, 126, 166, 128, 190],
          ["c", 128, 202, 112, 202, 112, 190],
          ["c", 110, 166, 102, 152, 106, 130],
        ),
      )}z`,
    ),
    body(dot(120, 189, 4), "edge"),
    tell([206, 60], [158, 82]),
    tell([206, 128], [150, 112]),
  ],
};

/** Wall of a pressed cup and of a cast one, cut through, side by side. */
export const pressedCastorCup: Drawing = {
  title: "Castor cup of thin pressed brass",
  tells: "Cut through, the wall is thin and even (left); a cast cup (right) is thick and filed.",
  draw: () => {
    const cup = (cx: number, wall: number): readonly Mark[] => [
      body(polygon([cx - 34, 24], [cx + 34, 24], [cx + 30 - wall, 150], [cx - 30 + wall, 150])),
      detail(line([cx - 12, 30], [cx - 10, 144]) + line([cx + 12, 30], [cx + 10, 144])),
      ...cut(
        polygon(
          [cx - 42, 70],
          [cx - 38, 70 + wall],
          [cx - 30 + wall, 150],
          [cx + 30 - wall, 150],
          [cx + 38, 70 + wall],
          [cx + 42, 70],
          [cx + 30, 150 + wall],
          [cx - 30, 150 + wall],
        ),
      ),
      body(box(cx - 9, 150 + wall, 18, 34), "edge"),
    ];
    return [...cup(64, 4), ...cup(178, 13), tell([26, 222], [34, 146]), tell([226, 222], [210, 150])];
  },
};
