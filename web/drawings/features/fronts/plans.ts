import { box, line } from "../../pen.ts";
import { closed, open, type Run, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, type Mark, says, tell } from "../mark.ts";

/** A case front seen from above: the front line towards us, and the front below it in elevation. */
function plan(front: Run, blades: readonly number[]): readonly Mark[] {
  const xs = front.steps.map((step) => (step[0] === "c" ? step[5] : step[1]));
  return [
    body(closed(front, [226, 20], [14, 20])),
    detail(row(4, (i) => line([28 + 10 * i, 32 + 9 * i], [208 - 8 * i, 33 + 9 * i]))),
    body(box(14, 142, 212, 78)),
    edge(line([14, 168], [226, 168]) + line([14, 194], [226, 194])),
    ...(xs.length > 0 ? [detail(blades.map((x) => `M${x} 142V220`).join(""))] : []),
    knife(open(front)),
    says(226, 136, "from above", "end"),
  ];
}

export const serpentineFront: Drawing = {
  title: "Serpentine front",
  tells: "From above the front runs out in the middle and in at the sides, with two changes of direction.",
  draw: () => [
    ...plan(
      run(
        [14, 92],
        ["c", 26, 110, 46, 74, 72, 84],
        ["c", 92, 92, 100, 116, 120, 116],
        ["c", 140, 116, 148, 92, 168, 84],
        ["c", 194, 74, 214, 110, 226, 92],
      ),
      [72, 168],
    ),
    tell([46, 134], [70, 87]),
    tell([92, 136], [116, 119]),
  ],
};

export const oxbowFront: Drawing = {
  title: "Reverse serpentine front",
  tells: "From above the front runs in at the middle and out at the sides.",
  draw: () => [
    ...plan(
      run(
        [14, 88],
        ["c", 24, 112, 46, 118, 66, 112],
        ["c", 88, 104, 96, 80, 120, 80],
        ["c", 144, 80, 152, 104, 174, 112],
        ["c", 194, 118, 216, 112, 226, 88],
      ),
      [66, 174],
    ),
    tell([96, 136], [117, 84]),
  ],
};

export const bowFront: Drawing = {
  title: "Bow front",
  tells: "From above the front is one even curve outward, without a change of direction.",
  draw: () => [...plan(run([14, 78], ["c", 80, 124, 160, 124, 226, 78]), []), tell([80, 136], [112, 115])],
};

export const blockFront: Drawing = {
  title: "Block front",
  tells: "From above two flat blocks stand out and the middle lies back, all cut from the solid.",
  draw: () => [
    ...plan(
      run(
        [14, 92],
        ["l", 20, 92],
        ["h", 34, 112],
        ["l", 62, 112],
        ["v", 78, 92],
        ["l", 88, 92],
        ["h", 98, 80],
        ["l", 142, 80],
        ["v", 152, 92],
        ["l", 162, 92],
        ["h", 178, 112],
        ["l", 206, 112],
        ["v", 220, 92],
        ["l", 226, 92],
      ),
      [28, 70, 92, 148, 170, 212],
    ),
    tell([28, 136], [44, 115]),
    tell([96, 136], [117, 84]),
  ],
};

export const bombeCase: Drawing = {
  title: "Swelled case",
  tells: "From the front the sides swell outward in their lower half; the line is cut through solid planks.",
  draw: () => {
    const side = (s: -1 | 1): Run =>
      run(
        [120 + s * 72, 26],
        ["l", 120 + s * 72, 62],
        ["c", 120 + s * 72, 96, 120 + s * 104, 112, 120 + s * 102, 146],
        ["c", 120 + s * 100, 178, 120 + s * 80, 186, 120 + s * 78, 204],
      );
    return [
      body(
        closed(side(1), [42, 204]).replace(
          /L42 204z$/,
          "L42 204C40 186 20 178 18 146C16 112 48 96 48 62V26z",
        ),
      ),
      edge(
        line([48, 62], [192, 62]) +
          line([31, 106], [209, 106]) +
          line([19, 150], [221, 150]) +
          line([40, 196], [200, 196]),
      ),
      ...cut("M192 26V62C192 96 224 112 222 146C220 178 200 186 198 204H178V26z", "edge"),
      knife(open(side(1))),
      tell([228, 66], [208, 96]),
      tell([228, 226], [213, 178]),
    ];
  },
};

/** Small pillars between top and pillar. */
export const birdcage: Drawing = {
  title: "Birdcage under a tilting top",
  tells: "Two small boards with turned columns between them turn on the pillar; a wedge holds them down.",
  draw: () => {
    const column = (x: number) =>
      body(
        `M${x - 5} 62C${x - 5} 74 ${x - 9} 80 ${x - 9} 92C${x - 9} 104 ${x - 4} 112 ${x - 5} 126H${x + 5}C${x + 4} 112 ${x + 9} 104 ${x + 9} 92C${x + 9} 80 ${x + 5} 74 ${x + 5} 62z`,
        "edge",
      );
    return [
      body(box(10, 20, 220, 16)),
      body(box(56, 36, 128, 8), "edge"),
      body(box(60, 48, 120, 14)),
      body(box(108, 62, 24, 64), "edge"),
      ...[76, 164].map(column),
      body(box(60, 126, 120, 14)),
      body("M98 140H142L138 156H102z"),
      body(
        "M104 156H136C134 172 144 186 144 204C144 220 136 228 132 232H108C104 228 96 220 96 204C96 186 106 172 104 156z",
      ),
      body("M92 112L150 108V118L92 120z", "edge"),
      tell([216, 92], [174, 94]),
      tell([28, 92], [90, 116]),
    ];
  },
};
