import { describe, expect, it } from "vitest";
import { plateOverlaps } from "#tests/support/plate-overlaps.ts";
import type { AroundRow, TermRow } from "#web/graph/around-row.ts";
import { kindShapes } from "#web/graph/kind-shapes.ts";
import { placeAround } from "#web/graph/place-around.ts";
import { makeYearAxis } from "#web/shared/years/year-axis.ts";

const axis = makeYearAxis(1700, 1900);
const since = (year: number, id = `claim.${year}`): TermRow["claims"][number] => ({
  id,
  isSoft: false,
  spans: { kind: "hold", solid: [year, null], pale: [year, null] },
});
const row = (id: string, rest: Partial<TermRow> = {}): TermRow => ({
  ...{ type: "term", id, number: 1, step: 1, kind: "tool", label: `tool called ${id}` },
  ...{ words: "needed for", look: "hard", claims: [] },
  ...rest,
});
const centre = row("centre", { step: 0, words: "" });
const more: AroundRow = { type: "more", id: "more", step: 1, words: "12 more needed for" };
const place = (rows: readonly AroundRow[], width = 820) => placeAround([centre, ...rows], [], axis, width);
const find = (plate: ReturnType<typeof place>, id: string) => {
  const mark = plate.marks.find((each) => each.id === id);
  if (!mark) throw new Error(`nothing placed for ${id}`);
  return mark;
};

/** Rows of all sorts: with and without years, one and two steps away, long names, several claims. */
const rich: readonly AroundRow[] = [
  row("a", { claims: [since(1720), since(1780, "claim.second"), since(1850, "claim.third")] }),
  row("a1", { step: 2, label: "a name that is rather longer than there is room for in a narrow drawing" }),
  row("a2", { step: 2, claims: [since(1899)] }),
  row("b", { label: "another rather long name for a thing that nobody dates", kind: "feature" }),
  more,
  row("c", { claims: [since(1701)], kind: "region" }),
  row("d", {
    claims: [
      { id: "claim.until", isSoft: true, spans: { kind: "hold", solid: [null, 1750], pale: [null, 1760] } },
    ],
  }),
];

describe("[P61] the place of what stands around a term", () => {
  it.each([320, 358, 639, 640, 820, 1240])("lets nothing lie over anything at %i px", (width) => {
    expect(plateOverlaps(place(rich, width))).toEqual([]);
  });

  it("is just before the first year of a neighbour, and its bar begins at that year", () => {
    const plate = place([row("a", { claims: [since(1800)] })]);
    const year = (plate.scale.left + plate.scale.right) / 2;
    const bar = find(plate, "a claim.1800 solid");
    if (bar.form !== "shape") throw new Error("a bar is a shape");
    expect(bar.x - bar.wide / 2).toBeCloseTo(year);
    expect(bar.x + bar.wide / 2).toBeCloseTo(plate.scale.right);
    const shape = find(plate, "a");
    expect(shape.x).toBeLessThan(year);
    expect(year - shape.x).toBeLessThan(12);
  });

  it("is its last year where no beginning is stated, and never a year in which it is not found", () => {
    const excluded = {
      id: "claim.not",
      isSoft: true,
      spans: { kind: "exclude", solid: [1710, 1720], pale: [1710, 1720] },
    } as const;
    const plate = place([
      row("until", {
        claims: [{ id: "u", isSoft: true, spans: { kind: "hold", solid: [null, 1750], pale: [null, 1750] } }],
      }),
      row("mixed", { claims: [excluded, since(1850)] }),
    ]);
    const at = (year: number) =>
      plate.scale.left + (axis.at(year) / 100) * (plate.scale.right - plate.scale.left);
    expect(find(plate, "until").x).toBeCloseTo(at(1750), -1.4);
    expect(find(plate, "mixed").x).toBeGreaterThan(at(1800));
  });

  it.each([358, 820])("of what has no years is in a band before the scale at %i px", (width) => {
    const plate = place([row("dated", { claims: [since(1700)] }), row("undated")], width);
    expect(find(plate, "undated").x).toBeLessThan(plate.scale.left);
    expect(find(plate, "dated").x).toBeGreaterThan(find(plate, "undated").x);
  });

  it("is below the term it is reached from, one step further in", () => {
    const plate = place(rich);
    const y = (id: string) => find(plate, id).y;
    expect(["a", "a1", "a2", "b"].map(y)).toEqual(["a", "a1", "a2", "b"].map(y).toSorted((p, q) => p - q));
    const start = (id: string) => plate.lines.find((line) => line.id === `${id} line`)?.points[0]?.[0] ?? 0;
    expect(start("a1")).toBeGreaterThan(start("a"));
    const trunk = plate.lines.find((line) => line.id === "a trunk");
    expect(trunk?.points.at(-1)?.[1]).toBe(y("a2"));
  });

  it("leads to it by a line of its look, from the trunk, with the words over its beginning", () => {
    const plate = place([row("hard"), row("soft", { look: "soft" }), row("bare", { look: "bare" })]);
    for (const id of ["hard", "soft", "bare"]) {
      const line = plate.lines.find((each) => each.id === `${id} line`);
      expect(line?.look).toBe(id);
      expect(line?.parts).toEqual([id]);
      const words = find(plate, `${id} words`);
      expect(words.y).toBeLessThan(line?.points[0]?.[1] ?? 0);
      expect(words.x).toBeGreaterThan(line?.points[0]?.[0] ?? 0);
    }
  });

  it("tells kinds apart by shape, and names them", () => {
    const outlines = Object.values(kindShapes).map((points) => JSON.stringify(points));
    expect(new Set(outlines).size).toBe(11);
    for (const points of Object.values(kindShapes))
      for (const at of points?.flat() ?? []) expect(Math.abs(at)).toBeLessThanOrEqual(1);
    const name = find(place([row("a", { kind: "hardware", claims: [since(1800)] })]), "a name");
    expect(name.form === "words" && name.lines.join(" ")).toMatch(/hardware$/);
  });

  it("draws other links as curves that belong to both their ends, within the drawing", () => {
    const plate = placeAround(
      [centre, row("a", { claims: [since(1710)] }), row("b")],
      [
        { id: "x", from: "a", to: "b" },
        { id: "y", from: "a", to: "gone" },
      ],
      axis,
      358,
    );
    const extra = plate.lines.filter((line) => line.look === "extra");
    expect(extra.map(({ id, parts }) => [id, parts])).toEqual([["x", ["a", "b"]]]);
    for (const [x] of extra[0]?.points ?? []) expect(x).toBeGreaterThanOrEqual(0);
  });

  it("has no scale where nothing is dated, and stays the same for the same rows", () => {
    expect(place([row("a"), row("b")]).lines.filter((line) => line.look === "grid")).toEqual([]);
    expect(place(rich)).toEqual(place(rich));
  });
});
