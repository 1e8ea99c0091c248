import { describe, expect, it } from "vitest";
import { faultsIn, type Recorded } from "./record-history.ts";

const one = (rest: Partial<Recorded>): Recorded => ({ added: [], readings: [], refused: [], ...rest });
const reading = (version: number, parts: readonly string[], ownBefore = 0) => ({ version, parts, ownBefore });

describe("what a recorded history of several clients shows", () => {
  it("is nothing where all that was told is there and every version reads one way", () => {
    const history = [
      one({ added: ["a"], readings: [reading(1, []), reading(3, ["a", "b"], 1)] }),
      one({ added: ["b"], readings: [reading(2, ["a"])] }),
    ];
    expect(faultsIn(history, { version: 3, parts: ["a", "b"] })).toEqual([]);
  });

  it.each<[string, Recorded, string[], RegExp]>([
    ["a change that was told and is gone", one({ added: ["a"] }), [], /a is not there once/],
    ["one that is there twice", one({ added: ["a"] }), ["a", "a"], /a is not there once/],
    [
      "a version that reads in two ways",
      one({ readings: [reading(3, ["b"])] }),
      ["a"],
      /version 3 read as b/,
    ],
    ["a reader that goes back", one({ readings: [reading(2, []), reading(1, [])] }), [], /went back/],
    [
      "one that does not read what it wrote",
      one({ added: ["a"], readings: [reading(2, [], 1)] }),
      ["a"],
      /own a/,
    ],
    ["a part that later versions lack", one({ readings: [reading(2, ["a"])] }), [], /a went with/],
  ])("is %s", (_, recorded, parts, fault) => {
    expect(faultsIn([recorded], { version: 3, parts }).join()).toMatch(fault);
  });
});
