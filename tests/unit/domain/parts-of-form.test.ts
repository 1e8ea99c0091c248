import { describe, expect, it } from "vitest";
import { id, type TermId } from "#server/domain/ids.ts";
import { expectedParts, partsFor, partsToLookAt } from "#server/domain/parts-of-form.ts";
import type { Term } from "#server/domain/term.ts";

const ids = (...names: readonly string[]): TermId[] => names.map((name) => id<"term">(`part.${name}`));
const broader = new Map(
  [
    ["drawer-side", "drawer"],
    ["drawer-bottom", "drawer"],
    ["upper-case", "carcase"],
    ["back", "carcase"],
    ["handle", "hardware"],
    ["lock", "hardware"],
  ].map(([a, b]) => [id<"term">(`part.${a}`), id<"term">(`part.${b}`)] as const),
);
const on = (kind: string, ...parts: readonly string[]) =>
  partsFor(id(`part.${kind}`), ids(...parts), broader).map((part) => part.slice("part.".length));

describe("[F2] the parts of a form", () => {
  const form = (name: string, above?: string, parts: readonly string[] = []) =>
    ({
      id: `form.${name}`,
      kind: "form",
      label: name,
      parts: ids(...parts),
      ...(above ? { broader: `form.${above}` } : {}),
    }) as unknown as Term;
  const forms = new Map(
    [
      form("case", undefined, ["carcase", "back"]),
      form("bureau", "case"),
      form("lady's", "bureau"),
      form("stool", undefined, ["leg"]),
    ].map((term) => [term.id, term]),
  );

  it("are its own, or those of the nearest broader form with any", () => {
    expect(expectedParts(id("form.stool"), forms)).toEqual(ids("leg"));
    expect(expectedParts(id("form.lady's"), forms)).toEqual(ids("carcase", "back"));
    expect(expectedParts(id("form.unheard-of"), forms)).toEqual([]);
  });

  it("come with what every piece has, as far as there are such kinds", () => {
    const known = new Set<TermId>(ids("leg", "joint", "label"));
    expect(partsToLookAt(ids("leg"), (part) => known.has(part))).toEqual(ids("leg", "joint", "label"));
  });

  it("take over what is looked for on kinds that they stand for", () => {
    expect(on("drawer-side", "drawer", "drawer-side")).toEqual(["drawer-side"]);
    expect(on("drawer-side", "drawer", "leg")).toEqual(["drawer"]);
    expect(on("hardware", "handle", "lock", "leg")).toEqual(["handle", "lock"]);
  });

  it("take over nothing of a whole whose parts the form names one by one, nor of what it has not got", () => {
    expect(on("upper-case", "carcase", "back")).toEqual([]);
    expect(on("upper-case", "carcase")).toEqual([]);
    expect(on("drawer-bottom", "drawer", "drawer-side")).toEqual([]);
    expect(on("drawer-bottom", "leg")).toEqual([]);
  });
});
