import { describe, expect, it } from "vitest";
import { groupRows } from "#web/evidence/group-rows.ts";
import { sayMeasured } from "#web/evidence/say-measured.ts";

const NONE = { number: null, from: null, to: null, words: null, unit: null };

describe("a measured value in words", () => {
  it.each([
    [{ ...NONE, number: 4.9, unit: "%" }, "4.9 %"],
    [{ ...NONE, number: 0, unit: "mm" }, "0 mm"],
    [{ ...NONE, number: 0.00169, unit: "of the width" }, "0.00169 of the width"],
    [{ ...NONE, from: 19, to: 22.2, unit: "mm" }, "19 to 22.2 mm"],
    [{ ...NONE, from: 0, to: 1 }, "0 to 1"],
    [{ ...NONE, number: 1842, unit: "year" }, "1842"],
    [{ ...NONE, words: "January" }, "January"],
  ])("is said with its unit: %o", (measured, said) => {
    expect(sayMeasured(measured)).toBe(said);
  });
});

describe("rows in groups", () => {
  it("come by table, then by what was measured in which unit, in the order they came", () => {
    const row = (table: string, quantity: string, unit: string | null) => ({ table, quantity, unit });
    const rows = [
      row("saw-marks", "pitch", "mm"),
      row("drawer-parts", "thickness", "mm"),
      row("saw-marks", "pitch", "in"),
      row("saw-marks", "pitch", "mm"),
    ];
    expect(groupRows(rows)).toEqual([
      {
        name: "saw marks",
        quantities: [
          { quantity: "pitch", rows: [rows[0], rows[3]] },
          { quantity: "pitch", rows: [rows[2]] },
        ],
      },
      { name: "drawer parts", quantities: [{ quantity: "thickness", rows: [rows[1]] }] },
    ]);
  });
});
