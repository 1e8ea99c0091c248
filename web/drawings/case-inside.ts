import { type DrawerRow, drawerOpenings } from "./case-front.ts";
import { box, grain, line } from "./pen.ts";
import { type Shape, shape } from "./shape.ts";

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A case seen from the front with its drawers taken out: back inside, blades, dustboards, runners, sides. */
export function caseInside(prefix: string, whole: Area, inset: number, rows: readonly DrawerRow[]): Shape[] {
  const inner = { x: whole.x + inset, y: whole.y + 5, width: whole.width - 2 * inset };
  const openings = drawerOpenings(inner.x, inner.y, inner.width, rows);
  const firsts = openings.map((row) => row[0] as Area);
  const back = firsts
    .map(({ y, height }) => box(inner.x + 14, y + 4, inner.width - 28, height - 13))
    .join("");
  const runners = firsts
    .map(
      ({ y, height }) =>
        box(inner.x, y + height - 9, 14, 4) + box(inner.x + inner.width - 14, y + height - 9, 14, 4),
    )
    .join("");
  const dust = firsts
    .map(({ y, height }) => {
      const foot = y + height;
      return `M${inner.x} ${foot}L${inner.x + 14} ${foot - 9}H${inner.x + inner.width - 14}L${inner.x + inner.width} ${foot}z`;
    })
    .join("");
  const blades = firsts
    .slice(0, -1)
    .map(({ y, height }) => box(inner.x, y + height, inner.width, 4))
    .join("");
  const outer = box(whole.x, whole.y, whole.width, whole.height);
  const holes = firsts.map(({ y, height }) => box(inner.x, y, inner.width, height)).join("");
  return [
    shape(`${prefix}case`, "part.carcase", "carcase, front edges", outer + holes + blades, {
      weight: "outline",
    }),
    shape(`${prefix}back`, "part.back", "back boards, inside", back, {
      detail: firsts
        .map(({ y, height }) => grain(inner.x + 18, y + 6, inner.width - 36, height - 17, 2))
        .join(""),
    }),
    shape(
      `${prefix}insides`,
      "part.carcase-side",
      "carcase sides, inside",
      firsts
        .map(
          ({ y, height }) =>
            `M${inner.x} ${y}L${inner.x + 14} ${y + 4}V${y + height - 9}L${inner.x} ${y + height}zM${inner.x + inner.width} ${y}L${inner.x + inner.width - 14} ${y + 4}V${y + height - 9}L${inner.x + inner.width} ${y + height}z`,
        )
        .join(""),
    ),
    shape(`${prefix}blades`, "part.drawer-blade", "drawer blades", blades, {
      detail: firsts
        .slice(0, -1)
        .map(({ y, height }) =>
          line([inner.x + 30, y + height + 2], [inner.x + inner.width - 40, y + height + 2]),
        )
        .join(""),
    }),
    shape(`${prefix}dust`, "part.dustboard", "dustboards", dust),
    shape(`${prefix}runners`, "part.drawer-runner", "drawer runners", runners),
  ];
}
