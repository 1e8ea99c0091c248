import { box, line, polygon } from "../../pen.ts";
import { arc, closed, run } from "../curves.ts";
import { body, cut, type Drawing, edge, knife, type Mark, says, span, tell } from "../mark.ts";
import { swept } from "../oblique.ts";

/**
 * A drawer front and the rail above it, cut through from front to back: the room is to the right.
 * `FACE` is where the face of the case stands.
 */
const FACE = 138;
const RAIL = { top: 22, foot: 74 } as const;
const GAP = 6;
const TOP = RAIL.foot + GAP;
const FOOT = 220;

const rail = (): readonly Mark[] => cut(box(30, RAIL.top, FACE - 30, RAIL.foot - RAIL.top));
const words = (): readonly Mark[] => [says(84, 14, "rail"), says(60, 234, "drawer front")];

export const lippedFront: Drawing = {
  title: "Lipped drawer front",
  tells: "The front overlaps its opening with a moulded lip and is rebated behind it.",
  draw: () => {
    const lip = closed(
      run([FACE + 4, 56], ["l", FACE + 10, 56], ["h", FACE + 34, 84], ["l", FACE + 34, FOOT]),
      [70, FOOT],
      [70, TOP],
      [FACE + 4, TOP],
    );
    return [
      ...rail(),
      ...cut(lip),
      ...words(),
      knife(line([FACE + 4, 56], [FACE + 4, TOP])),
      span([FACE + 42, 56], [FACE + 42, TOP]),
      tell([226, 24], [FACE + 24, 62]),
    ];
  },
};

export const ovoloLippedFront: Drawing = {
  title: "Ovolo-lipped drawer front",
  tells: "A quarter-round lip with a fillet runs round the drawer and overlaps the case.",
  draw: () => [
    ...rail(),
    ...cut(
      closed(
        run(
          [FACE + 4, 58],
          ["h", FACE + 30, 86],
          ["l", FACE + 30, 92],
          ["l", FACE + 36, 92],
          ["l", FACE + 36, FOOT],
        ),
        [70, FOOT],
        [70, TOP],
        [FACE + 4, TOP],
      ),
    ),
    ...words(),
    knife(`M${FACE + 4} 58C${FACE + 18.4} 58 ${FACE + 30} 70.5 ${FACE + 30} 86`),
    tell([226, 30], [FACE + 24, 68]),
  ],
};

export const halfRoundCaseMoulding: Drawing = {
  title: "Half-round moulding on the case",
  tells: "A half-round, later a double one, covers the rail between the drawers; its grain runs across.",
  draw: (level) => {
    const single = run([FACE, 34], ["h", FACE + 22, 52], ["v", FACE, 70]);
    const top = 132;
    const double = run(
      [FACE, top],
      ["h", FACE + 18, top + 15],
      ["v", FACE, top + 30],
      ["h", FACE + 18, top + 45],
      ["v", FACE, top + 60],
    );
    const back = { dx: 62, dy: -16 };
    return [
      ...cut(box(30, 28, FACE - 30, 48)),
      body(swept(single, back.dx, back.dy)),
      ...cut(closed(single)),
      ...cut(box(30, top - 4, FACE - 30, 68)),
      body(swept(double, back.dx, back.dy)),
      edge(line([FACE, top + 30], [FACE + back.dx, top + 30 + back.dy])),
      ...cut(closed(double)),
      ...(level === "full"
        ? [edge(`M${FACE + 38} ${60 - 8}C${FACE + 42} 44 ${FACE + 40} 30 ${FACE + 30} 24`)]
        : []),
      says(84, 96, "single"),
      says(84, 216, "double"),
      tell([226, 96], [FACE + 26, 60]),
      tell([226, 222], [FACE + 20, top + 46]),
    ];
  },
};

/** A bead of half-round nose, `out` proud of the face. */
const bead = (x: number, y: number, long: number, thick: number): string =>
  `M${x} ${y}H${x + long}A${thick / 2} ${thick / 2} 0 0 1 ${x + long} ${y + thick}H${x}z`;

export const cockbeadOnAperture: Drawing = {
  title: "Cockbead on the opening",
  tells: "A small projecting bead is fixed to the case round the opening; the drawer front is plain.",
  draw: () => [
    ...cut(
      polygon(
        [30, RAIL.top],
        [FACE, RAIL.top],
        [FACE, RAIL.foot - 16],
        [96, RAIL.foot - 16],
        [96, RAIL.foot],
        [30, RAIL.foot],
      ),
    ),
    ...cut(bead(96, RAIL.foot - 16, 54, 16)),
    ...cut(box(70, TOP, FACE - 70, FOOT - TOP)),
    ...words(),
    tell([226, 34], [FACE + 20, RAIL.foot - 10]),
  ],
};

export const cockbeadOnDrawer: Drawing = {
  title: "Cockbead on the drawer front",
  tells: "A small projecting bead is let into the edge of the drawer front itself.",
  draw: () => [
    ...rail(),
    ...cut(polygon([70, TOP], [96, TOP], [96, TOP + 16], [FACE, TOP + 16], [FACE, FOOT], [70, FOOT])),
    ...cut(bead(96, TOP, 54, 16)),
    ...words(),
    tell([226, 50], [FACE + 20, TOP + 6]),
  ],
};

/** A curved front from above, its upper edge laid bare: blocks like bricks under the veneer. */
export const stackedCoreFront: Drawing = {
  title: "Curved front with a built-up core",
  tells: "Blocks are laid like bricks under the veneer; their joints show at the top edge.",
  draw: (level) => {
    const outer = 190;
    const cx = 120;
    const cy = 240;
    const radial = (r0: number, r1: number, degrees: number) => {
      const a = (degrees * Math.PI) / 180;
      return line(
        [cx + r0 * Math.cos(a), cy + r0 * Math.sin(a)],
        [cx + r1 * Math.cos(a), cy + r1 * Math.sin(a)],
      );
    };
    const band = (r0: number, r1: number) =>
      `${arc(cx, cy, r1, -122, -58)}${arc(cx, cy, r0, -58, -122).replace("M", "L")}z`;
    const front = (down: number) =>
      `${arc(cx, cy, outer, -122, -58)}${arc(cx, cy + down, outer, -58, -122).replace("M", "L")}z`;
    const joint = (degrees: number, v0: number, v1: number) => {
      const a = (degrees * Math.PI) / 180;
      const px = cx + outer * Math.cos(a);
      const py = cy + outer * Math.sin(a);
      return line([px, py + v0], [px, py + v1]);
    };
    return [
      body(front(96)),
      edge([32, 64].map((v) => arc(cx, cy + v, outer, -122, -58)).join("")),
      edge(
        [-106, -84, -66].map((d) => joint(d, 0, 32) + joint(d, 64, 96)).join("") +
          [-114, -95, -75].map((d) => joint(d, 32, 64)).join(""),
      ),
      ...cut(band(outer - 40, outer - 5)),
      body(band(outer - 5, outer)),
      edge([-106, -84, -66].map((d) => radial(outer - 40, outer - 5, d)).join("")),
      tell(
        [190, 20],
        [
          cx + (outer - 20) * Math.cos((-66 * Math.PI) / 180),
          cy + (outer - 24) * Math.sin((-66 * Math.PI) / 180),
        ],
      ),
      ...(level === "full" ? [says(120, 30, "veneer"), tell([96, 36], [104, 50])] : []),
      tell(
        [220, 196],
        [cx + outer * Math.cos((-75 * Math.PI) / 180) + 2, cy + outer * Math.sin((-75 * Math.PI) / 180) + 50],
      ),
    ];
  },
};
