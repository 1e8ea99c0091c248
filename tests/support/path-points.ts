/** A point of a drawing, y downwards. */
export type PathPoint = readonly [x: number, y: number];

/** How many numbers each command of SVG path data takes. */
const ARGUMENTS: Readonly<Record<string, number>> = {
  m: 2,
  l: 2,
  h: 1,
  v: 1,
  c: 6,
  s: 4,
  q: 4,
  t: 2,
  a: 7,
  z: 0,
};

const NUMBER = /-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?/gi;

/** The end points of all pieces of a path, in absolute coordinates; curves may bulge a little beyond them. */
export function pathPoints(d: string): PathPoint[] {
  const points: PathPoint[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const [, command = "", rest = ""] of d.matchAll(/([a-z])([^a-z]*)/gi)) {
    const kind = command.toLowerCase();
    const isRelative = command === kind;
    const size = ARGUMENTS[kind];
    if (size === undefined) throw new Error(`The path has a command ${command}: ${d}`);
    const numbers = (rest.match(NUMBER) ?? []).map(Number);
    if (size === 0) {
      [x, y] = [startX, startY];
      continue;
    }
    if (numbers.length === 0 || numbers.length % size !== 0)
      throw new Error(`${command} has ${numbers.length} numbers: ${command}${rest}`);
    for (let i = 0; i < numbers.length; i += size) {
      const [ox, oy] = isRelative ? [x, y] : [0, 0];
      if (kind === "h") x = ox + (numbers[i] as number);
      else if (kind === "v") y = oy + (numbers[i] as number);
      else [x, y] = [ox + (numbers[i + size - 2] as number), oy + (numbers[i + size - 1] as number)];
      if (kind === "m" && i === 0) [startX, startY] = [x, y];
      points.push([x, y]);
    }
  }
  return points;
}
