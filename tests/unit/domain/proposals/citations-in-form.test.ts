import { describe, expect, it } from "vitest";
import { countCited, reorderCited } from "#server/domain/proposals/form/citations-in-form.ts";
import { claimOfFields } from "#server/domain/proposals/form/claim-of-fields.ts";

const three = {
  ...{ basis: "published", source: "source.a", locator: "p. 1" },
  ...{ "basis.2": "common practice", "citation-note.2": "many chests" },
  ...{ "basis.3": "published", "title.3": "A new book", "locator.3": "p. 3" },
};
const without = (fields: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(fields).filter(([, text]) => text !== ""));

describe("the citations of a form", () => {
  it("[J47] are counted to the last that says anything", () => {
    expect(countCited({})).toBe(0);
    expect(countCited({ basis: " " })).toBe(0);
    expect(countCited(three)).toBe(3);
    expect(countCited({ "title.12": "x" })).toBe(12);
  });

  it("[J47] keep what belongs to each when another is told first, or one is taken out", () => {
    expect(without({ ...three, ...reorderCited(three, [2, 0, 1]) })).toEqual({
      ...{ basis: "published", title: "A new book", locator: "p. 3" },
      ...{ "basis.2": "published", "source.2": "source.a", "locator.2": "p. 1" },
      ...{ "basis.3": "common practice", "citation-note.3": "many chests" },
    });
    expect(without({ ...three, ...reorderCited(three, [0, 2]) })).toEqual({
      ...{ basis: "published", source: "source.a", locator: "p. 1" },
      ...{ "basis.2": "published", "title.2": "A new book", "locator.2": "p. 3" },
    });
    expect(without({ ...three, ...reorderCited(three, []) })).toEqual({});
  });

  it("[J47] say what is wrong at the citation it is wrong with, also where one before it is empty", () => {
    const claim = { relation: "introduced", subject: "tool.a", when: "1790", basis: "from memory" };
    expect(
      claimOfFields({ ...claim, "basis.3": "published", "source.3": "source.a" }, "claim.x"),
    ).toMatchObject([{ path: ["locator.3"], message: expect.stringMatching(/^Say where in it/) }]);
  });
});
