import { box, line } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, knife, span, tell, toned } from "../mark.ts";

export const veneerOverPlugs: Drawing = {
  title: "Veneer over plugged holes",
  tells: "Cut through: the plugs stop under the veneer, which was laid on wood already used.",
  draw: () => [
    ...cut(box(16, 92, 208, 84)),
    body("M62 92H90V176H62z"),
    toned("M62 92H90V176H62z", "dark"),
    body("M150 92H178V176H150z"),
    toned("M150 92H178V176H150z", "dark"),
    ...cut(box(16, 78, 208, 14)),
    tell([36, 34], [74, 88]),
    tell([206, 34], [166, 88]),
  ],
};

export const thinVeneerOnOldCore: Drawing = {
  title: "Thin veneer on an older core",
  tells: "A paper-thin sheet lies on a core with an older hole and a darkened face; it sinks into the hole.",
  draw: (level) => [
    body(box(16, 96, 208, 94)),
    toned(box(16, 96, 208, 16), "dark"),
    ...(level === "full"
      ? [detail(row(3, (i) => line([24, 128 + 18 * i], [206 - 14 * i, 130 + 18 * i])))]
      : []),
    body("M92 96H112L108 164H98z", "edge"),
    body("M16 91H224V96H114C108 96 106 100 102 100S96 96 90 96H16z", "edge"),
    span([190, 91], [190, 96]),
    tell([50, 40], [100, 98]),
    tell([220, 40], [192, 88]),
    tell([204, 222], [176, 106]),
  ],
};

/** Figure of one leaf that runs over three fronts: arches about one axis. */
const arches = (shift: number, count: number): string =>
  row(count, (i) => {
    const half = 96 - (74 / count) * i;
    const top = 26 + (96 / count) * i;
    const side = (s: -1 | 1) => `${120 + shift + s * half}`;
    return `M${side(-1)} 214C${side(-1)} ${top + 70} ${120 + shift - half * 0.6} ${top} ${120 + shift} ${top}S${side(1)} ${top + 70} ${side(1)} 214`;
  });

export const figureBroken: Drawing = {
  title: "Figure broken between fronts",
  tells: "The figure should run on from one front to the next; at the lowest it does not meet.",
  draw: (level) => {
    const front = (i: number) => box(16, 18 + 66 * i, 208, 58);
    const count = level === "small" ? 4 : 7;
    return [
      ...[0, 1].flatMap((i) => [body(front(i)), detail(arches(0, count), front(i))]),
      body(front(2)),
      detail(arches(24, count), front(2)),
      knife(line([25, 124], [25, 142]) + line([49, 150], [49, 168])),
      span([25, 146], [49, 146]),
      tell([120, 228], [56, 152]),
    ];
  },
};
