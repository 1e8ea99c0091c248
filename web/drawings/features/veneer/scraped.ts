import { box } from "../../pen.ts";
import { closed, open, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, knife, says, scaleBar, span, tell } from "../mark.ts";
import { PER_MM } from "./leaves.ts";

/** Thickness in the middle of the drawn leaf and at its scraped edge, in millimetres. */
export const SCRAPED = { middle: 1.6, edge: 0.4 } as const;

export const veneerScrapedThin: Drawing = {
  title: "Sawn veneer scraped thin at an edge",
  tells:
    "Cut through: the leaf thins out towards the edge where the scraper worked longest. Measure in the middle.",
  draw: () => {
    const ground = 132;
    const at = (mm: number) => ground - mm * PER_MM;
    const upper = run(
      [14, at(SCRAPED.middle)],
      ["l", 110, at(SCRAPED.middle)],
      ["c", 150, at(SCRAPED.middle), 180, at(0.7), 226, at(SCRAPED.edge)],
    );
    return [
      body(box(14, ground, 212, 66)),
      detail(row(4, (i) => `M22 ${ground + 13 + 14 * i}c60 ${5 - 3 * i} 120 ${-4 + 2 * i} 196 0`)),
      ...cut(closed(upper, [226, ground], [14, ground])),
      knife(
        open(
          run([110, at(SCRAPED.middle)], ["c", 150, at(SCRAPED.middle), 180, at(0.7), 226, at(SCRAPED.edge)]),
        ),
      ),
      span([60, ground], [60, at(SCRAPED.middle)]),
      tell([226, 60], [204, at(0.62)]),
      says(120, 172, "ground"),
      scaleBar(PER_MM, 3),
    ];
  },
};
