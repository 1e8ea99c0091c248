import { box, dot, line, polygon } from "../../pen.ts";
import { closed, row, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, tell } from "../mark.ts";

export const ceramicKnob: Drawing = {
  title: "Ceramic knob",
  tells:
    "A glazed knob on a bolt with a nut; the glaze ends in a bare ring at the foot, and is often crazed.",
  draw: (level) => [
    body(dot(62, 104, 46)),
    edge(dot(62, 104, 33)),
    ...(level === "full"
      ? [
          detail(
            row(12, (i) => {
              const a = (i * Math.PI) / 6;
              const at = (r: number, turn: number): readonly [number, number] => [
                62 + r * Math.cos(a + turn),
                104 + r * Math.sin(a + turn),
              ];
              return line(at(36, -0.12), at(43, 0), at(36, 0.12));
            }) + "M44 92l10 8l-3 12M76 84l-6 12l10 6M60 122l8 -6l8 5",
          ),
        ]
      : []),
    body(dot(62, 104, 8), "edge"),
    ...cut(box(176, 18, 32, 184)),
    // The knob from the side: the bare foot against the front of the drawer.
    body(
      closed(
        run(
          [170, 90],
          ["c", 160, 88, 160, 72, 146, 62],
          ["c", 122, 56, 116, 84, 116, 104],
          ["c", 116, 124, 122, 152, 146, 146],
          ["c", 160, 136, 160, 120, 170, 118],
        ),
      ),
    ),
    body(polygon([170, 88], [176, 88], [176, 120], [170, 120]), "edge"),
    body(box(176, 99, 50, 10), "edge"),
    body(box(210, 90, 10, 28), "edge"),
    detail(row(level === "small" ? 2 : 5, (i) => line([181 + 5 * i, 99], [184 + 5 * i, 109]))),
    knife(line([173, 84], [173, 124])),
    tell([140, 216], [170, 128]),
    tell([226, 28], [216, 86]),
  ],
};
