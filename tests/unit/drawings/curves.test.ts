import { describe, expect, it } from "vitest";
import { pathPoints } from "#tests/support/path-points.ts";
import { arc, closed, open, placed, reversed, run, smooth, turnedOn } from "#web/drawings/features/curves.ts";
import {
  ASTRAGAL,
  CAVETTO,
  CYMA_RECTA,
  CYMA_REVERSA,
  OVOLO,
  type Profile,
} from "#web/drawings/features/mouldings/profiles.ts";

/** A point half-way along the cubic that ends a path `M x y C ...`. */
function middleOfCubic(d: string): readonly [number, number] {
  const [x0, y0, ...rest] = (d.match(/-?[\d.]+/g) ?? []).map(Number) as [number, number, ...number[]];
  const [x1, y1, x2, y2, x3, y3] = rest as [number, number, number, number, number, number];
  const at = (a: number, b: number, c: number, e: number) => (a + 3 * b + 3 * c + e) / 8;
  return [at(x0, x1, x2, x3), at(y0, y1, y2, y3)];
}

/** The cubics of a profile, each as a path of its own. */
const cubicsOf = ({ line }: Profile): string[] => {
  const d = open(line);
  const points = pathPoints(d);
  return [...d.matchAll(/C[^LC]+/g)].map(([cubic]) => {
    const end = (cubic.match(/-?[\d.]+/g) ?? []).map(Number).slice(-2);
    const at = points.findIndex(([x, y]) => x === end[0] && y === end[1]);
    const from = points[at - 1] as readonly [number, number];
    return `M${from[0]} ${from[1]}${cubic}`;
  });
};

/** Whether a curve bulges out of the wood (round) or into it (hollow): wood lies to the left of a profile. */
function isRound(cubic: string): boolean {
  const points = pathPoints(cubic);
  const [[x0, y0], [x1, y1]] = points as [readonly [number, number], readonly [number, number]];
  const [mx, my] = middleOfCubic(cubic);
  const straight = x0 + ((x1 - x0) * (my - y0)) / (y1 - y0);
  return mx > straight;
}

describe("outlines", () => {
  it("follow a quarter circle to within a thousandth of its radius", () => {
    const [mx, my] = middleOfCubic(open(run([100, 0], ["v", 0, 100])));
    expect(Math.abs(Math.hypot(mx, my) - 100)).toBeLessThan(0.1);
  });

  it("end where they are told to, and an arc lies on its circle", () => {
    expect(pathPoints(closed(run([0, 0], ["l", 10, 0], ["h", 20, 10]), [20, 30])).at(-1)).toEqual([20, 30]);
    for (const [x, y] of pathPoints(arc(50, 60, 40, -30, 110)))
      expect(Math.hypot(x - 50, y - 60)).toBeCloseTo(40, 0);
    expect(pathPoints(smooth([0, 0], [10, 5], [30, 5]))).toEqual([
      [0, 0],
      [10, 5],
      [30, 5],
    ]);
  });

  it("gone through backwards pass the same points in the other order", () => {
    const way = run([0, 0], ["l", 10, 0], ["sh", 30, 40], ["c", 35, 40, 40, 50, 40, 60]);
    expect(pathPoints(open(reversed(way)))).toEqual(pathPoints(open(way)).toReversed());
    expect(open(reversed(reversed(way)))).toBe(open(way));
  });

  it("made on the lathe are the same on both sides of the axis", () => {
    const points = pathPoints(turnedOn(100, run([10, 0], ["h", 30, 20], ["v", 12, 40], ["l", 12, 60])));
    const mirrored = points.map(([x, y]) => `${200 - x} ${y}`).sort();
    expect(points.map(([x, y]) => `${x} ${y}`).sort()).toEqual(mirrored);
  });

  it("can be moved and scaled", () => {
    expect(open(placed(run([1, 2], ["l", 3, 4]), 10, 20, 2))).toBe("M12 24L16 28");
  });
});

describe("moulding profiles", () => {
  const shapes = (profile: Profile) =>
    cubicsOf(profile).map((cubic) => (isRound(cubic) ? "round" : "hollow"));

  it("are made of the rounds and hollows their names stand for, from above", () => {
    expect(shapes(OVOLO)).toEqual(["round"]);
    expect(shapes(CAVETTO)).toEqual(["hollow"]);
    expect(shapes(CYMA_RECTA)).toEqual(["hollow", "round"]);
    expect(shapes(CYMA_REVERSA)).toEqual(["round", "hollow"]);
    expect(shapes(ASTRAGAL)).toEqual(["round", "round"]);
  });
});
