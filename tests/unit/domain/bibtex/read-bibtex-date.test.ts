import { describe, expect, it } from "vitest";
import { readBibtexDate } from "#server/domain/bibtex/read-bibtex-date.ts";

describe("a date of BibTeX", () => {
  it.each([
    [{ year: "1900" }, { "date-parts": [[1900]] }],
    [{ year: "1900", month: "March" }, { "date-parts": [[1900, 3]] }],
    [{ year: "1900", month: "3" }, { "date-parts": [[1900, 3]] }],
    [{ year: "1900", month: "10 Sept." }, { "date-parts": [[1900, 9, 10]] }],
    [{ year: "1900", month: "4", day: "11" }, { "date-parts": [[1900, 4, 11]] }],
    [{ year: "1900", month: "April–May" }, { "date-parts": [[1900]] }],
    [{ year: "1900", month: "13" }, { "date-parts": [[1900]] }],
    [{ year: "1900", month: "4", day: "32" }, { "date-parts": [[1900, 4]] }],
    [{ year: "1873--1876" }, { "date-parts": [[1873], [1876]] }],
    [{ year: "1873/1876" }, { "date-parts": [[1873], [1876]] }],
    [{ year: "[1850?]" }, { raw: "[1850?]" }],
    [{ year: "1840s" }, { raw: "1840s" }],
    [{ date: "1777-04-11", year: "1777" }, { "date-parts": [[1777, 4, 11]] }],
    [{ date: "1777-04/1778" }, { "date-parts": [[1777, 4], [1778]] }],
    [{ date: "1777-13" }, { raw: "1777-13" }],
    [{ month: "3" }, undefined],
    [{}, undefined],
  ])("[P44] %j is %j", (fields, date) => {
    expect(readBibtexDate(fields)).toEqual(date);
  });
});
