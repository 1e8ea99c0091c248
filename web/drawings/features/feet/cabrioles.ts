import { dot, line, polygon } from "../../pen.ts";
import { open, type Run, run } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, type Mark, says, span, tell } from "../mark.ts";

/** Front and back line of a cabriole leg seen from the side, knee to the right, down to the ankle. */
const FRONT: Run = run([150, 14], ["c", 196, 22, 190, 74, 160, 108], ["c", 142, 130, 136, 150, 138, 172]);
const INSIDE: Run = run(
  [112, 172],
  ["c", 112, 150, 118, 132, 122, 112],
  ["c", 130, 78, 116, 62, 96, 58],
  ["l", 84, 56],
  ["l", 84, 14],
);

/** A cabriole leg over a foot: the foot joins the ankle between (112, 172) and (138, 172). */
const leg = (foot: string): readonly Mark[] => [
  body(`${open(FRONT)}${foot}${open(INSIDE).replace(/^M[\d. -]+/, "")}z`),
  body(polygon([34, 14], [84, 14], [84, 50], [34, 50])),
  edge(line([112, 14], [112, 54])),
];

export const cabrioleLeg: Drawing = {
  title: "Cabriole leg with a pad foot",
  tells: "A double curve: out at the knee, in at the ankle, out again to a round pad.",
  draw: () => [
    ...leg(
      "C140 190 158 196 168 206C172 214 166 222 150 222H108C94 222 90 212 98 204C108 196 112 186 112 172",
    ),
    edge("M96 210C120 214 150 214 170 210"),
    knife("M150 14C196 22 190 74 160 108C142 130 136 150 138 172C140 190 158 196 168 206"),
    tell([226, 34], [185, 52]),
    tell([206, 160], [142, 158]),
  ],
};

export const padFoot: Drawing = {
  title: "Pad foot",
  tells: "A round flat pad under the ankle, often on a thin disc.",
  draw: () => [
    body(
      "M96 12C104 50 96 84 84 108C62 126 40 140 36 164C34 186 64 196 120 196S206 186 204 164C200 140 172 128 156 108C144 84 136 50 144 12z",
    ),
    edge("M36 166C50 182 84 186 120 186S190 182 204 166"),
    body("M62 194C80 200 160 200 178 194V208C160 216 80 216 62 208z"),
    tell([216, 100], [186, 138]),
    tell([226, 226], [180, 206]),
  ],
};

export const clawAndBallFoot: Drawing = {
  title: "Claw and ball foot",
  tells: "Talons grip a ball: their knuckles, rake and webs are local.",
  draw: (level) => [
    body("M100 12C104 44 100 64 92 80H148C140 64 136 44 140 12z"),
    body(dot(120, 158, 56)),
    body("M92 80C66 88 54 108 52 134C48 154 50 176 60 196L70 192C66 174 68 158 74 146C82 132 86 120 96 110z"),
    body(
      "M148 80C174 88 186 108 188 134C192 154 190 176 180 196L170 192C174 174 172 158 166 146C158 132 154 120 144 110z",
    ),
    body(
      "M104 78C102 100 98 110 104 128C98 144 104 160 108 180L112 206H128L132 180C136 160 142 144 136 128C142 110 138 100 136 78z",
    ),
    edge(
      "M102 128C112 134 128 134 138 128M106 164C114 168 126 168 134 164M54 134C60 140 68 142 76 142M186 134C180 140 172 142 164 142M112 206C114 216 126 216 128 206",
    ),
    ...(level === "full"
      ? [
          detail(
            "M62 128C68 110 78 100 92 94M178 128C172 110 162 100 148 94M86 178C88 192 94 202 102 210M154 178C152 192 146 202 138 210",
          ),
        ]
      : []),
    tell([220, 70], [184, 116]),
    tell([216, 220], [160, 196]),
  ],
};

export const spadeFoot: Drawing = {
  title: "Spade foot",
  tells: "A square tapered leg ends in a square foot that swells out and tapers again.",
  draw: () => [
    body(polygon([94, 10], [146, 10], [138, 128], [102, 128])),
    body(polygon([96, 128], [144, 128], [152, 142], [136, 224], [104, 224], [88, 142])),
    edge(line([88, 142], [152, 142])),
    detail(line([112, 16], [114, 122]) + line([128, 16], [126, 122]) + line([112, 150], [116, 216])),

    knife(line([88, 142], [102, 128]) + line([152, 142], [138, 128])),
    tell([206, 96], [150, 138]),
    tell([206, 206], [143, 196]),
  ],
};

export const taperedSquareLeg: Drawing = {
  title: "Tapered square leg",
  tells: "A straight square leg narrows on two or four faces; two sections show by how much.",
  draw: () => [
    body(polygon([34, 14], [214, 14], [214, 54], [34, 54])),
    body(polygon([94, 10], [150, 10], [150, 56], [134, 228], [110, 228], [94, 56])),
    detail(line([110, 62], [116, 220]) + line([134, 62], [128, 220])),
    body(polygon([180, 84], [220, 84], [220, 124], [180, 124])),
    body(polygon([191, 176], [209, 176], [209, 194], [191, 194])),
    says(200, 142, "above"),
    says(200, 212, "below"),
    span([94, 68], [150, 68]),
    span([109, 218], [135, 218]),
  ],
};

export const sabreLeg: Drawing = {
  title: "Sabre leg",
  tells: "The leg curves like a blade, concave in front.",
  draw: () => {
    const front = run([134, 18], ["l", 134, 54], ["c", 148, 116, 176, 176, 216, 222]);
    const behind = run([190, 226], ["c", 128, 182, 84, 124, 66, 54], ["l", 66, 18]);
    return [
      body(polygon([20, 18], [66, 18], [66, 54], [20, 54])),
      body(`${open(front)}${open(behind).replace(/^M/, "L")}z`),
      edge(line([66, 54], [134, 54])),
      knife(open({ start: [134, 54], steps: front.steps.slice(1) })),
      tell([228, 100], [162, 136]),
    ];
  },
};

export const trifidFoot: Drawing = {
  title: "Three-toed foot",
  tells: "Three lobes spread from the ankle, parted by grooves.",
  draw: () => [
    body(
      "M98 12C104 56 98 90 84 112C66 132 44 150 40 178C40 196 66 206 84 196C92 210 108 216 120 216S148 210 156 196C174 206 200 196 200 178C196 150 174 132 156 112C142 90 136 56 142 12z",
    ),
    edge("M84 196C88 170 98 142 106 116M156 196C152 170 142 142 134 116"),
    edge("M42 180C54 190 74 190 84 184M86 202C108 208 132 208 154 202M156 184C166 190 186 190 198 180"),
    tell([220, 90], [152, 168]),
    tell([30, 90], [88, 168]),
  ],
};

export const slipperFoot: Drawing = {
  title: "Slipper foot",
  tells: "The foot runs out into a long point, like a slipper.",
  draw: () => [
    ...leg(
      "C142 190 168 196 214 208C220 212 216 220 206 220H108C94 220 90 210 98 202C108 194 112 186 112 172",
    ),
    edge("M98 210C132 216 176 216 212 212"),
    knife("M138 172C142 190 168 196 214 208"),
    tell([222, 160], [200, 202]),
  ],
};

export const pawFoot: Drawing = {
  title: "Paw foot",
  tells: "Toes with claws lie side by side on the ground; hair is carved above them.",
  draw: (level) => [
    body(
      "M96 12C102 60 92 96 76 116C58 132 44 152 42 180C42 196 54 206 66 204C74 212 92 212 98 206C108 214 132 214 142 206C148 212 166 212 174 204C186 206 198 196 198 180C196 152 182 132 164 116C148 96 138 60 144 12z",
    ),
    edge(
      "M66 204C62 184 72 168 84 164M98 206C92 186 98 166 108 160M142 206C148 186 142 166 132 160M174 204C178 184 168 168 156 164",
    ),
    edge(
      "M46 190c6 -4 14 -2 16 6M74 196c6 -6 16 -4 18 4M110 200c6 -6 16 -6 20 0M148 200c2 -8 12 -10 18 -4M178 196c2 -8 10 -10 16 -6",
    ),
    ...(level === "full"
      ? [
          detail(
            "M90 116c6 12 4 22 -2 30M108 100c2 16 0 28 -4 40M132 100c-2 16 0 28 4 40M150 116c-6 12 -4 22 2 30M120 92v50",
          ),
        ]
      : []),
    tell([224, 226], [188, 198]),
    tell([222, 80], [152, 118]),
  ],
};
