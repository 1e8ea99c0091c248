import { box, dot, ellipse, line, polygon } from "../../pen.ts";
import { row, run, turnedOn } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";
import { BATWING, bail, bothHalves, rosette, WILLOW } from "./plate-outlines.ts";

export const dropHandle: Drawing = {
  title: "Drop handle on a split pin",
  tells: "A pear-shaped drop hangs from a rosette on one pin, whose two ends are bent over inside.",
  draw: (level) => {
    const drop = turnedOn(
      76,
      run(
        [3, 92],
        ["l", 5, 108],
        ["c", 8, 132, 22, 148, 22, 172],
        ["c", 22, 192, 12, 200, 6, 202],
        ["h", 9, 208],
        ["v", 2, 216],
      ),
    );
    return [
      body(dot(76, 74, 40)),
      ...(level === "full" ? [edge(rosette(76, 74, 16, 36, 10))] : []),
      body(dot(76, 74, 14)),
      body(drop),
      detail(line([66, 176], [86, 176]) + line([67, 196], [85, 196])),
      // The same from the side, through the drawer front.
      ...cut(box(168, 20, 34, 196)),
      body(box(160, 38, 8, 72), "edge"),
      edge("M152 74C144 74 144 86 152 86H202"),
      edge("M152 74H202C212 74 212 60 208 46M202 86C212 86 214 100 210 114"),
      body(
        turnedOn(
          148,
          run([2, 84], ["l", 3, 100], ["c", 5, 128, 12, 146, 12, 172], ["c", 12, 194, 6, 202, 2, 212]),
        ),
      ),
      tell([228, 26], [211, 52]),
      tell([228, 140], [213, 112]),
    ];
  },
};

export const bailOnPlate: Drawing = {
  title: "Bail handle on posts, chased plate",
  tells:
    "A loop between two posts over one plate of irregular outline; incised lines taper like cuts of a graver.",
  draw: (level) => {
    const plate = bothHalves(120, 96, BATWING, 1.15);
    return [
      body(plate),
      ...(level === "full"
        ? [
            detail(
              bothHalves(120, 96, BATWING, 1) +
                line([120, 70], [120, 124]) +
                "M96 84c8 8 8 18 0 26M144 84c-8 8 -8 18 0 26M60 86c8 4 10 12 6 20M180 86c-8 4 -10 12 -6 20",
            ),
          ]
        : []),
      body(bail(120, 92, 62, 82, 4, 13)),
      body(dot(58, 90, 9)),
      body(dot(182, 90, 9)),
      span([58, 216], [182, 216]),
      tell([206, 34], [152, 90]),
    ];
  },
};

export const bailOnSplitPins: Drawing = {
  title: "Bail handle held by split pins",
  tells: "The loop hangs in two bent wires; their ends are spread inside the drawer and dent the wood.",
  draw: () => [
    body(bothHalves(92, 84, BATWING, 0.86)),
    body(bail(92, 84, 46, 66, 3.5, 10)),
    edge("M46 90v-10a6 6 0 0 1 0 0M40 78a6 7 0 1 1 12 0v10h-12zM132 78a6 7 0 1 1 12 0v10h-12z"),
    ...cut(box(188, 30, 24, 176)),
    edge("M182 84a6 7 0 1 0 0 12H214C224 96 222 110 218 120M182 84H214C224 84 224 70 219 60"),
    body(polygon([184, 60], [188, 60], [188, 116], [184, 116]), "edge"),
    tell([232, 36], [220, 62]),
    tell([232, 150], [219, 120]),
    tell([16, 196], [42, 92]),
  ],
};

export const willowPlate: Drawing = {
  title: "Solid shaped plate with bail",
  tells: "A plain cast plate of many curves and cusps, filed at the edge, with nothing cut on it.",
  draw: () => [
    body(bothHalves(120, 96, WILLOW, 1.2)),
    body(bail(120, 92, 60, 84, 4, 13)),
    body(dot(60, 90, 9)),
    body(dot(180, 90, 9)),
    tell([206, 30], [196, 78]),
    tell([40, 216], [86, 119]),
  ],
};

export const piercedPlate: Drawing = {
  title: "Pierced backplate",
  tells:
    "The plate is fretted; the inner edges of the openings are filed on old ones, sharp on stamped copies.",
  draw: (level) => {
    const hole = (s: -1 | 1): string =>
      `M${120 + s * 12} 78C${120 + s * 22} 66 ${120 + s * 38} 74 ${120 + s * 40} 88C${120 + s * 30} 92 ${120 + s * 22} 104 ${120 + s * 14} 98zM${120 + s * 14} 108C${120 + s * 24} 112 ${120 + s * 36} 104 ${120 + s * 46} 108C${120 + s * 38} 118 ${120 + s * 22} 122 ${120 + s * 14} 116zM${120 + s * 76} 86C${120 + s * 84} 80 ${120 + s * 90} 86 ${120 + s * 88} 92C${120 + s * 82} 98 ${120 + s * 78} 94 ${120 + s * 76} 86z`;
    return [
      body(bothHalves(120, 96, WILLOW, 1.2) + hole(-1) + hole(1)),
      ...(level === "full" ? [edge("M120 66c7 7 7 14 0 20c-7 -6 -7 -13 0 -20z")] : []),
      body(bail(120, 92, 60, 88, 4, 13)),
      body(dot(60, 90, 9)),
      body(dot(180, 90, 9)),
      tell([206, 24], [152, 76]),
    ];
  },
};

export const bailOnTwoRoses: Drawing = {
  title: "Bail handle on two roses",
  tells: "Two small discs and a loop, without a plate between them.",
  draw: (level) => [
    ...[52, 188].flatMap((x) => [body(dot(x, 84, 24)), edge(dot(x, 84, 18)), body(dot(x, 84, 9))]),
    body(bail(120, 86, 68, 86, 4, 13)),
    body(dot(52, 84, 9)),
    body(dot(188, 84, 9)),
    ...(level === "full" ? [says(120, 88, "bare wood")] : []),
    tell([92, 24], [66, 62]),
    tell([148, 24], [174, 62]),
  ],
};

export const swanNeckBail: Drawing = {
  title: "Swan-neck bail",
  tells: "The loop curves twice at each end, like the neck of a swan.",
  draw: () => {
    const neck = (s: -1 | 1) =>
      `M${120 + s * 68} 82C${120 + s * 92} 82 ${120 + s * 92} 112 ${120 + s * 68} 122C${120 + s * 44} 132 ${120 + s * 66} 174 120 174`;
    const inner = (s: -1 | 1) =>
      `M${120 + s * 68} 92C${120 + s * 80} 92 ${120 + s * 80} 106 ${120 + s * 64} 113C${120 + s * 32} 126 ${120 + s * 54} 161 120 161`;
    return [
      ...[52, 188].flatMap((x) => [body(dot(x, 86, 22)), edge(dot(x, 86, 16))]),
      edge(neck(-1) + neck(1) + inner(-1) + inner(1)),
      body(dot(52, 86, 8)),
      body(dot(188, 86, 8)),
      span([52, 38], [188, 38]),
      tell([226, 176], [180, 116]),
      knife("M52 50V64M188 50V64"),
    ];
  },
};

/** Posts, nuts and plate cut through the drawer front. */
export const postsThroughFront: Drawing = {
  title: "Posts through the front",
  tells: "Two holes a handle, a threaded post in each, a nut inside.",
  draw: (level) => [
    ...cut(box(96, 20, 60, 196)),
    body(box(88, 54, 8, 128), "edge"),
    ...[78, 158].flatMap((y) => [
      body(`M58 ${y - 9}C50 ${y - 9} 50 ${y + 9} 58 ${y + 9}L84 ${y + 5}H190V${y - 5}H84z`),
      ...(level === "full" ? [detail(row(8, (i) => line([160 + 4 * i, y - 5], [162 + 4 * i, y + 5])))] : []),
      body(box(158, y - 13, 12, 26)),
    ]),
    body(ellipse(58, 118, 9, 46), "edge"),
    body(ellipse(58, 118, 3, 40), "edge"),
    says(126, 232, "front"),
    span([206, 78], [206, 158]),
    tell([222, 30], [172, 70]),
  ],
};
