import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readPiece } from "#server/formats/read-piece.ts";

const chest = {
  title: "Chest",
  examined: 2026,
  attribution: { date: "1760/1775" },
  parts: [{ id: "carcase", label: "Carcase" }],
  observations: [{ id: "o1", part: "carcase", feature: "feature.x", seen: "present" }],
};

/** What is told of a wrong piece: place and sentence, in order. */
function told(value: unknown): string[] {
  const piece = readPiece(value);
  if ("title" in piece) throw new Error("It was read");
  return piece.map(({ code, path, message }) => `${code} /${path.join("/")} ${message}`);
}

describe("the piece format", () => {
  it("[A23] fills in what may be left out, and leaves what it is given as it is", () => {
    const { observations: _, ...rest } = chest;
    expect(readPiece(rest)).toEqual({
      ...rest,
      ...{ invented: false, observations: [], together: [], separate: [] },
    });
    expect(rest).not.toHaveProperty("invented");
    expect(readPiece(chest)).toMatchObject({ observations: [{ sureness: "sure" }] });
  });

  it("[A23] takes its name, version and id, which the piece does not have", () => {
    const piece = readPiece({ format: "scribeline/piece", version: 1, id: "examination.chest", ...chest });
    expect(piece).toHaveProperty("title");
    expect(piece).not.toHaveProperty("format");
    expect(piece).not.toHaveProperty("version");
    expect(piece).not.toHaveProperty("id");
  });

  it("[A23] reads its example", () => {
    const url = new URL("../../../docs/formats/piece.example.json", import.meta.url);
    expect(readPiece(JSON.parse(readFileSync(url, "utf8")))).toHaveProperty("title");
  });

  it.each([
    [null, ["WRONG_FORMAT / The top level has to be an object, and is null."]],
    [[], ["WRONG_FORMAT / The top level has to be an object, and is a list."]],
    [{ ...chest, version: 2 }, [expect.stringMatching(/^OTHER_VERSION \/version It is of version 2, /)]],
    [
      { ...chest, title: undefined, maker: "x" },
      [
        'WRONG_FORMAT / The top level lacks "title"; add it.',
        expect.stringMatching(/has "maker", which the format does not know; take it out or use one of /),
      ],
    ],
    [
      { ...chest, title: 7, note: "x".repeat(4001), examined: "2026" },
      [
        'WRONG_FORMAT /title "title" has to be text, and is 7.',
        'WRONG_FORMAT /note "note" is longer than 4000 characters; shorten it.',
        'WRONG_FORMAT /examined "examined" has to be a whole number, and is "2026".',
      ],
    ],
    [
      { ...chest, parts: [{ id: "a b", label: "" }] },
      [
        expect.stringMatching(
          /^WRONG_FORMAT \/parts\/0\/id "id" is "a b", which is not of the form wanted here: /,
        ),
        'WRONG_FORMAT /parts/0/label "label" is empty; write something.',
      ],
    ],
    [
      { ...chest, observations: [{ ...chest.observations[0], seen: "yes" }, {}] },
      [
        'WRONG_FORMAT /observations/0/seen "seen" has to be one of present, absent, unseen, and is "yes".',
        'WRONG_FORMAT /observations/1 Entry 2 of "observations" lacks "id"; add it.',
        'WRONG_FORMAT /observations/1 Entry 2 of "observations" lacks "part"; add it.',
        'WRONG_FORMAT /observations/1 Entry 2 of "observations" lacks "feature"; add it.',
        'WRONG_FORMAT /observations/1 Entry 2 of "observations" lacks "seen"; add it.',
      ],
    ],
    [
      { ...chest, separate: [["carcase"]], together: [["carcase", 3]] },
      [
        'WRONG_FORMAT /together/0/1 Entry 2 of "together" has to be text, and is 3.',
        'WRONG_FORMAT /separate/0 Entry 1 of "separate" has too few entries; 2 are wanted.',
      ],
    ],
    [{ ...chest, examined: 0 }, ['WRONG_FORMAT /examined "examined" has to be 1 or more, and is 0.']],
    [
      { ...chest, invented: "no" },
      ['WRONG_FORMAT /invented "invented" has to be true or false, and is "no".'],
    ],
  ])("[A23] says of %# what is wrong, where, and what to do", (value, sentences) => {
    expect(told(JSON.parse(JSON.stringify(value)))).toEqual(sentences);
  });

  it("[A23] names at most twenty things", () => {
    const parts = Array.from({ length: 100 }, () => ({}));
    expect(told({ ...chest, parts })).toHaveLength(20);
  });

  it("is not led astray by names of the language", () => {
    const value: unknown = JSON.parse('{"__proto__": {"title": "T"}, "constructor": 1}');
    expect(told(value).length).toBeGreaterThan(0);
    expect({}).not.toHaveProperty("title");
  });
});
