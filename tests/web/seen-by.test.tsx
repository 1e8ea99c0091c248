import { act, fireEvent, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import type { Caller } from "#server/domain/people/caller.ts";
import { ACCESS_CARD, accessOf } from "#server/domain/people/examination-access.ts";
import { personWrite } from "#server/domain/people/person.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const CREATE = `mutation ($piece: PieceInput!, $seenBy: [ID!]) { done: createExamination(piece: $piece, seenBy: $seenBy) {
  ... on ExaminationChanged { examination { id } } } }`;
const as = (id: string): Caller => ({ id, role: "contributor", via: "session" });

/** A piece that rita recorded in a house with cleo and bert, opened by somebody; without a name by whoever has no account. */
async function openPiece(who?: string, seenBy?: readonly string[]) {
  const store = openMemoryStore();
  const cards = ["rita", "cleo", "bert"].map((name) =>
    personWrite(`person.${name}`, 0, { name, role: "contributor", state: "active" }),
  );
  answered(
    await store.writeCards({ cards, deed: { by: "program", at: "2026-01-01T00:00:00Z", did: "begin" } }),
  );
  const { ask } = await openApi([sawGraph], store);
  const { data } = await ask(
    CREATE,
    { piece: sawnChest, seenBy },
    who === undefined ? undefined : as("person.rita"),
  );
  const id: string = data.done.examination.id;
  await renderPage(`/pieces/${id}`, (query, variables) =>
    ask(query, variables, who === undefined ? undefined : as(who)),
  );
  await screen.findByRole("region", { name: "Conclusions" });
  const access = async () => {
    const card = await store.card(ACCESS_CARD, id);
    return card && accessOf(card);
  };
  return { access };
}
async function press(role: string, name: string): Promise<void> {
  const found = await screen.findByRole(role, { name });
  await act(async () => void fireEvent.click(found));
}

describe("[C25] who sees a piece, on its page", () => {
  it("is said by whoever recorded it: alone, with others, and to all again", async () => {
    const { access } = await openPiece("person.rita");
    await press("button", "Seen by: the whole house");
    await press("radio", "Me alone");
    await press("button", "Let it be seen so");
    await screen.findByRole("button", { name: "Seen by: me alone" });
    expect(await access()).toEqual({ by: "person.rita", seenBy: [] });
    await press("radio", "Me and …");
    expect(screen.getByRole("button", { name: "Let it be seen so" })).toHaveProperty("disabled", true);
    await press("checkbox", "cleo");
    expect(screen.queryByRole("checkbox", { name: "rita" })).toBeNull();
    await press("button", "Let it be seen so");
    await screen.findByRole("button", { name: "Seen by: me and cleo" });
    expect(await access()).toEqual({ by: "person.rita", seenBy: ["person.cleo"] });
    await press("radio", "The whole house");
    await press("button", "Let it be seen so");
    await screen.findByRole("button", { name: "Seen by: the whole house" });
    expect(await access()).toEqual({ by: "person.rita", seenBy: ["house"] });
  });

  it("is told to whoever it is shown to, without a way to change it", async () => {
    await openPiece("person.cleo", ["person.cleo"]);
    expect((await screen.findByText(/^Seen by:/)).textContent).toBe("Seen by: rita, cleo");
    expect(screen.queryByRole("button", { name: /Seen by/ })).toBeNull();
  });

  it("is not spoken of where there are no accounts", async () => {
    await openPiece();
    await screen.findByText("Signed reports");
    expect(screen.queryByText(/Seen by/)).toBeNull();
  });
});
