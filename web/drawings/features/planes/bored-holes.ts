import { box, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, edge, knife, says, tell } from "../mark.ts";

/** A hole cut through along its axis; `floor` draws its lower end from its left to its right wall. */
const hole = (x: number, half: number, foot: number, floor: string): string =>
  `M${x - half} 46V${foot}${floor}V46z`;

export const screwPitHole: Drawing = {
  title: "Flat-bottomed hole with a screw pit",
  tells: "Cut through: a flat floor, a small threaded pit in its middle and a scored ring at its edge.",
  draw: (level) => {
    const x = 120;
    return [
      ...cut(box(14, 46, 212, 160)),
      body(hole(x, 46, 138, `l5 10 5 -10H${x - 9}L${x} 176L${x + 9} 138H${x + 36}l5 10 5 -10`)),
      edge(
        row(level === "small" ? 2 : 4, (i) =>
          line([x - 8 + 1.7 * i, 144 + 7 * i], [x + 8 - 1.7 * i, 141 + 7 * i]),
        ),
      ),
      knife(line([x - 36, 138], [x - 9, 138]) + line([x + 9, 138], [x + 36, 138])),
      tell([60, 228], [x - 5, 166]),
      tell([226, 24], [x + 40, 140]),
    ];
  },
};

export const bitFloors: Drawing = {
  title: "Floors of bored holes",
  tells: "Cut through: a spoon bit leaves a round floor, a centre bit a flat one with a plain point.",
  draw: () => {
    return [
      ...cut(box(14, 46, 212, 150)),
      body(hole(74, 30, 126, "C44 166 104 166 104 126")),
      body(hole(168, 32, 140, "h26L168 158L174 140h26")),
      says(74, 216, "spoon bit"),
      says(168, 216, "centre bit"),
      tell([30, 20], [76, 150]),
      tell([222, 20], [171, 152]),
    ];
  },
};
