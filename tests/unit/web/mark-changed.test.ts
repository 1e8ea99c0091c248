import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Marked, markChanged } from "#web/shared/history/mark-changed.ts";

const whole = ({ same, changed, rest }: Marked) => same + changed + rest;
const long = "Arcs on boards of before about 1820 are suspect. Never an absolute limit.";

describe("where two texts differ", () => {
  it("is marked by whole words in long texts: a word changed, one more, one less", () => {
    const other = long.replace("1820", "1830");
    expect(markChanged(long, other).map(({ changed }) => changed.trim())).toEqual(["1820", "1830"]);
    const [was, is] = markChanged(long, `${long} Two mills had one.`);
    expect([was.changed, is.changed]).toEqual(["", "Two mills had one."]);
    expect(markChanged(long, long.replace(" absolute", ""))[0].changed.trim()).toBe("absolute");
  });

  it("is all of a short text", () => {
    expect(markChanged("1790", "1795")).toEqual([
      { same: "", changed: "1790", rest: "" },
      { same: "", changed: "1795", rest: "" },
    ]);
  });

  it("loses no letter of either text, whatever they are", () => {
    const word = fc.constantFrom("oak", "elm", "saw ", "  ", "\n", "limit.", "a");
    const text = fc.array(word, { maxLength: 40 }).map((words) => words.join(" "));
    fc.assert(
      fc.property(text, text, (before, after) => {
        const [was, is] = markChanged(before, after);
        expect([whole(was), whole(is)]).toEqual([before, after]);
      }),
      { numRuns: 500 },
    );
  });
});
