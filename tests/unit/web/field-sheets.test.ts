import { describe, expect, it } from "vitest";
import { groupForms } from "#web/field-sheets/group-forms.ts";
import { pieceFromSheet } from "#web/field-sheets/piece-from-sheet.ts";
import { sayHow } from "#web/field-sheets/say-how.ts";
import { readQuestion, writeQuestion } from "#web/field-sheets/sheet-question.ts";

const form = (id: string, broader?: string, otherLabels: readonly string[] = []) => ({
  ...{ id, label: id, otherLabels },
  broader: broader === undefined ? null : { id: broader },
});

describe("[F9] forms in the list of sheets", () => {
  const forms = [
    form("table"),
    form("drop-leaf table", "table"),
    form("case", undefined, ["casework"]),
    form("chest", "case", ["coffer"]),
    form("chest with drawers", "chest"),
  ];
  const shown = (words: string) =>
    groupForms(forms, words).map(({ label, forms: of }) => [
      label,
      of.map((one) => `${one.depth} ${one.label}`),
    ]);

  it("stand under their broadest form, each after the one it is of", () => {
    expect(shown("")).toEqual([
      ["case", ["0 case", "1 chest", "2 chest with drawers"]],
      ["table", ["0 table", "1 drop-leaf table"]],
    ]);
  });

  it("are found by all the words, in the label or another name", () => {
    expect(shown("COFFER")).toEqual([["case", ["1 chest"]]]);
    expect(shown("drawers chest")).toEqual([["case", ["2 chest with drawers"]]]);
    expect(shown("sideboard")).toEqual([]);
  });
});

describe("[F10] a sheet in the address", () => {
  it("is read, and what it says wrongly is left to the usual", () => {
    expect(readQuestion(new URLSearchParams("region=region.home&date=1760~&each=8"))).toEqual({
      ...{ region: "region.home", date: "1760~", each: "8" },
    });
    expect(readQuestion(new URLSearchParams("each=70&date="))).toEqual({
      region: null,
      date: null,
      each: "3",
    });
  });

  it("is written without what is usual, and read as it was", () => {
    expect(writeQuestion({ region: null, date: null, each: "3" }).toString()).toBe("");
    const question = { region: "region.home", date: "1760/1780", each: "5" } as const;
    expect(readQuestion(writeQuestion(question))).toEqual(question);
  });

  it("says of how to look as many whole sentences as fit, and one in any case", () => {
    expect(sayHow("Look up. Look down. Look round.", 19)).toBe("Look up. Look down.");
    expect(sayHow("Look along the whole length of the board.", 10)).toBe(
      "Look along the whole length of the board.",
    );
  });
});

describe("[F12] a piece begun from a sheet", () => {
  const part = (id: string, broader?: string) => ({
    ...{ id: `part.${id}`, label: id },
    broader: broader === undefined ? null : { id: `part.${broader}` },
  });
  const parts = [part("drawer"), part("drawer-side", "drawer"), part("foot", "base")];

  it("has the form, the region, the date and the expected parts, each within the one around it", () => {
    const sheet = {
      form: { id: "form.bureau", label: "bureau" },
      region: { id: "region.home" },
      date: "1760~",
      parts,
    };
    expect(pieceFromSheet(sheet, 2026)).toEqual({
      ...{ title: "Bureau", examined: 2026, observations: [] },
      attribution: { date: "1760~", form: "form.bureau", region: "region.home" },
      parts: [
        { id: "drawer", label: "Drawer", kind: "part.drawer" },
        { id: "drawer-side", label: "Drawer-side", kind: "part.drawer-side", within: "drawer" },
        { id: "foot", label: "Foot", kind: "part.foot" },
      ],
    });
  });

  it("is of any year up to this one where none is claimed", () => {
    const sheet = { form: { id: "form.bureau", label: "bureau" }, region: null, date: null, parts: [] };
    expect(pieceFromSheet(sheet, 2026).attribution).toEqual({ date: "../2026", form: "form.bureau" });
  });
});
