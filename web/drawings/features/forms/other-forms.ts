import { box, dot, ellipse, grain, line, type Point, polygon } from "../../pen.ts";
import { arc, open, row, run, turnedOn } from "../curves.ts";
import { body, type Drawing, detail, edge } from "../mark.ts";

export const sixBoardChest: Drawing = {
  title: "Six-board chest",
  tells: "Six boards nailed together: lid, front, back, two ends that run down as feet, and a bottom.",
  draw: (level) => [
    body(polygon([16, 76], [186, 76], [222, 50], [52, 50])),
    body(box(16, 76, 170, 10)),
    body(polygon([186, 76], [222, 50], [222, 60], [186, 86]), "edge"),
    body(polygon([182, 88], [216, 63], [216, 176], [208, 182], [199, 166], [190, 195], [182, 201])),
    body(box(20, 86, 162, 86)),
    body(polygon([20, 86], [36, 86], [36, 172], [36, 201], [28, 186], [20, 201]), "edge"),
    ...(level === "full"
      ? [detail(grain(42, 92, 134, 74, 6)), edge([98, 128, 160].map((y) => dot(28, y, 2)).join(""))]
      : []),
  ],
};

export const tripodTable: Drawing = {
  title: "Tripod table",
  tells: "A round top on one turned pillar with three spreading legs.",
  draw: () => [
    body("M108 150C84 152 60 168 44 206C40 212 30 212 22 218V224H52C62 214 70 188 112 176z"),
    body("M132 150C156 152 180 168 196 206C200 212 210 212 218 218V224H188C178 214 170 188 128 176z"),
    body(
      turnedOn(
        120,
        run(
          [9, 70],
          ["h", 13, 78],
          ["v", 8, 86],
          ["c", 7, 104, 19, 116, 18, 136],
          ["c", 17, 148, 12, 152, 12, 158],
          ["l", 14, 184],
        ),
      ),
    ),
    body("M112 160C110 184 108 200 106 214C104 222 112 228 120 228S136 222 134 214C132 200 130 184 128 160z"),
    body(box(92, 60, 56, 10), "edge"),
    body(ellipse(120, 50, 104, 14)),
    edge("M16 50C16 62 62 68 120 68S224 62 224 50"),
    body(ellipse(120, 48, 104, 14)),
    detail("M40 46C90 42 150 52 204 46M56 54C110 50 150 58 190 53"),
  ],
};

export const cardTable: Drawing = {
  title: "Card table",
  tells: "A folding top whose upper leaf opens over a swinging leg; seen from the front and from above.",
  draw: (level) => [
    body(`${arc(120, 24, 88, 0, 180, 62)}z`),
    detail(level === "full" ? "M52 34H188M62 50H178M84 66H156" : ""),
    body(box(22, 112, 196, 7)),
    body(box(22, 119, 196, 7)),
    body(box(34, 126, 172, 24)),
    ...[38, 188].map((x) => body(polygon([x, 126], [x + 14, 126], [x + 10, 228], [x + 4, 228]))),
    ...[88, 138].map((x) => body(polygon([x, 150], [x + 12, 150], [x + 8, 222], [x + 4, 222]), "edge")),
  ],
};

/** A stool of turned legs and pegged rails. */
export const joinedStool: Drawing = {
  title: "Joined stool",
  tells: "Four turned legs, splayed, pegged to rails above and stretchers below.",
  draw: () => {
    const leg = (x: number, lean: number) =>
      body(
        `M${x - 11} 58H${x + 11}V96L${x + 6} 102C${x + 14} 112 ${x + 10 + lean * 0.4} 132 ${x + 5 + lean * 0.5} 150L${x + 11 + lean * 0.6} 158V184L${x + 8 + lean * 0.8} 190C${x + 14 + lean} 196 ${x + 10 + lean} 206 ${x + 6 + lean} 212H${x - 6 + lean}C${x - 10 + lean} 206 ${x - 14 + lean} 196 ${x - 8 + lean * 0.8} 190L${x - 11 + lean * 0.6} 184V158L${x - 5 + lean * 0.5} 150C${x - 10 + lean * 0.4} 132 ${x - 14} 112 ${x - 6} 102L${x - 11} 96z`,
      );
    return [
      body(box(30, 42, 180, 16)),
      detail(grain(36, 44, 168, 12, 2)),
      body(box(62, 62, 116, 30)),
      body(box(58, 160, 124, 20)),
      leg(58, -12),
      leg(182, 12),
      edge(dot(54, 70, 2.4) + dot(62, 84, 2.4) + dot(186, 70, 2.4) + dot(178, 84, 2.4)),
      edge("M72 92C86 88 96 100 106 92H134C144 100 154 88 168 92"),
    ];
  },
};

export const windsorChair: Drawing = {
  title: "Windsor chair",
  tells: "Legs and back sticks are all let into holes of a thick wooden seat.",
  draw: (level) => {
    const sticks = level === "small" ? 5 : 9;
    const top = (t: number): Point => [120 + 62 * t, 22 + 34 * t * t];
    const foot = (t: number): Point => [120 + 46 * t, 126];
    return [
      edge(
        row(sticks, (i) => {
          const t = (2 * (i + 1)) / (sticks + 1) - 1;
          const [x0, y0] = top(t);
          const [x1, y1] = foot(t);
          return line([x0 - 1.4, y0], [x1 - 2, y1]) + line([x0 + 1.4, y0], [x1 + 2, y1]);
        }),
      ),
      body(
        `${open(run([64, 128], ["c", 40, 40, 66, 12, 120, 12], ["c", 174, 12, 200, 40, 176, 128]))}L170 128C194 46 168 20 120 20C72 20 46 46 70 128z`,
      ),
      ...[-1, 1].map((s) => body(`M${120 + s * 60} 84L${120 + s * 96} 92V100L${120 + s * 60} 92z`, "edge")),
      ...[-1, 1].map((s) =>
        body(
          `M${120 + s * 88} 98C${120 + s * 94} 108 ${120 + s * 82} 116 ${120 + s * 84} 128H${120 + s * 76}C${120 + s * 76} 116 ${120 + s * 84} 108 ${120 + s * 80} 97z`,
          "edge",
        ),
      ),
      ...[-1, 1].flatMap((s) => [
        body(
          `M${120 + s * 56} 142L${120 + s * 66} 142C${120 + s * 76} 160 ${120 + s * 74} 174 ${120 + s * 78} 182C${120 + s * 86} 196 ${120 + s * 84} 212 ${120 + s * 92} 230H${120 + s * 84}C${120 + s * 76} 212 ${120 + s * 74} 198 ${120 + s * 68} 184C${120 + s * 66} 172 ${120 + s * 60} 160 ${120 + s * 56} 142z`,
        ),
        body(`M${120 + s * 30} 142H${120 + s * 38}L${120 + s * 50} 218H${120 + s * 45}z`, "edge"),
      ]),
      edge(line([46, 188], [194, 188]) + line([46, 193], [194, 193])),
      body("M30 128C60 122 180 122 210 128C214 136 206 144 190 144H50C34 144 26 136 30 128z"),
      detail("M48 132C90 140 150 140 192 132"),
    ];
  },
};
