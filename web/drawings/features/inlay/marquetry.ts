import { box, grain } from "../../pen.ts";
import { body, type Drawing, detail, edge, outline, says, span, tell, toned } from "../mark.ts";

const LEAF = "M60 130C50 92 84 56 130 52C172 50 196 84 178 122C164 154 124 178 92 168C74 162 64 148 60 130z";

export const sawGapMarquetry: Drawing = {
  title: "Saw gap round every piece",
  tells: "One even gap, as wide as the saw, runs round every piece: two leaves were cut together.",
  draw: (level) => [
    body(box(16, 28, 208, 172)),
    ...(level === "full" ? [detail(grain(20, 32, 200, 164, 6))] : []),
    body(LEAF),
    body("M65 130C56 96 87 61 130 57C168 55 190 86 173 120C160 149 123 172 94 163C78 157 69 147 65 130z"),
    ...(level === "full" ? [detail(grain(78, 72, 88, 80, 4, "y"))] : []),
    edge("M72 142C100 126 132 108 160 82M104 122c-6 -12 -4 -22 4 -30M128 108c10 6 20 8 30 6"),
    span([112, 52], [113, 57.6]),
    tell([206, 10], [174, 76]),
    tell([30, 224], [62, 142]),
  ],
};

/** Two panels: what is dark in one is pale in the other. */
export const partAndCounterpart: Drawing = {
  title: "Part and counterpart",
  tells: "The same motif twice: what is dark on a pale ground in one is pale on a dark ground in the other.",
  draw: () => {
    const motif = (x: number) =>
      `M${x} 120C${x + 8} 84 ${x + 46} 66 ${x + 70} 84C${x + 92} 104 ${x + 70} 132 ${x + 52} 122C${x + 40} 114 ${x + 50} 98 ${x + 60} 104C${x + 52} 94 ${x + 32} 108 ${x + 40} 126C${x + 48} 150 ${x + 82} 150 ${x + 92} 124C${x + 98} 160 ${x + 52} 182 ${x + 24} 160C${x + 10} 150 ${x + 0} 136 ${x} 120z`;
    return [
      body(box(12, 44, 104, 152)),
      toned(motif(16), "dark"),
      outline(motif(16)),
      body(box(124, 44, 104, 152)),
      toned(`${box(124, 44, 104, 152)}${motif(128)}`, "dark"),
      outline(box(124, 44, 104, 152)),
      outline(motif(128)),
      tell([64, 12], [60, 78]),
      tell([176, 12], [172, 78]),
      says(64, 218, "part"),
      says(176, 218, "counterpart"),
    ];
  },
};
