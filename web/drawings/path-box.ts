/** The box around a path, in drawing units. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Numbers a command takes at a time. */
const TAKES: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/**
 * The boxes around the figures that SVG path data is made of, each from one move of the pen to the next: of its points and of the points
 * that steer its curves, so never smaller than the curve. Of an arc only its ends count.
 */
export function boxesOf(path: string): readonly Box[] {
  const boxes: { left: number; top: number; right: number; bottom: number }[] = [];
  let x = 0;
  let y = 0;
  let start: readonly [number, number] = [0, 0];
  const meet = (px: number, py: number) => {
    const box = boxes.at(-1);
    if (box === undefined) return;
    box.left = Math.min(box.left, px);
    box.right = Math.max(box.right, px);
    box.top = Math.min(box.top, py);
    box.bottom = Math.max(box.bottom, py);
  };
  for (const [, letter = "", rest = ""] of path.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const command = letter.toUpperCase();
    const isRelative = letter !== command;
    const numbers = (rest.match(/-?(?:\d*\.\d+|\d+)(?:e-?\d+)?/gi) ?? []).map(Number);
    if (command === "Z") {
      [x, y] = start;
      continue;
    }
    const takes = TAKES[command] ?? 2;
    for (let i = 0; i + takes <= numbers.length; i += takes) {
      const given = numbers.slice(i, i + takes);
      const [ox, oy] = isRelative ? [x, y] : [0, 0];
      if (command === "H") x = ox + (given[0] ?? 0);
      else if (command === "V") y = oy + (given[0] ?? 0);
      else {
        const points = command === "A" ? given.slice(5) : given;
        for (let at = 0; at + 2 < points.length; at += 2)
          meet(ox + (points[at] ?? 0), oy + (points[at + 1] ?? 0));
        x = ox + (points.at(-2) ?? 0);
        y = oy + (points.at(-1) ?? 0);
      }
      if (command === "M" && i === 0) {
        start = [x, y];
        boxes.push({ left: x, top: y, right: x, bottom: y });
      }
      meet(x, y);
    }
  }
  return boxes;
}
