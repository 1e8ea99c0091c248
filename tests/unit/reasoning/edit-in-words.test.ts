import { describe, expect, it } from "vitest";
import type { Edit } from "#server/domain/change.ts";
import type { Citations } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term } from "#server/domain/term.ts";
import { editInWords } from "#server/reasoning/explain/edits/edit-in-words.ts";
import { adding, aSource, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";

const then = (mark: string) => ({
  labelOf: (term: string) => `${mark}${term.replace(/^\w+\./, "")}`,
  citeOf: (source: string) => `${mark}${source.replace(/^\w+\./, "")}`,
});
const names = { before: then(""), after: then("") };
const say = (edit: Edit | undefined) => editInWords(edit as Edit, names);
const citing = (...locators: readonly string[]) =>
  locators.map((locator) => ({
    basis: "published" as const,
    source: id<"source">("source.book"),
    locator,
  })) as unknown as Citations;

const saw: ClaimSketch = {
  id: "claim.1",
  relation: "introduced",
  subject: "tool.saw",
  region: "region.england",
  when: "1790",
};
const changed = (rest: Partial<ClaimSketch>, from: ClaimSketch = saw) =>
  say(replacing(aClaim(from), aClaim({ ...from, ...rest }))[0]).differences;

describe("[W20] an edit in words", () => {
  it("of a claim tells each field that differs, before and after, dates in words", () => {
    expect(
      changed({ when: "1780~/1795", strength: "firm", region: "region.london", status: "rejected" }),
    ).toEqual([
      { what: "standing", before: "accepted", after: "rejected" },
      {
        what: "date",
        before: "1790",
        after: expect.stringMatching(/1780.*1795 \(written 1780~\/1795\)$/),
      },
      { what: "region", before: "england", after: "london" },
      { what: "strength", before: "usual", after: "firm" },
    ]);
  });

  it("tells what came new and what went without the other side", () => {
    const { region: _, ...everywhere } = saw;
    expect(changed({ form: "form.chest" }, everywhere)).toEqual([{ what: "form", after: "chest" }]);
    expect(changed({ note: "A misprint." })).toEqual([{ what: "note", after: "A misprint." }]);
    expect(say(replacing(aClaim(saw), aClaim(everywhere))[0]).differences).toEqual([
      { what: "region", before: "england" },
    ]);
  });

  it("tells citations that came, went, or point elsewhere in the same source", () => {
    const one = { ...saw, citations: citing("p. 1", "p. 2") };
    expect(changed({ citations: citing("p. 1", "p. 3") }, one)).toEqual([
      { what: "citation", before: "book, p. 2 (published)", after: "book, p. 3 (published)" },
    ]);
    expect(changed({ citations: citing("p. 1") }, one)).toEqual([
      { what: "citation", before: "book, p. 2 (published)" },
    ]);
    const memory: Citations = [{ basis: "from memory", note: "Said in the shop." }];
    expect(changed({ citations: [...citing("p. 1", "p. 2"), ...memory] as never }, one)).toEqual([
      { what: "citation", after: "from memory; Said in the shop." },
    ]);
  });

  it("says nothing of an order that alone is another", () => {
    const one = { ...saw, citations: citing("p. 1", "p. 2") };
    expect(changed({ citations: citing("p. 2", "p. 1") }, one)).toEqual([]);
  });

  it("tells the ways of what is required, and whether the list is closed", () => {
    const needs: ClaimSketch = {
      id: "claim.2",
      relation: "requires",
      subject: "feature.mark",
      ways: [["tool.saw"], ["tool.mill", "tool.wheel"]],
    };
    expect(changed({ ways: [["tool.saw"], ["tool.mill"]], closed: false }, needs)).toEqual([
      { what: "way", before: "mill together with wheel" },
      { what: "way", after: "mill" },
      { what: "list of ways", before: "no other way is known", after: "there are other ways" },
    ]);
  });

  it("tells a relation that became another, with what each has of its own", () => {
    const typical = aClaim({
      id: "claim.1",
      relation: "typical of",
      subject: "tool.saw",
      object: "style.plain",
    });
    const differences = say(replacing(aClaim(saw), typical)[0]).differences;
    expect(differences).toContainEqual({ what: "relation", before: "introduced", after: "typical of" });
    expect(differences).toContainEqual({ what: "date", before: "1790" });
    expect(differences).toContainEqual({ what: "what it is usual for", after: "plain" });
  });

  it("of a term and of a source tells their own fields", () => {
    const term = aTerm("feature.mark", { otherLabels: ["arc"], note: "Arcs.", parts: ["part.bottom"] });
    const better = aTerm("feature.mark", {
      label: "saw mark",
      otherLabels: ["arc", "kerf"],
      parts: ["part.back"],
      aat: { id: "1", label: "marks", checked: false },
    });
    expect(say(replacing(term, better)[0]).differences).toEqual([
      { what: "name", before: "mark", after: "saw mark" },
      { what: "other name", after: "kerf" },
      { what: "note", before: "Arcs." },
      { what: "part it is looked for on", before: "bottom" },
      { what: "part it is looked for on", after: "back" },
      { what: "match in the Art & Architecture Thesaurus", after: "marks, 1, unchecked" },
    ]);
    const book = aSource("source.book", "Saws");
    const read: Source = {
      ...book,
      reading: "read",
      csl: { ...book.csl, author: [{ family: "Example", given: "Ann" }], issued: { "date-parts": [[1999]] } },
    };
    expect(say(replacing(book, read)[0]).differences).toEqual([
      { what: "author", after: "Ann Example" },
      { what: "year", after: "1999" },
      {
        what: "how far it was read",
        before: "known to exist; not read for these claims",
        after: "read in the passages cited",
      },
    ]);
  });

  it("keeps the order of the fields, also where one came new", () => {
    const plain = aTerm("tool.saw", { note: "Cuts." });
    const named = aTerm("tool.saw", { note: "Cuts wood.", otherLabels: ["ripper"] });
    expect(say(replacing(plain, named)[0]).differences.map(({ what }) => what)).toEqual([
      "other name",
      "note",
    ]);
  });

  it("of a thing added or withdrawn says what it was, and no fields", () => {
    const [added] = adding(aClaim(saw));
    const [gone] = withdrawing(aTerm("tool.saw", { label: "round saw" }) as Term);
    expect(say(added)).toEqual({ does: "added", says: "Saw: introduced in england, 1790.", differences: [] });
    expect(say(gone)).toEqual({ does: "withdrawn", says: "round saw", differences: [] });
  });

  it("calls what is named as it was called on either side, and counts no new name as a change", () => {
    const before = aClaim(saw);
    const edit = replacing(before, aClaim({ ...saw, strength: "firm" }))[0] as Edit;
    const said = editInWords(edit, { before: then("old "), after: then("new ") });
    expect(said.says).toBe("New saw: introduced in new england, 1790.");
    expect(said.differences).toEqual([{ what: "strength", before: "usual", after: "firm" }]);
    const moved = replacing(before, aClaim({ ...saw, region: "region.london" }))[0] as Edit;
    expect(editInWords(moved, { before: then("old "), after: then("new ") }).differences).toEqual([
      { what: "region", before: "old england", after: "new london" },
    ]);
  });
});
