import { box, dot, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, says, span, tell } from "../mark.ts";
import { dashes } from "../oblique.ts";

/** Cut across the chair: two rails with their rebates, and the stuffed frame lifted out of them. */
export const slipSeat: Drawing = {
  title: "Loose slip seat",
  tells: "Cut across: the stuffed frame lies loose in a rebate of the rails and lifts out.",
  draw: (level) => {
    const rail = (side: -1 | 1): string => {
      const at = (dx: number): number => 120 + side * dx;
      return polygon(
        [at(104), 152],
        [at(92), 152],
        [at(92), 176],
        [at(74), 176],
        [at(74), 222],
        [at(104), 222],
      );
    };
    const frame = (x: number): string => box(x, 92, 36, 20);
    return [
      body("M32 92C48 36 192 36 208 92V102H32z"),
      detail(
        level === "small"
          ? "M60 84C88 58 152 58 180 84"
          : "M52 86C80 54 160 54 188 86M64 88C92 66 148 66 176 88M80 90C104 78 136 78 160 90",
      ),
      body(box(32, 108, 176, 5), "edge"),
      ...cut(frame(32)),
      ...cut(frame(172)),
      ...cut(rail(-1)),
      ...cut(rail(1)),
      edge(dashes([32, 118], [32, 172]) + dashes([208, 118], [208, 172])),
      detail(row(2, (i) => line([78 + 84 * i - 42, 113], [78 + 84 * i - 42, 120]))),
      ...(level === "full" ? [edge([44, 56, 184, 196].map((x) => dot(x, 116, 2.4)).join(""))] : []),
      span([120, 120], [120, 174]),
      tell([86, 132], [40, 170]),
      tell([154, 132], [200, 170]),
      ...(level === "full" ? [says(120, 200, "rebate")] : []),
    ];
  },
};
