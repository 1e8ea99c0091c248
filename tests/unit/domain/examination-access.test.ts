import { describe, expect, it } from "vitest";
import { ACCESS_CARD, accessOf, accessWrite, isShown } from "#server/domain/people/examination-access.ts";

const cardWith = (body: unknown) => ({ kind: ACCESS_CARD, id: "examination.x", version: 1, keys: {}, body });
const [ada, bert, cleo] = ["person.a", "person.b", "person.c"].map((id) => ({ id })) as [
  { id: string },
  { id: string },
  { id: string },
];

describe("[C25] who sees an examination", () => {
  it("is the whole house without a card, or where the card says so", () => {
    expect(isShown(undefined, cleo)).toBe(true);
    expect(isShown(cardWith({ by: ada.id, seenBy: ["house"] }), cleo)).toBe(true);
  });

  it("is whoever recorded it and who is named, and nobody else", () => {
    const card = cardWith({ by: ada.id, seenBy: [bert.id] });
    expect([ada, bert, cleo].map((one) => isShown(card, one))).toEqual([true, true, false]);
  });

  it.each([
    undefined,
    null,
    {},
    { by: "person.c" },
    { by: "person.c", seenBy: "house" },
    { seenBy: ["house"] },
  ])("is nobody where the card says nothing sound: %j", (body) => {
    expect(isShown(cardWith(body), cleo)).toBe(false);
    expect(accessOf(cardWith(body))).toEqual({ by: "", seenBy: [] });
  });

  it("is found by person as long as it is kept from somebody and stands in the lists", () => {
    const keysOf = (seenBy: readonly string[], isListed?: boolean) =>
      accessWrite("examination.x", 1, { by: ada.id, seenBy }, isListed).next?.keys;
    expect(keysOf([bert.id, ada.id])).toEqual({ kept: ["yes"], seen: [ada.id, bert.id] });
    expect(keysOf([bert.id], false)).toEqual({});
    expect(keysOf(["house"])).toEqual({});
  });
});
