import { box, dot, grain, line, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { keyhole } from "../locks/locks.ts";
import { body, cut, type Drawing, detail, edge, knife, says, span, tell, toned } from "../mark.ts";

export const shadowOfLostBlock: Drawing = {
  title: "Shadow of a lost block",
  tells:
    "A clean patch with straight edges and old glue, where nothing lies now; a block still in place beside it.",
  draw: (level) => [
    body(box(14, 30, 212, 176)),
    toned(`${box(14, 30, 212, 176)}${box(46, 66, 46, 96)}`, "dark"),
    edge(box(14, 30, 212, 176)),
    knife(box(46, 66, 46, 96)),
    ...(level === "full"
      ? [detail("M52 78c8 4 20 -3 34 2M54 108c10 -4 20 4 32 0M52 140c12 3 20 -2 34 1")]
      : []),
    body(box(148, 66, 46, 96)),
    body(polygon([194, 66], [206, 78], [206, 174], [194, 162]), "edge"),
    body(polygon([148, 162], [194, 162], [206, 174], [160, 174]), "edge"),
    tell([110, 16], [86, 64]),
    tell([30, 226], [48, 164]),
  ],
};

export const stepOfOxidation: Drawing = {
  title: "Step of oxidation with a straight edge",
  tells: "Dark wood meets pale along a straight line where nothing lies now.",
  draw: () => {
    const whole = box(14, 40, 212, 160);
    return [
      body(whole),
      toned(box(14, 40, 122, 160), "dark"),
      edge(whole),
      detail(grain(142, 46, 78, 148, 5)),
      knife(line([136, 26], [136, 214])),
      tell([200, 22], [139, 34]),
    ];
  },
};

export const scarsOfLostShelf: Drawing = {
  title: "Scars of a lost shelf",
  tells: "A clean band and a filled groove cross the inside of the case side, where no shelf is now.",
  draw: (level) => [
    body(box(40, 16, 172, 204)),
    toned(`${box(40, 16, 172, 204)}${box(40, 100, 172, 20)}`, "dots"),
    edge(box(40, 16, 172, 204)),
    body(box(40, 100, 172, 20)),
    ...(level === "full" ? [detail(row(6, (i) => line([52 + 26 * i, 102], [56 + 26 * i, 118])))] : []),
    ...[160].flatMap((y) => [...cut(box(24, y, 36, 14)), body(box(60, y, 152, 14))]),
    tell([226, 66], [206, 98]),
    tell([20, 66], [44, 98]),
  ],
};

export const hingeRecessWithoutLeaf: Drawing = {
  title: "Hinge recess without a leaf",
  tells: "A recess of hinge size with screw holes, and nothing hung in it; note its size.",
  draw: (level) => [
    body(box(60, 14, 116, 212)),
    ...(level === "full" ? [detail(grain(66, 20, 104, 200, 4, "y"))] : []),
    body("M60 76H104V160H60z"),
    edge("M66 82H104M66 82V154H104"),
    ...[96, 118, 140].flatMap((y, i) => [
      toned(dot(i === 1 ? 92 : 80, y, 5), "dark"),
      edge(dot(i === 1 ? 92 : 80, y, 5)),
    ]),
    span([42, 76], [42, 160]),
    tell([210, 60], [107, 84]),
  ],
};

export const filledMortises: Drawing = {
  title: "Filled mortises",
  tells: "Patches of mortise size in a leg where no rail now enters.",
  draw: (level) => {
    const patch = (y: number) => box(98, y, 26, 58);
    return [
      body(polygon([78, 12], [146, 12], [140, 228], [84, 228])),
      body(polygon([146, 12], [172, 2], [164, 218], [140, 228]), "edge"),
      ...(level === "full" ? [detail(line([88, 20], [92, 220]) + line([134, 20], [132, 220]))] : []),
      ...[40, 148].flatMap((y) => [
        body(patch(y)),
        detail(row(4, (i) => line([101, y + 10 + 13 * i], [121, y + 8 + 13 * i]))),
      ]),
      tell([30, 40], [96, 62]),
      tell([30, 200], [96, 178]),
    ];
  },
};

export const roundPlugs: Drawing = {
  title: "Perfectly round plugs with clean walls",
  tells:
    "Circular, smooth and of one size (left): cut by machine. A shaved peg (right) is many-sided and tapers.",
  draw: () => [
    ...cut(box(14, 92, 212, 96)),
    body(box(46, 92, 40, 96)),
    ...[154].map((x) => body(polygon([x - 4, 92], [x + 40, 92], [x + 30, 188], [x + 6, 188]))),
    body(dot(66, 48, 20)),
    body(polygon([152, 44], [162, 31], [178, 30], [192, 42], [191, 57], [178, 68], [162, 66], [153, 57])),
    detail(
      line([60, 100], [60, 182]) +
        line([72, 100], [72, 182]) +
        line([164, 100], [168, 182]) +
        line([182, 100], [178, 182]),
    ),
    span([46, 204], [86, 204]),
    tell([110, 26], [86, 42]),
    tell([226, 26], [194, 44]),
  ],
};

export const lostLockHole: Drawing = {
  title: "Hole of a lost lock or escutcheon",
  tells: "Plug or hole on the line of the keyhole, inside the outline of a plate or lock case.",
  draw: (level) => [
    body(box(14, 40, 212, 156)),
    ...(level === "full" ? [detail(grain(18, 46, 204, 144, 6))] : []),
    body(
      "M120 56C130 66 146 68 148 84C158 92 154 112 144 118C142 136 130 142 120 154C110 142 98 136 96 118C86 112 82 92 92 84C94 68 110 66 120 56z",
      "detail",
    ),
    toned(
      "M120 56C130 66 146 68 148 84C158 92 154 112 144 118C142 136 130 142 120 154C110 142 98 136 96 118C86 112 82 92 92 84C94 68 110 66 120 56z",
      "dots",
    ),
    body(keyhole(120, 96, 1.2)),
    body(dot(120, 68, 4), "edge"),
    body(dot(120, 142, 4), "edge"),
    knife(line([120, 22], [120, 60]) + line([120, 158], [120, 214])),
    tell([206, 22], [150, 88]),
  ],
};

export const contactLineOfDrawer: Drawing = {
  title: "Underside of a drawer bottom",
  tells: "The wood is dark from air, with two clean stripes where it ran on the rails or runners.",
  draw: () => {
    const whole = box(16, 30, 208, 172);
    const stripes = box(34, 30, 16, 172) + box(190, 30, 16, 172);
    return [
      body(whole),
      toned(whole + stripes, "dark"),
      edge(whole),
      edge(stripes),
      body(box(16, 186, 208, 20)),
      says(120, 226, "front"),
      knife(line([34, 20], [34, 186]) + line([50, 20], [50, 186])),
      tell([80, 14], [52, 26]),
      tell([160, 14], [192, 40]),
    ];
  },
};
