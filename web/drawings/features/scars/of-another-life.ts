import { box, dot, ellipse, grain, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, type Drawing, detail, edge, knife, says, tell, toned } from "../mark.ts";
import { slottedHead } from "../screws/screw.ts";

export const oldHolesThatDoNotFit: Drawing = {
  title: "Old holes that do not fit",
  tells:
    "A hidden board has nail holes, a groove cut off at its end and paint that answer to nothing in this piece.",
  draw: (level) => {
    const whole = box(14, 46, 212, 146);
    const paint = "M14 46H84C96 62 80 78 92 96C78 108 86 126 70 138L14 142z";
    const groove = box(110, 150, 116, 16);
    return [
      body(whole),
      ...(level === "full" ? [detail(grain(96, 52, 126, 92, 5))] : []),
      toned(paint, "dark"),
      edge(paint),
      body(groove, "edge"),
      detail(line([110, 154], [226, 154])),
      ...[120, 150, 180, 210].flatMap((x, i) => [
        toned(dot(x, 74 + 9 * i, 5), "dark"),
        edge(dot(x, 74 + 9 * i, 5)),
      ]),
      edge(whole),
      knife(line([226, 146], [226, 170])),
      tell([150, 18], [152, 74]),
      tell([196, 222], [222, 172]),
      tell([30, 222], [46, 146]),
    ];
  },
};

/** The corner of a case seen from below. */
export const feetUnlikeTheCase: Drawing = {
  title: "Feet unlike the case",
  tells:
    "From below: a pale foot with bright screws on a dark bottom, and beside it the round shadow of another foot.",
  draw: (level) => {
    const bottom = box(14, 26, 212, 190);
    const foot = polygon([14, 26], [150, 26], [150, 58], [54, 58], [54, 150], [14, 150]);
    const shadow = ellipse(92, 112, 44, 44);
    return [
      body(bottom),
      toned(`${bottom}${foot}${shadow}`, "dark"),
      edge(bottom),
      knife(shadow),
      body(dot(92, 112, 11), "edge"),
      toned(dot(92, 112, 11), "dots"),
      body(foot),
      ...(level === "full" ? [detail(`${grain(58, 30, 88, 24, 2)}${grain(18, 62, 32, 84, 2, "y")}`)] : []),
      ...slottedHead(116, 42, 9),
      ...slottedHead(34, 116, 9),
      edge(line([14, 26], [54, 58])),
      ...(level === "full" ? [detail(row(3, (i) => line([66 + 10 * i, 61], [70 + 10 * i, 66])))] : []),
      tell([196, 130], [138, 116]),
      tell([186, 12], [128, 40]),
      ...(level === "full" ? [says(176, 192, "case bottom")] : []),
    ];
  },
};
