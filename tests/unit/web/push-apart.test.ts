import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pushApart } from "#web/graph/push-apart.ts";

const heights = (...ys: number[]) =>
  pushApart(
    ys.map((y, i) => ({ id: `${i}`, y, high: 20 })),
    10,
    0,
  );

describe("[X18] heights in a column", () => {
  it("stay where they are wanted while they do not meet", () => {
    expect([...heights(20, 60, 200).values()]).toEqual([20, 60, 200]);
  });

  it("give way half each where two meet, and to the top of the drawing", () => {
    expect([...heights(100, 100).values()]).toEqual([85, 115]);
    expect([...heights(2, 2).values()]).toEqual([10, 40]);
  });

  it("never meet, keep their order and stay below the top", () => {
    const items = fc.array(
      fc.record({ y: fc.integer({ min: 0, max: 500 }), high: fc.integer({ min: 4, max: 80 }) }),
      {
        maxLength: 20,
      },
    );
    fc.assert(
      fc.property(items, (wanted) => {
        const all = wanted.map((each, i) => ({ ...each, id: `${i}`.padStart(2, "0") }));
        const placed = pushApart(all, 10, 4);
        const sorted = all.toSorted((a, b) => a.y - b.y || (a.id < b.id ? -1 : 1));
        let bottom = 4 - 10;
        for (const { id, high } of sorted) {
          const y = placed.get(id) ?? Number.NaN;
          expect(y - high / 2).toBeGreaterThanOrEqual(bottom + 10 - 1e-6);
          bottom = y + high / 2;
        }
      }),
    );
  });
});
