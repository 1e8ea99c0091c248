import { box, line, type Point, polygon } from "../../pen.ts";
import { body, type Drawing, detail, edge, knife, tell } from "../mark.ts";
import { dashes } from "../oblique.ts";
import { CORNER, frontFace, onFront } from "./corner.ts";
import { setOut } from "./tails.ts";

const { x, top, foot, right } = CORNER;
const THICK = 62;

/** A corner whose dovetails are hidden behind a mitre: nothing of them shows when it is closed. */
export const mitredDovetail: Drawing = {
  title: "Dovetail hidden behind a mitre",
  tells: "Only a mitre shows on the top edge; the tails (dashed) lie hidden behind it.",
  draw: (level) => {
    // The mitre runs from the outer corner to where the inner faces meet.
    const inner: Point = [x + THICK + onFront(0.5, 0)[0] - x, onFront(0.5, 0)[1]];
    const frontTop = polygon(
      [x, top],
      inner,
      [x + THICK + onFront(1, 0)[0] - x, onFront(1, 0)[1]],
      onFront(1, 0),
    );
    const sideTop = polygon([x, top], [right, top], [right + inner[0] - x - THICK, inner[1]], inner);
    const tails = setOut(
      { tails: level === "small" ? 2 : 3, pin: 10, slope: 0.2, halfPin: 14 },
      foot - top,
      24,
    );
    const [end, base] = [x + 12, x + THICK];
    return [
      body(frontTop),
      body(sideTop),
      body(frontFace()),
      body(box(x, top, right - x, foot - top)),
      detail(
        line([x + 60, top + 30], [right - 20, top + 28]) + line([x + 70, top + 92], [right - 40, top + 93]),
      ),
      edge(
        tails
          .map(
            ({ end: [a, b], base: [c, d] }) =>
              dashes([end, top + a], [base, top + c]) +
              dashes([end, top + b], [base, top + d]) +
              dashes([end, top + a], [end, top + b]),
          )
          .join(""),
      ),
      knife(line([x, top], inner)),
      tell([150, 20], [(x + inner[0]) / 2 + 3, (top + inner[1]) / 2 - 1]),
    ];
  },
};
