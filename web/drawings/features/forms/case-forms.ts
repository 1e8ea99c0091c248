import { box, dot, grain, line, polygon } from "../../pen.ts";
import { arc, row } from "../curves.ts";
import { body, type Drawing, detail, edge, type Mark } from "../mark.ts";

const knobs = (...at: readonly (readonly [number, number])[]): Mark =>
  edge(at.map(([x, y]) => dot(x, y, 3)).join(""));

export const sideboard: Drawing = {
  title: "Sideboard",
  tells:
    "A deep case on tall legs: a drawer in the middle over an arched space, cupboards or deep drawers at the ends.",
  draw: (level) => {
    const leg = (x: number): Mark =>
      body(polygon([x, 150], [x + 13, 150], [x + 9, 222], [x + 4, 222]), "edge");
    return [
      body(box(12, 64, 216, 9)),
      leg(76),
      leg(151),
      body("M18 73H222V150H18z"),
      body(box(26, 81, 50, 61), "edge"),
      body(box(164, 81, 50, 61), "edge"),
      body(box(86, 81, 68, 28), "edge"),
      body(`M86 150V132${"C96 112 144 112 154 132"}V150z`, "edge"),
      leg(18),
      leg(209),
      knobs([104, 95], [136, 95], [68, 112], [172, 112]),
      ...(level === "full"
        ? [
            detail(
              grain(28, 84, 46, 54, 3, "y") +
                grain(166, 84, 46, 54, 3, "y") +
                grain(90, 83, 60, 24, 2) +
                box(30, 85, 42, 53) +
                box(168, 85, 42, 53),
            ),
          ]
        : []),
    ];
  },
};

export const bookcase: Drawing = {
  title: "Bookcase",
  tells: "Shelves behind glazed doors with bars between the panes, on a lower case with solid doors.",
  draw: (level) => {
    const glass = (x: number): readonly Mark[] => [
      body(box(x, 40, 62, 106)),
      edge(box(x + 7, 47, 48, 92)),
      edge(
        line([x + 31, 47], [x + 31, 139]) +
          line([x + 7, 78], [x + 55, 78]) +
          line([x + 7, 108], [x + 55, 108]),
      ),
      ...(level === "full"
        ? [detail(row(3, (i) => line([x + 12 + 3 * i, 74 + 30 * i], [x + 22 + 3 * i, 56 + 30 * i])))]
        : []),
    ];
    return [
      body(polygon([42, 28], [198, 28], [192, 40], [48, 40])),
      body(box(54, 40, 132, 110)),
      ...glass(57),
      ...glass(121),
      body(box(42, 146, 156, 9)),
      body(box(46, 155, 148, 60)),
      ...[52, 122].flatMap((x) => [body(box(x, 161, 66, 48), "edge"), edge(box(x + 9, 169, 48, 32))]),
      body(box(40, 215, 160, 11)),
      knobs([116, 94], [124, 94], [114, 185], [126, 185]),
      ...(level === "full" ? [detail(grain(62, 172, 46, 26, 2, "y") + grain(132, 172, 46, 26, 2, "y"))] : []),
    ];
  },
};

export const clockCase: Drawing = {
  title: "Clock case",
  tells: "A hood round the dial that slides or lifts off, a narrow trunk with a long door, and a plinth.",
  draw: (level) => [
    body("M78 34C92 34 92 16 120 16S148 34 162 34V42H78z"),
    body(box(82, 42, 76, 62)),
    edge(`${arc(120, 64, 28, 180, 360)}V98H92z`),
    edge(dot(120, 74, level === "small" ? 18 : 22)),
    ...(level === "full"
      ? [
          detail(
            row(12, (i) => {
              const a = (i * Math.PI) / 6;
              return line(
                [120 + 18 * Math.cos(a), 74 + 18 * Math.sin(a)],
                [120 + 22 * Math.cos(a), 74 + 22 * Math.sin(a)],
              );
            }),
          ),
          edge(line([120, 74], [120, 60]) + line([120, 74], [130, 78])),
        ]
      : []),
    body(box(76, 104, 88, 7)),
    body(box(90, 111, 60, 66)),
    body(`M98 172V124${"C98 114 142 114 142 124"}V172z`, "edge"),
    body(polygon([90, 177], [150, 177], [160, 186], [80, 186])),
    body(box(80, 186, 80, 32)),
    body(box(74, 218, 92, 9)),
    ...(level === "full" ? [detail(grain(102, 126, 36, 42, 2, "y") + grain(86, 190, 68, 24, 2))] : []),
  ],
};

export const chestOnChest: Drawing = {
  title: "Chest-on-chest",
  tells: "Two chests of drawers, one standing on the other, on low feet.",
  draw: (level) => {
    const drawer = (x: number, y: number, width: number, height: number): readonly Mark[] => [
      body(box(x, y, width, height), "edge"),
      ...(level === "full" ? [detail(grain(x + 4, y + 2, width - 8, height - 4, 2))] : []),
    ];
    const pulls = (y: number, ...xs: readonly number[]): Mark =>
      edge(
        xs.map((x) => `M${x - 6} ${y - 2}C${x - 5} ${y + 5} ${x + 5} ${y + 5} ${x + 6} ${y - 2}`).join(""),
      );
    return [
      body(polygon([46, 16], [194, 16], [188, 28], [52, 28])),
      body(box(58, 28, 124, 90)),
      ...drawer(63, 33, 56, 21),
      ...drawer(122, 33, 55, 21),
      ...drawer(63, 58, 114, 25),
      ...drawer(63, 87, 114, 27),
      body(polygon([52, 118], [188, 118], [192, 126], [48, 126])),
      body(box(50, 126, 140, 76)),
      ...drawer(56, 131, 128, 31),
      ...drawer(56, 166, 128, 32),
      body("M46 202H194V226H172C172 214 164 210 156 208H84C76 210 68 214 68 226H46z"),
      pulls(44, 91, 149),
      pulls(71, 88, 152),
      pulls(101, 88, 152),
      pulls(147, 84, 156),
      pulls(182, 84, 156),
    ];
  },
};

export const cornerCupboard: Drawing = {
  title: "Corner cupboard",
  tells: "Made for a corner: a door between two canted sides; seen from above it is three-sided.",
  draw: (level) => [
    // From above.
    body(polygon([64, 14], [176, 14], [176, 30], [152, 54], [88, 54], [64, 30])),
    edge(polygon([64, 14], [176, 14], [120, 14])),
    ...(level === "full" ? [detail(line([64, 14], [120, 44], [176, 14]))] : []),
    // From the front.
    body(polygon([44, 76], [196, 76], [190, 88], [50, 88])),
    body(box(54, 88, 22, 124)),
    body(box(164, 88, 22, 124)),
    body(box(76, 88, 88, 124)),
    body(box(82, 95, 76, 110), "edge"),
    edge("M92 196V118C92 104 148 104 148 118V196z"),
    knobs([152, 150]),
    body(box(46, 212, 148, 13)),
    ...(level === "full" ? [detail(grain(98, 122, 44, 70, 3, "y"))] : []),
  ],
};
