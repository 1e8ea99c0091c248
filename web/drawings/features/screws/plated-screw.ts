import { dot, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, type Drawing, detail, edge, says, tell, toned } from "../mark.ts";
import { slottedHead } from "./screw.ts";

export const platedScrew: Drawing = {
  title: "Plated screw",
  tells:
    "Bright metal down to the floor of the slot (left); in an old screw dirt and rust darken slot and rim (right).",
  draw: (level) => {
    const slot = (cx: number): string => `M${cx - 47} 108h94v14h-94z`;
    return [
      ...slottedHead(64, 115, 48),
      detail(
        row(level === "small" ? 2 : 4, (i) => line([34 + 14 * i, 88 - 5 * i], [46 + 14 * i, 76 - 5 * i])) +
          line([24, 115], [104, 115]),
      ),
      body(dot(182, 115, 48)),
      toned(dot(182, 115, 48), "dots"),
      body(slot(182), "edge"),
      toned(slot(182), "dark"),
      edge(slot(182) + dot(182, 115, 48)),
      ...(level === "full" ? [detail("M172 72l5 6M206 146l7 4M150 140l6 -5M212 88l-6 4")] : []),
      tell([34, 22], [58, 112]),
      tell([214, 214], [192, 118]),
      ...(level === "full" ? [says(64, 190, "bright"), says(182, 190, "dark")] : []),
    ];
  },
};
