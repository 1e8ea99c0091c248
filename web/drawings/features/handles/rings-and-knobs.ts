import { box, dot, ellipse, line, polygon } from "../../pen.ts";
import { closed, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, says, scaleBar, span, tell } from "../mark.ts";
import { bail, facets, ring, rosette } from "./plate-outlines.ts";

/** Turns an outline made about a vertical axis into one about a level axis: a knob seen from the side, front to the left. */
const knobSide = (
  x: number,
  cy: number,
  way: readonly (readonly [depth: number, radius: number])[],
): string => {
  const upper = way.map(([depth, radius]): readonly [number, number] => [x - depth, cy - radius]);
  const lower = way.map(([depth, radius]): readonly [number, number] => [x - depth, cy + radius]);
  return polygon(...upper, ...lower.toReversed());
};

export const stampedOvalPlate: Drawing = {
  title: "Stamped oval plate with bail",
  tells:
    "A thin hollow plate struck with a design; the bail follows its outline. The wall is under a millimetre.",
  draw: (level) => [
    body(ellipse(96, 100, 84, 58)),
    edge(ellipse(96, 100, 77, 51)),
    detail(ellipse(96, 100, 72, 46)),
    ...(level === "full"
      ? [
          edge(rosette(96, 96, 8, 24, 8)),
          detail(
            row(36, (i) => {
              const a = (i / 36) * 2 * Math.PI;
              return line(
                [96 + 66 * Math.cos(a), 100 + 41 * Math.sin(a)],
                [96 + 71 * Math.cos(a), 100 + 45 * Math.sin(a)],
              );
            }),
          ),
        ]
      : []),
    body(bail(96, 88, 74, 82, 3.5, 9)),
    body(dot(22, 88, 8)),
    body(dot(170, 88, 8)),
    // Cut through: a shell of even wall.
    ...cut("M214 34C196 60 196 140 214 166L217 165C201 140 201 60 217 35z"),
    tell([180, 210], [203, 134]),
    tell([210, 16], [160, 58]),
  ],
};

export const lionMaskRing: Drawing = {
  title: "Ring handle on a lion mask",
  tells: "A ring hangs from the mouth of a cast or stamped mask.",
  draw: (level) => [
    body(
      "M120 22C134 22 142 30 152 32C170 34 180 48 178 64C188 78 182 96 172 104C168 124 146 138 120 140C94 138 72 124 68 104C58 96 52 78 62 64C60 48 70 34 88 32C98 30 106 22 120 22z",
    ),
    edge("M120 40C140 40 154 56 154 80C154 104 140 124 120 126C100 124 86 104 86 80C86 56 100 40 120 40z"),
    ...(level === "full"
      ? [
          detail(
            row(13, (i) => {
              const a = ((200 + 11.7 * i * 2.1) * Math.PI) / 180;
              return line(
                [120 + 44 * Math.cos(a), 82 + 44 * Math.sin(a)],
                [120 + 56 * Math.cos(a + 0.14), 82 + 55 * Math.sin(a + 0.14)],
              );
            }),
          ),
        ]
      : []),
    edge(
      "M92 70c8 -8 18 -6 22 2l-2 14M148 70c-8 -8 -18 -6 -22 2l2 14M108 88h24l-7 9h-10zM120 97v6c-6 8 -18 7 -22 -2M120 103c6 8 18 7 22 -2",
    ),
    edge(dot(103, 79, 3) + dot(137, 79, 3)),
    body(ring(120, 162, 48, 11)),
    body("M106 108C112 104 128 104 134 108L130 122H110z", "edge"),
    tell([220, 120], [172, 150]),
    tell([214, 22], [176, 50]),
  ],
};

export const ringOnRosette: Drawing = {
  title: "Ring handle on a stamped rosette",
  tells: "A ring hangs on a thin round plate struck with a flower or a head.",
  draw: (level) => [
    body(dot(120, 88, 70)),
    edge(dot(120, 88, 63)),
    ...(level === "full" ? [detail(dot(120, 88, 58)), edge(rosette(120, 88, 16, 48, 10))] : []),
    body(ring(120, 142, 58, 10)),
    body(dot(120, 86, 15)),
    edge(dot(120, 86, 9)),
    tell([222, 24], [172, 44]),
    tell([222, 216], [170, 172]),
  ],
};

export const brassKnob: Drawing = {
  title: "Brass knob",
  tells: "A round knob on one post, cast solid or of thin sheet.",
  draw: () => [
    body(dot(58, 110, 34)),
    edge(dot(58, 110, 27)),
    detail(dot(58, 110, 8)),
    ...cut(box(184, 20, 32, 184)),
    body(
      closed(
        run(
          [184, 102],
          ["l", 172, 102],
          ["l", 168, 104],
          ["c", 160, 70, 114, 74, 114, 110],
          ["c", 114, 146, 160, 150, 168, 116],
          ["l", 172, 118],
          ["l", 184, 118],
        ),
      ),
    ),
    body(polygon([178, 88], [184, 88], [184, 132], [178, 132]), "edge"),
    body(box(184, 105, 44, 10), "edge"),
    body(box(218, 98, 8, 24), "edge"),
    tell([96, 214], [130, 140]),
  ],
};

export const mushroomKnob: Drawing = {
  title: "Turned wooden knob, mushroom form",
  tells: "A broad round knob on a short neck, screwed or pinned. Look for two filled holes beside it.",
  draw: (level) => [
    body(dot(74, 104, 56)),
    edge(dot(74, 104, 46)),
    detail(
      dot(74, 104, 14) +
        (level === "full" ? row(3, (i) => `M40 ${84 + 18 * i}c20 ${5 - 3 * i} 46 ${-4 + 2 * i} 68 0`) : ""),
    ),
    ...cut(box(190, 16, 32, 190)),
    body(
      closed(
        run(
          [190, 90],
          ["l", 180, 90],
          ["c", 168, 88, 170, 60, 164, 50],
          ["c", 140, 60, 136, 84, 136, 104],
          ["c", 136, 124, 140, 148, 164, 158],
          ["c", 170, 148, 168, 120, 180, 118],
          ["l", 190, 118],
        ),
      ),
    ),
    body(box(190, 96, 38, 16), "edge"),
    edge(row(5, (i) => line([194 + 6 * i, 96], [197 + 6 * i, 112]))),
    edge(dot(22, 190, 5) + dot(126, 190, 5)),
    span([22, 206], [126, 206]),
    tell([120, 24], [144, 70]),
  ],
};

export const wedgedKnob: Drawing = {
  title: "Small knob wedged through the front",
  tells: "The tenon of the knob goes right through and a wedge spreads it inside.",
  draw: () => [
    body(dot(58, 110, 32)),
    edge(dot(58, 110, 25) + dot(58, 110, 8)),
    ...cut(polygon([150, 30], [194, 30], [194, 100], [150, 100])),
    ...cut(polygon([150, 120], [194, 120], [194, 196], [150, 196])),
    body("M150 94H142C136 92 138 82 130 80C114 86 114 134 130 140C138 138 136 128 142 126H150z"),
    body(polygon([150, 100], [208, 97], [208, 123], [150, 120])),
    body(polygon([166, 110], [212, 105], [212, 115]), "edge"),
    says(172, 214, "front"),
    tell([228, 70], [212, 104]),
  ],
};

export const cutGlassKnob: Drawing = {
  title: "Cut-glass knob",
  tells: "Flat facets with sharp ground edges, and no seam.",
  draw: (level) => {
    const spokes = (r0: number, r1: number, count: number) =>
      row(count, (i) => {
        const a = ((i + 0.5) / count) * 2 * Math.PI;
        return line(
          [76 + r0 * Math.cos(a), 108 + r0 * Math.sin(a)],
          [76 + r1 * Math.cos(a), 108 + r1 * Math.sin(a)],
        );
      });
    return [
      body(facets(76, 108, 56, 12)),
      edge(facets(76, 108, 40, 12) + facets(76, 108, 20, 12)),
      edge(spokes(40, 56, 12) + (level === "full" ? spokes(20, 40, 12) : "")),
      body(
        knobSide(214, 108, [
          [0, 14],
          [22, 16],
          [34, 44],
          [46, 52],
          [58, 44],
          [72, 22],
        ]),
      ),
      edge(
        line([180, 64], [180, 152]) +
          line([168, 56], [168, 160]) +
          line([156, 64], [156, 152]) +
          line([214, 108], [142, 108]) +
          line([180, 86], [144, 92]) +
          line([180, 130], [144, 124]),
      ),
      tell([120, 22], [96, 56]),
      tell([226, 206], [178, 152]),
    ];
  },
};

export const pressedGlassKnob: Drawing = {
  title: "Pressed glass knob",
  tells: "A mould seam runs round the knob, edges are soft, and the pattern stands on the face.",
  draw: (level) => [
    body(dot(76, 108, 56)),
    edge(rosette(76, 108, 16, 46, 8)),
    ...(level === "full" ? [edge(dot(76, 108, 14)), detail(dot(76, 108, 51))] : []),
    body(
      closed(
        run(
          [214, 94],
          ["l", 190, 92],
          ["c", 184, 72, 180, 58, 168, 58],
          ["c", 150, 60, 142, 84, 142, 108],
          ["c", 142, 132, 150, 156, 168, 158],
          ["c", 180, 158, 184, 144, 190, 124],
          ["l", 214, 122],
        ),
      ),
    ),
    knife("M168 58C176 80 176 136 168 158"),
    tell([226, 190], [175, 136]),
    tell([120, 22], [92, 74]),
  ],
};

export const spunHollowKnob: Drawing = {
  title: "Hollow knob of thin sheet",
  tells: "A thin shell with fine tool rings on its inside.",
  draw: (level) => [
    ...cut("M40 120C40 66 80 30 124 30S206 66 206 120H200C198 70 164 37 124 37S48 70 46 120z"),
    body("M46 120C46 74 80 37 124 37S200 74 200 120z", "edge"),
    detail(
      row(
        level === "small" ? 3 : 7,
        (i) =>
          `M${54 + 5 * i} ${112 - 8.6 * i}C${82 + 3 * i} ${124 - 8 * i} ${166 - 3 * i} ${124 - 8 * i} ${194 - 5 * i} ${112 - 8.6 * i}`,
      ),
    ),
    body("M40 120C60 130 186 130 206 120V128C186 140 60 140 40 128z"),
    tell([70, 206], [86, 96]),
    tell([226, 196], [205, 106]),
  ],
};

export const stampedOrCast: Drawing = {
  title: "Stamped plate beside a cast one",
  tells:
    "Cut through: the stamped shell is of one thin wall with the design in reverse behind; the cast plate is thick and filed.",
  draw: () => [
    ...cut(
      "M20 74C40 74 44 46 66 44C80 42 84 60 98 60S118 42 132 44C154 46 160 74 220 74V80C156 80 152 52 132 50C122 49 114 66 98 66S76 49 66 50C48 52 44 80 20 80z",
    ),
    ...cut(
      "M20 158C40 158 44 132 66 130C80 128 84 146 98 146S118 128 132 130C154 132 160 158 220 158L216 182H24z",
    ),
    says(120, 28, "stamped"),
    says(120, 206, "cast"),
    span([196, 74], [196, 80]),
    tell([226, 106], [198, 82]),
    tell([226, 222], [214, 176]),
    scaleBar(8, 5),
  ],
};

export const plasticKnob: Drawing = {
  title: "Moulded plastic knob",
  tells: "A seam runs round the moulding; inside stands a metal bush with a machine thread.",
  draw: () => [
    ...cut("M58 168H182V150C182 104 168 60 120 58C72 60 58 104 58 150z"),
    body(box(106, 106, 28, 62)),
    body(box(112, 112, 16, 56), "edge"),
    edge(row(7, (i) => line([112, 118 + 7 * i], [128, 115 + 7 * i]))),
    knife(line([54, 150], [186, 150])),
    tell([222, 110], [187, 149]),
    tell([200, 214], [136, 160]),
  ],
};
