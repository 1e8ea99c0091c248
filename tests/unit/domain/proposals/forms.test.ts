import { describe, expect, it } from "vitest";
import { claimOfFields } from "#server/domain/proposals/form/claim-of-fields.ts";
import { LONGEST_FIELD, readFormFields } from "#server/domain/proposals/form/form-fields.ts";
import { sourceOfFields } from "#server/domain/proposals/form/source-of-fields.ts";
import { termOfFields } from "#server/domain/proposals/form/term-of-fields.ts";
import { readCitationLine } from "#server/domain/sources-in/read-citation-line.ts";

const claim = (fields: Record<string, string>) => claimOfFields(fields, "claim.new");
const fieldsInTrouble = (made: object) =>
  Array.isArray(made) ? made.map(({ path }: { path: readonly string[] }) => path.join("/")) : [];

describe("a claim that is written in a form", () => {
  const whole = { relation: "introduced", subject: "tool.a", when: "1790", basis: "from memory" };

  it("[J40] gets what nobody needs to be asked: what is hard, and how far it can be leaned on", () => {
    expect(claim(whole)).toMatchObject({
      hardness: "physical",
      strength: "tentative",
      status: "accepted",
      scope: {},
    });
    expect(claim({ ...whole, relation: "common from", basis: "common practice" })).toMatchObject({
      hardness: "practice",
      strength: "usual",
    });
  });

  it("[J40] says what it lacks, each at its field", () => {
    expect(fieldsInTrouble(claim({}))).toEqual(["relation"]);
    expect(fieldsInTrouble(claim({ relation: "requires" })).toSorted()).toEqual(["basis", "subject", "ways"]);
    expect(fieldsInTrouble(claim({ ...whole, basis: "published" }))).toEqual(["source", "locator"]);
  });

  it("[J40] offers the date that was probably meant", () => {
    for (const [written, instead] of [
      ["c. 1770", "1770~"],
      ["1760s", "176X"],
      ["after 1830", "[1830..]"],
    ]) {
      const made = claim({ ...whole, when: written as string });
      expect(made).toMatchObject([{ code: "UNREADABLE_DATING", path: ["when"], instead }]);
    }
  });

  it("[J40] refuses what its kind says nothing of", () => {
    expect(fieldsInTrouble(claim({ ...whole, object: "style.plain" }))).toEqual(["object"]);
  });
});

describe("a form", () => {
  it("[J40] is an object of texts of a bounded size", () => {
    for (const form of [null, [], "x", { a: 1 }, { "a b": "x" }, { __proto__x: "y" }])
      expect(readFormFields(form)).toMatchObject({ code: "WRONG_FORMAT" });
    expect(readFormFields({ a: "x".repeat(LONGEST_FIELD + 1) })).toMatchObject({ code: "TOO_LARGE" });
    const many = Object.fromEntries(Array.from({ length: 20 }, (_, i) => [`f${i}`, "x".repeat(4000)]));
    expect(readFormFields(many)).toMatchObject({ code: "TOO_LARGE" });
    expect(readFormFields({ note: "<script>alert(1)</script>" })).toEqual({
      note: "<script>alert(1)</script>",
    });
  });
});

describe("a term and a source that are written in a form", () => {
  it("[J40] say what they lack", () => {
    expect(fieldsInTrouble(termOfFields({}, "tool.x"))).toEqual(["kind", "label"]);
    expect(fieldsInTrouble(sourceOfFields({ year: "about 1920" }, "source.x"))).toEqual([
      "title",
      "author",
      "year",
    ]);
  });

  it("[J40] of a source names are told apart", () => {
    expect(
      sourceOfFields({ title: "Saws", author: "Alder, Ann; The Bench Society", year: "1990" }, "source.x"),
    ).toMatchObject({
      kind: "book",
      reading: "known",
      csl: {
        author: [{ family: "Alder", given: "Ann" }, { literal: "The Bench Society" }],
        issued: { "date-parts": [[1990]] },
      },
    });
  });
});

describe("a citation that was copied as one line", () => {
  it("[J41] is read as far as it is plain", () => {
    expect(
      readCitationLine("Alder, Ann. Saws of the north. London: Bench Press, 1990. ISBN 978-0-306-40615-7"),
    ).toEqual({
      author: "Alder, Ann",
      title: "Saws of the north",
      year: "1990",
      isbn: "9780306406157",
    });
    expect(readCitationLine("Ann Alder, “On saws”, Journal of Benches 12 (1990), doi:10.1234/abc.5")).toEqual(
      {
        author: "Alder, Ann",
        title: "On saws",
        year: "1990",
        doi: "10.1234/abc.5",
      },
    );
  });

  it("[J41] leaves out a number that its last figure disproves, and what is not plain", () => {
    expect(readCitationLine("ISBN 978-0-306-40615-8")).toEqual({});
    expect(readCitationLine("0-306-40615-2")).toEqual({ isbn: "0306406152" });
    expect(readCitationLine("")).toEqual({});
  });
});
