import { describe, expect, it } from "vitest";
import { checkTerm } from "#server/domain/check-term.ts";
import { id } from "#server/domain/ids.ts";
import type { Looking } from "#server/domain/looking.ts";
import type { Term } from "#server/domain/term.ts";

const looking: Looking = {
  how: "Draw the drawer and let light fall along the bottom from one side.",
  move: "drawer out",
  aids: ["raking light"],
  mistakenFor: [{ what: "scratches of a scraper", apart: "Those lie in short groups and cross each other." }],
  basis: "common practice",
};
const feature: Term = { id: id<"term">("feature.saw-mark"), kind: "feature", label: "saw mark", looking };

const paths = (notes: unknown) =>
  checkTerm({ ...feature, looking: notes as Looking }).map(({ path }) => path?.join("."));

describe("[G32] looking notes", () => {
  it("pass on a feature", () => {
    expect(checkTerm(feature)).toEqual([]);
  });

  it("are refused on anything else", () => {
    const tool: Term = { ...feature, id: id<"term">("tool.saw"), kind: "tool" };
    expect(checkTerm(tool)[0]?.path).toEqual(["looking"]);
  });

  it.each<[string, unknown, string]>([
    ["no object", "look closely", "looking"],
    ["no way to look", { ...looking, how: " " }, "looking.how"],
    ["a move that nobody knows", { ...looking, move: "piece burned" }, "looking.move"],
    ["an aid that nobody knows", { ...looking, aids: ["pendulum"] }, "looking.aids"],
    ["aids that are no list", { ...looking, aids: "lens" }, "looking.aids"],
    ["a raised basis", { ...looking, basis: "published" }, "looking.basis"],
    ["an empty innocent cause", { ...looking, innocent: "" }, "looking.innocent"],
    ["look-alikes that are no list", { ...looking, mistakenFor: {} }, "looking.mistakenFor"],
    [
      "a look-alike without a name",
      { ...looking, mistakenFor: [{ apart: "x" }] },
      "looking.mistakenFor.0.what",
    ],
    [
      "a look-alike not told apart",
      { ...looking, mistakenFor: [{ what: "x" }] },
      "looking.mistakenFor.0.apart",
    ],
    [
      "a look-alike with a malformed id",
      { ...looking, mistakenFor: [{ what: "x", apart: "y", term: "a b" }] },
      "looking.mistakenFor.0.term",
    ],
    ["a misspelt field", { ...looking, inocent: "wear" }, "looking.inocent"],
  ])("with %s are refused at the place", (_, notes, path) => {
    expect(paths(notes)).toEqual([path]);
  });
});
