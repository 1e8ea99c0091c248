import { TYPE, widthOf } from "#web/graph/letters.ts";
import type { Plate, PlateMark } from "#web/graph/plate.ts";

interface Area {
  readonly id: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The area of words, shapes and boxes; bars and the marks of claims may touch each other. */
function areaOf(mark: PlateMark): Area | undefined {
  const { id, x, y } = mark;
  if (mark.form === "words") {
    const wide = Math.max(...mark.lines.map((line) => widthOf(line, mark.size)));
    const high = mark.lines.length * TYPE[mark.size];
    const left = mark.align === "start" ? x : mark.align === "end" ? x - wide : x - wide / 2;
    return { id, left, right: left + wide, top: y - high / 2, bottom: y + high / 2 };
  }
  if (mark.form === "shape" && mark.id !== mark.part) return undefined;
  const [wide, high] = [mark.wide, mark.high];
  return { id, left: x - wide / 2, right: x + wide / 2, top: y - high / 2, bottom: y + high / 2 };
}

/** Words, shapes and boxes of a drawing that lie over each other or stick out of it, told in pairs. */
export function plateOverlaps(plate: Plate): readonly string[] {
  const areas = plate.marks.flatMap((mark) => areaOf(mark) ?? []);
  const meets = (a: Area, b: Area) =>
    a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1;
  const told = areas.flatMap((a, i) =>
    areas.slice(i + 1).flatMap((b) => (meets(a, b) ? [`${a.id} lies over ${b.id}`] : [])),
  );
  const out = areas.filter(
    ({ left, right, top, bottom }) => left < 0 || right > plate.width + 1 || top < 0 || bottom > plate.height,
  );
  return [...told, ...out.map(({ id }) => `${id} sticks out`)];
}
