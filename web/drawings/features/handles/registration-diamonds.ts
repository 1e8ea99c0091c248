import { line } from "../../pen.ts";
import { body, type Drawing, edge, outline, says, tell } from "../mark.ts";

/** The corners of the lozenge, each cut off by a line, and what a corner holds in each pattern. */
const CORNERS = { top: [120, 78], right: [190, 130], foot: [120, 196], left: [50, 130] } as const;
type Corner = keyof typeof CORNERS;

const diamond =
  (year: Corner, others: Readonly<Partial<Record<Corner, string>>>): Drawing["draw"] =>
  (level) => {
    const [x, y] = CORNERS[year];
    const from = year === "top" ? ([226, 24] as const) : ([232, 40] as const);
    return [
      body("M120 40L210 126L120 212L30 126z"),
      outline("M120 10A15 15 0 1 1 119.9 10z"),
      edge(
        line([90, 68.7], [150, 68.7]) +
          line([90, 183.3], [150, 183.3]) +
          line([62, 95.4], [62, 156.6]) +
          line([178, 95.4], [178, 156.6]),
      ),
      ...(level === "full"
        ? [
            says(year === "top" ? 120 : 192, year === "top" ? 64 : 130, "year"),
            ...Object.entries(others).map(([corner, word]) =>
              says(CORNERS[corner as Corner][0], CORNERS[corner as Corner][1], word),
            ),
            says(120, 130, "Rd"),
          ]
        : [says(x, y, "year")]),
      tell(from, year === "top" ? [134, 52] : [205, 118]),
    ];
  };

export const diamondYearAtTop: Drawing = {
  title: "Registration diamond, year at the top",
  tells:
    "The letter in the top corner, under the circle of the class, is the year; the day stands at the right.",
  draw: diamond("top", { right: "day", foot: "parcel", left: "month" }),
};

export const diamondYearAtRight: Drawing = {
  title: "Registration diamond, year at the right",
  tells:
    "The letter in the right corner is the year; the day stands at the top, under the circle of the class.",
  draw: diamond("right", { top: "day", foot: "month", left: "parcel" }),
};
