import { describe, expect, it } from "vitest";
import { askedIn, resumed } from "#web/proposals/writing/asked-in-form.ts";
import { formToSend } from "#web/proposals/writing/form-to-send.ts";
import { WRITING_KINDS } from "#web/proposals/writing/kinds.ts";
import { titleOfForm } from "#web/proposals/writing/title-of-form.ts";

const correction = WRITING_KINDS.find(({ id }) => id === "correction") ?? WRITING_KINDS[0];
const standing = {
  ...{ about: "claim.a", relation: "introduced", subject: "tool.a", when: "1790", status: "rejected" },
  ...{ basis: "published", source: "source.d", locator: "p. 1", "basis.2": "from memory" },
};

describe("what a page sends of a form", () => {
  const written = {
    ...{ relation: "introduced", subject: "tool.a", when: "1790", object: "style.b", ways: "tool.c" },
    ...{ basis: "from memory", source: "source.d", locator: "p. 1", title: "A book" },
  };

  it("[J40] is what belongs to the choices that stand, so that a choice can be taken back", () => {
    expect(Object.keys(formToSend("CLAIM", written, "")).toSorted()).toEqual([
      "basis",
      "relation",
      "subject",
      "when",
    ]);
    expect(formToSend("CLAIM", { ...written, relation: "typical of" }, "")).toMatchObject({
      object: "style.b",
    });
  });

  it("[J40] [J47] has a new source only where none is chosen, for each citation", () => {
    const printed = { ...written, basis: "published", "basis.2": "published", "title.2": "Another" };
    expect(formToSend("CLAIM", printed, "")).toMatchObject({ source: "source.d", "title.2": "Another" });
    expect(formToSend("CLAIM", printed, "")["title"]).toBeUndefined();
    expect(formToSend("CLAIM", { ...printed, source: "" }, "")).toMatchObject({ title: "A book" });
  });

  it("[J43] of an exception is one that sets the claim aside, and nothing of the claim itself", () => {
    const fields = { ...standing, "exception-condition": "feature.b", "exception-basis": "from memory" };
    expect(formToSend("EXCEPTION", fields, "why")).toEqual({
      ...{ relation: "void when", of: "claim.a", condition: "feature.b", basis: "from memory" },
    });
    expect(formToSend("CORRECTION", fields, "why")).toEqual(standing);
  });

  it("[J9] [J43] of a retirement is why; of a claim that is restored, that it counts", () => {
    expect(formToSend("RETIREMENT", standing, "Misread.")).toEqual({ about: "claim.a", reason: "Misread." });
    expect(formToSend("CORRECTION", { ...standing, wrong: "restore" }, "")).toMatchObject({
      status: "accepted",
    });
  });
});

describe("[J9] what is wrong", () => {
  it("makes of a correction what it is", () => {
    const asked = (wrong: string) => askedIn(correction, { ...standing, wrong });
    expect(["date", "sources", "all", "", "nonsense"].map(asked)).toEqual(Array(5).fill("CORRECTION"));
    expect(["exception", "retract", "retire", "merge"].map(asked)).toEqual([
      "EXCEPTION",
      "RETIREMENT",
      "RETIREMENT",
      "MERGE",
    ]);
  });

  it("[J46] is found again in a draft of any kind", () => {
    expect(resumed("EXCEPTION", { of: "claim.a", condition: "feature.b" })).toMatchObject({
      kind: { id: "correction" },
      fields: { about: "claim.a", wrong: "exception", "exception-condition": "feature.b" },
    });
    expect(resumed("RETIREMENT", { about: "tool.a", reason: "x" }).fields).toMatchObject({ wrong: "retire" });
    expect(resumed("MERGE", { about: "tool.a", into: "tool.b" }).kind.id).toBe("merge");
    expect(resumed("MERGE", { about: "tool.a", into: "tool.b", wrong: "merge" }).kind.id).toBe("correction");
    expect(resumed("TERM", { label: "x" }).kind.id).toBe("term");
  });

  it("is in what the proposal is called where nobody says otherwise", () => {
    const edit = { before: "saw", after: "round saw" };
    expect(titleOfForm("CORRECTION", "date", [edit])).toBe("Another date: round saw");
    expect(titleOfForm("CORRECTION", "words", [edit])).toBe("saw, to be called round saw");
    expect(titleOfForm("RETIREMENT", "retire", [{ before: "saw", after: null }])).toBe("Retire: saw");
    expect(titleOfForm("MERGE", "merge", [edit, { before: "x", after: "y" }])).toBe("round saw");
    expect(titleOfForm("CLAIM", undefined, [])).toBe("");
    expect(titleOfForm("CLAIM", undefined, [{ before: null, after: "x".repeat(300) }])).toHaveLength(200);
  });
});
