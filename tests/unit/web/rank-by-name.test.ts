import { describe, expect, it } from "vitest";
import { readSeedLines } from "#tests/seed/read-seed-lines.ts";
import { parseSeed } from "#tests/seed/seed-graph.ts";
import { rankByName } from "#web/shared/terms/rank-by-name.ts";

const kinds = parseSeed(readSeedLines())
  .terms.filter(({ kind }) => kind === "part")
  .map(({ label, otherLabels = [] }) => ({ label, otherLabels }));
const offered = (words: string) => rankByName(kinds, words).map(({ label }) => label);

describe("[X7] kinds of part by what they are called", () => {
  it.each([
    ["top", "top"],
    ["tops", "top"],
    ["rail", "rail"],
    ["leg", "leg"],
    ["nails", "fastener"],
    ["dust board", "dustboard"],
    ["dust-board", "dustboard"],
    ["backboards", "back"],
    ["bracket foot", "foot"],
    ["brass handles", "handle"],
  ])("%s is offered as %s before any other", (words, first) => {
    expect(offered(words)[0]).toBe(first);
  });

  it("puts those that begin so before those that contain it", () => {
    expect(offered("back").indexOf("back")).toBeLessThan(offered("back").indexOf("drawer back"));
    expect(offered("seat").slice(0, 2)).toEqual(["seat", "seat rail"]);
  });

  it("takes nothing for what is not called so, and the last word only where it names a kind", () => {
    expect(offered("xyzzy")).toEqual([]);
    expect(offered("quite some e")).toEqual([]);
  });

  it("leaves all as they came without words", () => {
    expect(offered("  ")).toEqual(kinds.map(({ label }) => label));
  });
});
