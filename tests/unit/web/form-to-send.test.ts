import { describe, expect, it } from "vitest";
import { formToSend } from "#web/proposals/writing/form-to-send.ts";

describe("what a page sends of a form", () => {
  const written = {
    ...{ relation: "introduced", subject: "tool.a", when: "1790", object: "style.b", ways: "tool.c" },
    ...{ basis: "from memory", source: "source.d", locator: "p. 1", title: "A book" },
  };

  it("[J40] is what belongs to the choices that stand, so that a choice can be taken back", () => {
    expect(Object.keys(formToSend("claim", written)).toSorted()).toEqual([
      "basis",
      "relation",
      "subject",
      "when",
    ]);
    expect(formToSend("claim", { ...written, relation: "typical of" })).toMatchObject({ object: "style.b" });
  });

  it("[J40] has a new source only where none is chosen", () => {
    const printed = { ...written, basis: "published" };
    expect(formToSend("claim", printed)).toMatchObject({ source: "source.d", locator: "p. 1" });
    expect(formToSend("claim", printed)["title"]).toBeUndefined();
    expect(formToSend("claim", { ...printed, source: "" })).toMatchObject({ title: "A book" });
  });

  it("[J43] of an exception is one that sets a claim aside", () => {
    expect(formToSend("exception", { of: "claim.a", condition: "feature.b", subject: "tool.c" })).toEqual({
      relation: "void when",
      of: "claim.a",
      condition: "feature.b",
    });
  });
});
