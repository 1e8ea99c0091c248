import { box, line, n, polygon } from "../../pen.ts";
import { row } from "../curves.ts";
import { body, cut, type Drawing, detail, edge, tell } from "../mark.ts";

/** The leg stands between these, its flutes between those. */
const LEG = { x: 70, width: 68, top: 44, foot: 224 } as const;
const STOP = 138;

export const stopFlutedLeg: Drawing = {
  title: "Leg with stopped flutes",
  tells: "Hollow flutes above; in the lower part each holds a rod, left standing in the same wood.",
  draw: (level) => {
    const flutes = level === "small" ? 3 : 4;
    const pitch = LEG.width / flutes;
    const middle = (i: number): number => LEG.x + pitch * (i + 0.5);
    const half = pitch * 0.36;
    /** The front of the leg cut across: hollows, with rods standing in them or not. */
    const across = (y: number, out: 1 | -1): string => {
      const step = 56 / flutes;
      const scallops = row(flutes, (i) => {
        const x = 172 + step * i;
        return `H${n(x + step * 0.14)}A${n(step * 0.36)} ${n(step * 0.36)} 0 0 ${out === 1 ? 1 : 0} ${n(x + step * 0.86)} ${y}`;
      });
      return `M172 ${y}${scallops}H228V${y + 36}H172z`;
    };
    return [
      body(box(24, 16, 190, 28)),
      body(box(LEG.x, LEG.top, LEG.width, LEG.foot - LEG.top)),
      edge(
        row(flutes, (i) => {
          const [a, b] = [middle(i) - half, middle(i) + half];
          return `M${n(a)} ${STOP}V68C${n(a)} 56 ${n(b)} 56 ${n(b)} 68V${STOP}`;
        }),
      ),
      detail(
        row(level === "small" ? 0 : flutes, (i) =>
          line([middle(i) - half * 0.4, 66], [middle(i) - half * 0.4, STOP]),
        ),
      ),
      edge(
        row(flutes, (i) => {
          const [a, b] = [middle(i) - half, middle(i) + half];
          return `M${n(a)} 212V${STOP}C${n(a)} ${STOP - 10} ${n(b)} ${STOP - 10} ${n(b)} ${STOP}V212z`;
        }),
      ),
      ...cut(across(88, -1)),
      ...cut(across(176, 1)),
      detail(polygon([LEG.x, 216], [LEG.x + LEG.width, 216], [LEG.x + LEG.width, 216], [LEG.x, 216])),
      tell([28, 104], [middle(0), 100]),
      tell([28, 196], [middle(0), 176]),
    ];
  },
};
