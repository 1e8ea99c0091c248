import { box, dot, line, polygon } from "../../pen.ts";
import { body, cut, type Drawing, edge, says, span, tell, toned } from "../mark.ts";

export const clenchedNail: Drawing = {
  title: "Nail clenched over",
  tells: "The point has come through the second board and is hammered over into the wood.",
  draw: () => [
    ...cut(box(16, 50, 208, 52)),
    ...cut(box(16, 102, 208, 52)),
    body(
      "M104 50H124L121 150C121 160 126 163 136 163L184 158L186 164L134 174C116 176 108 168 108 152z",
      "edge",
    ),
    body(polygon([86, 50], [94, 40], [112, 34], [132, 40], [142, 50]), "edge"),
    edge(line([94, 40], [114, 50], [112, 34])),
    tell([60, 214], [140, 172]),
    tell([200, 22], [134, 40]),
  ],
};

/** Holes of three kinds of nail, from above and cut through. */
export const nailHoles: Drawing = {
  title: "Empty nail holes",
  tells: "A square hole narrows on four sides, a rectangular one on two, a round one keeps its width.",
  draw: () => [
    body(box(14, 18, 212, 72)),
    ...[
      polygon([42, 44], [62, 44], [62, 64], [42, 64]),
      polygon([106, 48], [134, 48], [134, 60], [106, 60]),
      dot(188, 54, 9),
    ].flatMap((d) => [toned(d, "dark"), edge(d)]),
    ...cut(box(14, 112, 212, 92)),
    body(polygon([42, 112], [62, 112], [54, 190], [50, 190]), "edge"),
    body(polygon([106, 112], [134, 112], [126, 190], [114, 190]), "edge"),
    body(polygon([179, 112], [197, 112], [197, 176], [188, 190], [179, 176]), "edge"),
    says(52, 222, "square"),
    says(120, 222, "oblong"),
    says(188, 222, "round"),
    span([179, 102], [197, 102]),
    span([42, 102], [62, 102]),
    span([106, 102], [134, 102]),
  ],
};
