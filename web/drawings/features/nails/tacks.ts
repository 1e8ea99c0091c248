import { box, dot, line, n, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";
import { holeMarks, NAIL } from "./nail-views.ts";

const { front, side, plan, head } = NAIL;
/** Tacks are short: where the point ends. */
const TIP = 178;

export const shearedTack: Drawing = {
  title: "Sheared upholstery tack",
  tells:
    "Two faces of the short shank taper, the other two run parallel; shear lines and a burr, a flat head.",
  draw: (level) => {
    const taper = polygon([front - 15, head], [front + 15, head], [front + 1, TIP], [front - 1, TIP]);
    const flat = polygon([side - 7, head], [side + 7, head], [side + 7, TIP - 6], [side - 7, TIP]);
    return [
      body(taper),
      body(flat),
      ...[front, side].map((axis) =>
        body(
          `M${axis - 30} ${head}C${axis - 26} ${head - 12} ${axis + 26} ${head - 12} ${axis + 30} ${head}z`,
        ),
      ),
      detail(
        row(level === "small" ? 4 : 11, (i) => {
          const y = head + 12 + (level === "small" ? 30 : 11) * i;
          return line([side - 7, y], [side + 7, y - 5]);
        }),
        flat,
      ),
      edge(line([side + 7, head + 4], [side + 9, TIP - 16])),
      body(dot(plan, 62, 26)),
      detail(dot(plan, 62, level === "small" ? 14 : 20)),
      ...(level === "full" ? holeMarks(10, 4, level) : []),
      knife(
        line([side - 7, head + 6], [side - 7, TIP - 4]) + line([side + 7, head + 6], [side + 7, TIP - 10]),
      ),
      span([side - 7, 206], [side + 7, 206]),
      tell([226, 112], [side + 10, 96]),
    ];
  },
};

export const gimpPin: Drawing = {
  title: "Gimp pin in the braid",
  tells:
    "A pin with a round head no bigger than it must be sits in the pile of the braid, every few centimetres.",
  draw: (level) => {
    const scroll = (i: number): string => {
      const x = 20 + (level === "small" ? 50 : 25) * i;
      return `M${n(x)} 62C${n(x + 6)} 44 ${n(x + 18)} 44 ${n(x + 24)} 62C${n(x + 18)} 80 ${n(x + 6)} 80 ${n(x)} 62`;
    };
    const heads = [46, 120, 194];
    return [
      body(box(12, 34, 216, 56)),
      edge(line([12, 42], [228, 42]) + line([12, 82], [228, 82])),
      detail(row(level === "small" ? 4 : 8, scroll), box(12, 43, 216, 38)),
      ...heads.map((x) => body(dot(x, 62, 7), "edge")),
      span([46, 108], [120, 108]),
      tell([222, 14], [199, 54]),
      // The pin by itself, larger.
      body(polygon([112, 142], [128, 142], [128, 208], [120, 228], [112, 208])),
      body("M100 142C100 126 140 126 140 142z"),
      detail(line([120, 206], [120, 228])),
      tell([180, 190], [131, 178]),
      ...(level === "full" ? [says(186, 200, "thin wire", "start")] : []),
    ];
  },
};
