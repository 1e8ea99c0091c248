import { line, type Point } from "../../pen.ts";
import { closed, run, type Step } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, says, tell, toned } from "../mark.ts";

/** Where one cut of the gouge meets the next, along the surface. */
const FACETS: readonly Point[] = [
  [26, 136],
  [40, 128],
  [50, 112],
  [60, 98],
  [74, 92],
  [88, 98],
  [98, 112],
  [108, 126],
  [122, 132],
  [138, 128],
  [146, 112],
  [154, 98],
  [166, 91],
  [178, 95],
  [190, 104],
  [198, 118],
  [212, 128],
  [226, 126],
];

/** The hollow that one cut leaves between two places: it dips into the wood. */
const hollow = ([x0, y0]: Point, [x1, y1]: Point): Step => {
  const dip = 7;
  const at = (t: number): Point => [x0 + (x1 - x0) * t, y0 + (y1 - y0) * t + dip];
  return ["c", ...at(0.25), ...at(0.75), x1, y1];
};

/** The surface of such carving cut through: its right half bare, its left half as it was meant, under gesso. */
export const roughCarvedGround: Drawing = {
  title: "Carving left rough for gesso",
  tells:
    "Gouge facets and few details where the carving is bare (right); under gesso (left) the white carried the form.",
  draw: (level) => {
    const facets = run(
      [14, 132],
      ...FACETS.map(([x, y], i): Step => hollow(FACETS[i - 1] ?? [14, 132], [x, y])),
    );
    const smooth = run([14, 118], ["c", 40, 118, 44, 72, 76, 74], ["c", 104, 74, 100, 118, 120, 118]);
    const white = closed(smooth, [120, 132], [14, 134]);
    return [
      body(white),
      toned(white, "dots"),
      edge(white),
      ...cut(closed(facets, [226, 204], [14, 204])),
      ...(level === "full"
        ? [
            detail(
              [142, 164, 188, 212].map((x) => line([x, 122], [x, 112])).join("") +
                "M76 74v-8M60 78l-4 -7M92 78l4 -7",
            ),
          ]
        : []),
      tell([206, 36], [176, 92]),
      tell([40, 40], [62, 80]),
      ...(level === "full" ? [says(60, 32, "gesso"), says(196, 30, "bare")] : []),
    ];
  },
};
