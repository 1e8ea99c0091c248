import { describe, expect, it } from "vitest";
import { boxesOf } from "#web/drawings/path-box.ts";
import { box, ellipse } from "#web/drawings/pen.ts";
import { placeFigures } from "#web/drawings/place-figures.ts";

describe("the boxes around a path", () => {
  it("are one for each move of the pen, absolute or relative", () => {
    expect(boxesOf(`${box(10, 20, 30, 40)}M100 100L110 90H120V130z`)).toEqual([
      { left: 10, top: 20, right: 40, bottom: 60 },
      { left: 100, top: 90, right: 120, bottom: 130 },
    ]);
  });

  it("hold curves with the points that steer them, and the ends of arcs", () => {
    expect(boxesOf("M0 0c10 -20 20 -20 30 0")).toEqual([{ left: 0, top: -20, right: 30, bottom: 0 }]);
    expect(boxesOf(ellipse(50, 50, 10, 5))[0]).toMatchObject({ left: 40, right: 60 });
    expect(boxesOf("")).toEqual([]);
  });
});

describe("[Y6] figures on a drawing", () => {
  const drawer = { outline: box(0, 0, 200, 60), figure: "0.83" };

  it("stand in the middle, beside what is drawn over it, or not at all", () => {
    expect(placeFigures([drawer])).toEqual([{ x: 100, y: 34, says: "0.83" }]);
    const [beside] = placeFigures([drawer, { outline: box(90, 20, 20, 20), figure: "" }]);
    expect(beside && (beside.x < 80 || beside.x > 120 || beside.y > 40)).toBe(true);
    expect(placeFigures([drawer, { outline: box(-5, -5, 300, 90), figure: "" }])).toEqual([]);
  });

  it("need room in the largest figure of the shape", () => {
    expect(placeFigures([{ outline: box(0, 0, 20, 8), figure: "0.83" }])).toEqual([]);
    const two = `${box(0, 0, 20, 8)}${box(100, 0, 20, 8)}`;
    expect(placeFigures([{ outline: two, figure: "0.83" }])).toEqual([]);
  });
});
