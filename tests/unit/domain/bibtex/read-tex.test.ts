import { describe, expect, it } from "vitest";
import { readTex } from "#server/domain/bibtex/read-tex.ts";

describe("a value of BibTeX as plain text", () => {
  it.each([
    ["\\'e \\'{e} {\\'e} {\\'{e}} \\' e", "é é é é é"],
    ['\\`a \\^o \\"u \\~n \\=e \\.z', "à ô ü ñ ē ż"],
    ["\\v{c} \\c c \\c{S} \\u g \\H{o} \\r a \\k{a} \\d{s} \\b d", "č ç Ş ğ ő å ą ṣ ḏ"],
    ["{\\'\\i} \\\"{\\i} \\^\\j \\O slo", "í ï ĵØslo"],
    ["Stra\\ss{}e, \\ae ro, \\O resund, \\L\\'od\\'z", "Straße, æro, Øresund, Łódź"],
    ["1680--1720, a --- b, ``so'' and `so'", "1680–1720, a — b, “so” and `so'"],
    ["50\\,\\% of a\\_b \\& c\\$ \\#1 \\{x\\}", "50 % of a_b & c$ #1 {x}"],
    ["The {Boulle} of {XV}, {{kept}}", "The Boulle of XV, kept"],
    ["\\emph{one} {\\it two} \\textsc{Three}", "one two Three"],
    ["\\href{https://example.org}{here} \\enquote{there}", "here “there”"],
    ["a~b\n   c\t d", "a b c d"],
    ["\\textbraceleft{}x\\textbraceright{} \\textasciitilde{}", "{x} ~"],
    ["-{}- '{}'", "-- ''"],
    ["2 $\\times$ 3", "2 × 3"],
    ["e\u0301", "é"],
    ["", ""],
  ])("[P44] %j is %j", (value, text) => {
    expect(readTex(value)).toEqual({ text, unread: [] });
  });

  it.each([
    ["\\foo{x} \\bar", ["\\foo", "\\bar"]],
    ["$\\frac{1}{2}$", ["\\frac"]],
  ])("[P44] says of %s what it does not understand", (value, unread) => {
    expect(readTex(value).unread).toEqual(unread);
  });

  it("[P44] ends with a value that ends too early, and with braces without number", () => {
    expect(["\\", "\\'", "{a", "a}b", "\\v{"].map((value) => readTex(value).text)).toEqual([
      "",
      "",
      "a",
      "ab",
      "",
    ]);
    expect(readTex("{".repeat(100_000)).unread).not.toEqual([]);
  });
});
