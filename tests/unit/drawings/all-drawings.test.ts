import { describe, expect, it } from "vitest";
import { pathPoints } from "#tests/support/path-points.ts";
import { ALL_DRAWINGS, type DrawingKey } from "#web/drawings/features/all-drawings.ts";
import { FORMS_DRAWINGS } from "#web/drawings/features/forms/forms-drawings.ts";
import { type Detail, type Drawing, type Mark, SIDE } from "#web/drawings/features/mark.ts";

const LEVELS: readonly Detail[] = ["small", "full"];
const all = Object.entries(ALL_DRAWINGS) as [DrawingKey, Drawing][];

/** All marks, those of a drawing set in with those of its own. */
const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((mark) => (mark.kind === "inset" ? [mark, ...flat(mark.marks)] : [mark]));
const pathsOf = (mark: Mark): string[] => ("d" in mark ? [mark.d] : []);
const marksOf = (key: DrawingKey, level: Detail): Mark[] => flat(ALL_DRAWINGS[key].draw(level));
const lengthOf = (key: DrawingKey, level: Detail): number =>
  marksOf(key, level).flatMap(pathsOf).join("").length;

/** Points a mark reaches that no clip holds back; those of a set-in drawing in the units of the whole. */
function reach(mark: Mark): (readonly [number, number])[] {
  if (mark.kind === "inset")
    return mark.marks
      .flatMap(reach)
      .map(([x, y]): readonly [number, number] => [mark.x + mark.scale * x, mark.y + mark.scale * y]);
  if (mark.kind === "tell" || mark.kind === "span") return [mark.from, mark.to];
  if (mark.kind === "scale") return [[10 + mark.mm * mark.unitsPerMm, SIDE - 10]];
  if (mark.kind === "says") return [mark.at];
  if (mark.kind === "tone") return pathPoints(mark.d);
  return pathPoints(mark.within ?? mark.d);
}

describe("the drawings of features and forms", () => {
  it("are at least 60", () => {
    expect(all.length).toBeGreaterThanOrEqual(60);
  });

  it("have a title, and say in a short sentence of their own what tells", () => {
    for (const [key, { title, tells }] of all) {
      expect(title, key).toMatch(/^[A-Z][^.]{2,50}$/);
      expect(tells, key).toMatch(/^[A-Z].{20,}\.$/);
      expect(tells.length, `${key}: ${tells}`).toBeLessThanOrEqual(165);
    }
    expect(new Set(all.map(([, { tells }]) => tells)).size).toBe(all.length);
    expect(new Set(all.map(([, { title }]) => title)).size).toBe(all.length);
  });

  it("mark what tells by a crow's foot or a measure, never by a coloured line alone; forms are shown whole", () => {
    for (const level of LEVELS) {
      const untold = all
        .filter(([key]) => !marksOf(key, level).some(({ kind }) => kind === "tell" || kind === "span"))
        .map(([key]) => key);
      expect(untold.sort()).toEqual(Object.keys(FORMS_DRAWINGS).sort());
    }
  });

  it("are of finite numbers and stay inside their square, at both levels of detail", () => {
    for (const level of LEVELS)
      for (const [key, { draw }] of all)
        for (const mark of draw(level))
          for (const point of reach(mark)) {
            const where = `${key} ${level} ${JSON.stringify(mark).slice(0, 200)}`;
            for (const coordinate of point) {
              expect(coordinate, where).toBeGreaterThanOrEqual(-1);
              expect(coordinate, where).toBeLessThanOrEqual(SIDE + 1);
            }
          }
  });

  it("close every shape that hides what lies behind it", () => {
    for (const level of LEVELS)
      for (const [key] of all)
        for (const mark of marksOf(key, level))
          if (mark.kind === "body" || mark.kind === "tone") expect(mark.d, `${key} ${level}`).toMatch(/z$/);
  });

  it("have no more in them when small, and many have less", () => {
    const grown = all.filter(([key]) => lengthOf(key, "small") > lengthOf(key, "full")).map(([key]) => key);
    expect(grown).toEqual([]);
    const simpler = all.filter(([key]) => lengthOf(key, "small") < lengthOf(key, "full"));
    expect(simpler.length).toBeGreaterThan(all.length / 2);
  });

  it("come out the same each time", () => {
    for (const [key, { draw }] of all) expect(draw("full"), key).toEqual(draw("full"));
  });

  it("keep words few and short", () => {
    for (const [key] of all) {
      const words = marksOf(key, "full").flatMap((mark) => (mark.kind === "says" ? [mark.text] : []));
      const most = key === "moulding-profiles" ? 9 : 5;
      expect(words.length, `${key}: ${words.join(", ")}`).toBeLessThanOrEqual(most);
      for (const word of words) expect(word.split(" ").length, `${key}: ${word}`).toBeLessThanOrEqual(4);
    }
  });
});
