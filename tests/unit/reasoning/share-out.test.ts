import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Position } from "#server/domain/position.ts";
import { type Chosen, shareOut } from "#server/reasoning/sheet/share-out.ts";
import type { Telling } from "#server/reasoning/sheet/telling.ts";

const at = (position: Position, feature: string) =>
  ({ position, feature: id(feature) }) as unknown as Telling;
const TOP: Chosen = {
  part: id("part.top"),
  entries: [at("front", "scratch"), at("underneath", "arcs")],
  again: [],
  all: 5,
};
const LEG: Chosen = {
  part: id("part.leg"),
  entries: [],
  again: [at("front", "arcs"), at("underneath", "arcs")],
  all: 2,
};

describe("[F6] what was chosen, shared out over the positions", () => {
  const sections = shareOut([
    ["front", [TOP, LEG]],
    ["underneath", [TOP, LEG]],
  ]);

  it("names a feature again only after it was told in full, and leaves out a part without anything", () => {
    expect(
      sections.map(({ position, part, entries, again }) => [position, part, entries.length, again]),
    ).toEqual([
      ["front", "part.top", 1, []],
      ["underneath", "part.top", 1, []],
      ["underneath", "part.leg", 0, ["arcs"]],
    ]);
  });

  it("counts what is left out once, at the last place of a part", () => {
    expect(sections.map(({ more }) => more)).toEqual([0, 3, 1]);
  });
});
