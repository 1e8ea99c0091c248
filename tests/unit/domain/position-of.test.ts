import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Move } from "#server/domain/looking.ts";
import { hasOpening, positionOf } from "#server/domain/position-of.ts";

const part = (name: string) => id<"term">(`part.${name}`);
const broader = new Map([
  [part("drawer-bottom"), part("drawer")],
  [part("drawer-front"), part("drawer")],
  [part("back"), part("carcase")],
  [part("foot"), part("base")],
  [part("pad"), part("foot")],
]);
const from = (name: string, move?: Move, isOpening = true) =>
  positionOf(part(name), move, { broader, isOpening });

describe("[F1] where a feature is looked for from", () => {
  it.each([
    ["door", "nothing", "front"],
    ["door", "drawer out", "drawers out"],
    ["top", "piece turned", "underneath"],
    ["leg", "drawer out", "front"],
    ["leg", "piece turned", "underneath"],
    ["drawer-bottom", "nothing", "drawers out"],
    ["drawer-bottom", "piece turned", "drawers out"],
    ["drawer-front", "nothing", "front"],
    ["drawer-front", "piece turned", "drawers out"],
    ["back", "nothing", "back"],
    ["back", "drawer out", "back"],
    ["label", "drawer out", "drawers out"],
    ["label", "nothing", "back"],
    ["case-bottom", "nothing", "underneath"],
    ["case-bottom", "drawer out", "drawers out"],
  ] as const)("%s, %s: %s", (kind, move, position) => {
    expect(from(kind, move)).toBe(position);
  });

  it("is where the part stands if something is unfastened or sampled, or nobody has said what is moved", () => {
    for (const move of ["something unfastened", "sample taken", undefined] as const)
      expect([from("back", move), from("drawer-bottom", move), from("top", move)]).toEqual([
        "back",
        "drawers out",
        "front",
      ]);
  });

  it("is that of the nearest kind around it that the table knows, and in front where it knows none", () => {
    expect(from("pad", "drawer out")).toBe("front");
    expect(from("pad", "piece turned")).toBe("underneath");
    expect(from("something-new", "drawer out")).toBe("drawers out");
    expect(from("something-new", "nothing")).toBe("front");
  });

  it("is underneath for what would be seen inside, where nothing opens", () => {
    expect(from("seat", "drawer out", false)).toBe("underneath");
    expect(from("label", "drawer out", false)).toBe("underneath");
    expect(from("back", "drawer out", false)).toBe("back");
  });

  it("asks for drawers, doors, falls, lids or trays, of whatever kind", () => {
    expect(hasOpening([part("leg"), part("drawer-bottom")], broader)).toBe(true);
    expect(hasOpening([part("fall")], broader)).toBe(true);
    expect(hasOpening([part("leg"), part("seat"), part("foot")], broader)).toBe(false);
  });
});
