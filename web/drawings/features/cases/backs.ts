import { box, dot, grain, line, polygon } from "../../pen.ts";
import { body, type Drawing, detail, edge, knife, tell } from "../mark.ts";

export const nailedBack: Drawing = {
  title: "Back of nailed boards",
  tells: "Wide boards of different width are nailed all round into a rebate; gaps have opened between them.",
  draw: (level) => {
    const edges = [30, 78, 144, 210];
    return [
      body(box(16, 14, 208, 212)),
      body(box(30, 26, 180, 188), "edge"),
      ...edges.slice(0, -1).flatMap((x, i) => {
        const w = (edges[i + 1] as number) - x - 3;
        return [
          body(box(x, 26, w, 188), "edge"),
          ...(level === "full" ? [detail(grain(x + 3, 34, w - 6, 172, i === 0 ? 2 : 3, "y"))] : []),
          edge([x + 9, x + w - 9].map((nx) => dot(nx, 33, 2.4) + dot(nx, 207, 2.4)).join("")),
        ];
      }),
      tell([110, 6], [76, 40]),
      tell([228, 122], [202, 206]),
    ];
  },
};

/** A frame of stiles and rails about panels, pegged at each joint. */
const framed = (columns: number, rows: number) => {
  const stile = 20;
  const w = (208 - stile * (columns + 1)) / columns;
  const h = (204 - stile * (rows + 1)) / rows;
  const cells = Array.from({ length: columns * rows }, (_, k) => ({
    x: 16 + stile + (k % columns) * (w + stile),
    y: 16 + stile + Math.floor(k / columns) * (h + stile),
  }));
  return { w, h, cells };
};

export const panelledBack: Drawing = {
  title: "Back of framed panels",
  tells: "Rails and stiles hold panels whose edges are bevelled into grooves.",
  draw: (level) => {
    const { w, h, cells } = framed(2, 2);
    return [
      body(box(16, 16, 208, 204)),
      ...cells.flatMap(({ x, y }) => [
        body(box(x, y, w, h)),
        edge(box(x + 11, y + 11, w - 22, h - 22)),
        detail(
          line([x, y], [x + 11, y + 11]) +
            line([x + w, y], [x + w - 11, y + 11]) +
            line([x, y + h], [x + 11, y + h - 11]) +
            line([x + w, y + h], [x + w - 11, y + h - 11]),
        ),
        ...(level === "full" ? [detail(grain(x + 14, y + 14, w - 28, h - 28, 4, "y"))] : []),
      ]),
      edge(line([36, 16], [36, 220]) + line([204, 16], [204, 220])),
      tell([120, 234], [66, 190]),
    ];
  },
};

export const joinedCase: Drawing = {
  title: "Joined case",
  tells: "Rails are tenoned and pegged into stiles round panels; the stiles run down as feet.",
  draw: (level) => {
    const { w, h, cells } = framed(3, 1);
    const peg = (x: number, y: number): string => dot(x, y, 2.6);
    return [
      body(box(16, 16, 20, 218)),
      body(box(204, 16, 20, 218)),
      body(box(36, 16, 168, 176)),
      ...cells.map(({ x, y }) => body(box(x, y, w, h - 28))),
      ...(level === "full"
        ? cells.map(({ x, y }) => detail(grain(x + 3, y + 4, w - 6, h - 36, 3, "y")))
        : []),
      edge(line([36, 36], [204, 36]) + line([36, 172], [204, 172])),
      edge([26, 214].map((x) => [22, 30, 178, 186].map((y) => peg(x, y)).join("")).join("")),
      edge(
        cells
          .slice(1)
          .map(
            ({ x }) =>
              line([x - 20, 36], [x - 20, 172]) +
              peg(x - 14, 30) +
              peg(x - 6, 30) +
              peg(x - 14, 178) +
              peg(x - 6, 178),
          )
          .join(""),
      ),
      tell([120, 4], [30, 19]),
      tell([120, 228], [40, 220]),
    ];
  },
};

export const diamondPointPanel: Drawing = {
  title: "Panel carved in diamond points",
  tells: "Facets rise to a point in every lozenge and triangle of the panel.",
  draw: () => {
    const face = box(24, 24, 192, 192);
    return [
      body(face),
      edge(box(34, 34, 172, 172)),
      edge(polygon([120, 34], [206, 120], [120, 206], [34, 120])),
      edge(line([120, 34], [120, 206]) + line([34, 120], [206, 120])),
      ...[
        [34, 34, 1, 1],
        [206, 34, -1, 1],
        [34, 206, 1, -1],
        [206, 206, -1, -1],
      ].map(([x, y, sx, sy]) =>
        detail(
          line(
            [x as number, y as number],
            [(x as number) + 27 * (sx as number), (y as number) + 27 * (sy as number)],
          ) +
            line(
              [(x as number) + 86 * (sx as number), y as number],
              [(x as number) + 27 * (sx as number), (y as number) + 27 * (sy as number)],
              [x as number, (y as number) + 86 * (sy as number)],
            ),
        ),
      ),
      knife(line([114, 120], [126, 120]) + line([120, 114], [120, 126])),
      tell([228, 8], [124, 116]),
    ];
  },
};
