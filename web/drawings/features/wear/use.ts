import { box, dot, grain, line } from "../../pen.ts";
import { closed, open, run } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";
import { dashes } from "../oblique.ts";

export const wornDrawerSide: Drawing = {
  title: "Worn lower edge of a drawer side",
  tells: "The edge is hollowed and polished, most near the front and back, where the drawer was tilted.",
  draw: (level) => {
    const worn = run(
      [20, 150],
      ["c", 24, 128, 44, 134, 70, 148],
      ["c", 110, 158, 160, 158, 184, 154],
      ["c", 200, 150, 214, 146, 220, 158],
    );
    return [
      body(closed(worn, [220, 46], [20, 46])),
      ...(level === "full" ? [detail(grain(28, 52, 184, 70, 5))] : []),
      edge(dashes([20, 164], [220, 164])),
      knife(open(worn)),
      says(34, 40, "front", "start"),
      span([42, 136], [42, 164]),
      tell([70, 216], [52, 142]),
    ];
  },
};

export const wornRunner: Drawing = {
  title: "Worn track in a runner",
  tells: "A groove and polish where the drawer has run, deepest in the front third.",
  draw: (level) => {
    const track = run([20, 102], ["c", 24, 120, 50, 126, 86, 118], ["c", 130, 108, 176, 104, 222, 103]);
    return [
      body(box(14, 18, 212, 176), "edge"),
      ...(level === "full" ? [detail(grain(20, 22, 200, 70, 5) + grain(20, 150, 200, 40, 3))] : []),
      body(closed(track, [222, 138], [20, 138])),
      edge(dashes([20, 102], [222, 102])),
      ...[70, 150].map((x) => body(dot(x, 129, 3.5), "edge")),
      knife(open(track)),
      span([50, 102], [50, 123]),
      says(24, 216, "front", "start"),
      tell([110, 60], [70, 114]),
    ];
  },
};

export const wornStretcher: Drawing = {
  title: "Worn front stretcher",
  tells: "Feet have hollowed the upper side, in two places; the lower side keeps its turning.",
  draw: (level) => {
    const upper = run(
      [44, 94],
      ["c", 62, 90, 74, 92, 84, 104],
      ["c", 92, 114, 102, 108, 112, 98],
      ["c", 116, 92, 124, 92, 128, 98],
      ["c", 138, 108, 148, 116, 158, 104],
      ["c", 168, 92, 180, 90, 196, 94],
    );
    return [
      body(box(14, 16, 30, 212)),
      body(box(196, 16, 30, 212)),
      body(
        `${open(upper)}V118C180 124 168 128 154 128C140 128 132 138 120 138S100 128 86 128C72 128 60 124 44 118z`,
      ),
      edge("M116 92V138M124 92V138"),
      edge(level === "full" ? dashes([66, 88], [112, 84]) + dashes([128, 84], [174, 88]) : ""),
      knife(open(upper)),
      tell([80, 40], [88, 104]),
      tell([168, 40], [152, 106]),
    ];
  },
};

/** One leg with edges that differ, cut across at two heights. */
export const wearAtPointsOfUse: Drawing = {
  title: "Edges worn where they are used",
  tells:
    "Cut across: the edge that hands and feet pass is rounded and hollow; those out of reach are still sharp.",
  draw: (level) => [
    ...cut("M40 60H150C186 60 196 74 194 106V200H40z"),
    edge(dashes([150, 60], [194, 60]) + dashes([194, 60], [194, 106])),
    knife("M150 60C186 60 196 74 194 106"),
    ...(level === "full" ? [says(100, 226, "sheltered"), says(150, 46, "in reach", "end")] : []),
    tell([228, 24], [184, 70]),
    tell([14, 226], [38, 202]),
  ],
};

export const sharpArrises: Drawing = {
  title: "Sharp edges where there should be wear",
  tells: "Cut across: every edge is as crisp as it left the plane, also where hands and feet must pass.",
  draw: () => [
    ...cut(box(46, 50, 148, 148)),
    tell([226, 22], [197, 48]),
    tell([14, 22], [43, 48]),
    tell([226, 226], [197, 200]),
    tell([14, 226], [43, 200]),
  ],
};

export const wearTooEven: Drawing = {
  title: "Wear too even",
  tells: "Cut across: all four edges are rounded alike, also those that no one can touch.",
  draw: () => {
    const r = 30;
    return [
      ...cut(
        `M${46 + r} 50H${194 - r}A${r} ${r} 0 0 1 194 ${50 + r}V${198 - r}A${r} ${r} 0 0 1 ${194 - r} 198H${46 + r}A${r} ${r} 0 0 1 46 ${198 - r}V${50 + r}A${r} ${r} 0 0 1 ${46 + r} 50z`,
      ),
      tell([226, 22], [188, 56]),
      tell([14, 22], [52, 56]),
      tell([226, 226], [188, 192]),
      tell([14, 226], [52, 192]),
    ];
  },
};

export const unwornRunner: Drawing = {
  title: "Runner without a worn track",
  tells: "The drawer side is worn hollow, the runner under it is straight: they have not worn together.",
  draw: (level) => {
    const worn = run([20, 118], ["c", 30, 96, 58, 104, 96, 116], ["c", 150, 124, 190, 120, 220, 118]);
    return [
      body(closed(worn, [220, 30], [20, 30])),
      ...(level === "full" ? [detail(grain(28, 36, 184, 56, 4))] : []),
      body(box(20, 132, 204, 36)),
      ...[70, 150].map((x) => body(dot(x, 150, 3.5), "edge")),
      knife(line([14, 132], [230, 132])),
      tell([120, 216], [100, 134]),
      tell([20, 206], [44, 108]),
    ];
  },
};

export const galleriesLaidOpen: Drawing = {
  title: "Insect galleries laid open",
  tells: "Channels run along the surface in place of round exit holes: wood was cut away after the insect.",
  draw: (level) => [
    body(box(14, 36, 212, 168)),
    ...(level === "full" ? [detail(grain(18, 42, 204, 156, 7))] : []),
    edge(
      "M50 80C78 70 96 92 128 82S168 88 178 78M50 90C78 80 96 102 128 92S168 98 178 88M50 80a5 5 0 0 0 0 10M178 78a5 5 0 0 1 0 10",
    ),
    edge(
      "M84 145C104 133 130 157 162 143M84 155C104 143 130 167 162 153M84 145a5 5 0 0 0 0 10M162 143a5 5 0 0 1 0 10",
    ),
    ...[
      [196, 120],
      [60, 182],
      [204, 178],
    ].map(([x, y]) => body(dot(x as number, y as number, 4.5), "edge")),
    tell([206, 16], [150, 80]),
    tell([120, 226], [122, 164]),
  ],
};

export const straightWormHoles: Drawing = {
  title: "Drilled worm holes",
  tells:
    "Cut through: a drilled hole goes straight in (left); a true exit hole bends after a few millimetres (right).",
  draw: () => [
    ...cut(box(14, 56, 212, 150)),
    body("M56 56H66V172H56z", "edge"),
    body("M88 56H98V172H88z", "edge"),
    body(
      "M160 56H170C170 84 190 88 196 104C204 128 176 134 178 160L168 160C166 128 192 126 186 108C180 94 160 92 160 56z",
      "edge",
    ),
    tell([40, 22], [59, 54]),
    tell([196, 22], [168, 54]),
  ],
};
