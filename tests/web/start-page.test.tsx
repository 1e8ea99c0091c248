import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const CREATE = `mutation ($piece: PieceInput!) {
  createExamination(piece: $piece) { ... on ExaminationChanged { examination { id version } } }
}`;

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeEach(async () => {
  ask = (await openApi([sawGraph])).ask;
});
const begin = async (piece: object) =>
  (await ask(CREATE, { piece: { ...sawnChest, ...piece } })).data.createExamination.examination;

const titles = "{ examinations { edges { node { id piece { title attribution { date } } } } } }";

describe("the start page", () => {
  it("says what to do first while there is no examination", async () => {
    await renderPage("/", ask);
    const own = (await screen.findByRole("heading", { level: 2, name: "Your examinations" })).closest(
      "section",
    ) as HTMLElement;
    expect(within(own).getByText(/There are none yet\. Begin one/)).toBeTruthy();
    expect(within(own).getByRole("button", { name: "Begin an examination" })).toBeTruthy();
  });

  it("[P9] tells invented pieces from one's own, each with what is claimed and what comes of it", async () => {
    await begin({ title: "Chest shown" });
    await begin({ title: "Chest of mine", invented: false });
    await renderPage("/", ask);
    const shown = (await screen.findByRole("link", { name: "Chest shown" })).closest("li") as HTMLElement;
    expect(shown.textContent).toContain("invented for demonstration");
    expect(shown.textContent).toContain("Claimed: chest, England, 1760/1775");
    const { data } = await ask(
      "{ examinations { edges { node { examined { ... on Examined { words { headline } } } } } } }",
    );
    const { headline } = data.examinations.edges[0].node.examined.words;
    expect(await within(shown).findByText(headline)).toBeTruthy();
    const mine = screen.getByRole("link", { name: "Chest of mine" }).closest("li") as HTMLElement;
    expect(mine.textContent).not.toContain("invented");
    expect(mine.closest("section")?.textContent).toContain("Your examinations");
  });

  it("shows the rest of a long list when asked", async () => {
    for (let i = 0; i < 23; i++) await begin({ title: `Chest ${i}`, invented: false });
    await renderPage("/", ask);
    const more = await screen.findByRole("button", { name: "Show more" });
    expect(screen.getAllByRole("link", { name: /^Chest \d+$/ }).length).toBe(20);
    expect(more.closest("p")?.textContent).toContain("20 of 23 shown");
    await act(async () => fireEvent.click(more));
    await waitFor(() => expect(screen.getAllByRole("link", { name: /^Chest \d+$/ }).length).toBe(23));
    expect(screen.queryByRole("button", { name: "Show more" })).toBeNull();
  });

  it("[P10] deletes a piece and brings it back in its place", async () => {
    await begin({ title: "Chest to lose", invented: false });
    await renderPage("/", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Delete Chest to lose" }));
    const undo = await screen.findByRole("button", { name: "Undo" });
    expect(screen.getByText("“Chest to lose” is deleted.").getAttribute("role")).toBe("status");
    await waitFor(() => expect(document.activeElement).toBe(undo));
    expect((await ask(titles)).data.examinations.edges).toEqual([]);
    fireEvent.click(undo);
    expect(await screen.findByRole("link", { name: "Chest to lose" })).toBeTruthy();
    await waitFor(() =>
      expect(document.activeElement).toBe(screen.getByRole("button", { name: "Delete Chest to lose" })),
    );
    expect((await ask(titles)).data.examinations.edges.length).toBe(1);
  });

  it("[P10] says beside the piece why it could not be deleted", async () => {
    const { id, version } = await begin({ title: "Chest held twice", invented: false });
    await renderPage("/", ask);
    const remove = await screen.findByRole("button", { name: "Delete Chest held twice" });
    await ask(
      "mutation ($id: ID!, $v: Int!, $piece: PieceInput!) { changeExamination(id: $id, expectedVersion: $v, piece: $piece) { __typename } }",
      { id, v: version, piece: { ...sawnChest, invented: false, title: "Chest changed by another" } },
    );
    fireEvent.click(remove);
    expect((await screen.findByRole("alert")).textContent).toMatch(/\w+/);
    expect((await ask(titles)).data.examinations.edges[0].node.piece.title).toBe("Chest changed by another");
  });

  it("[P11] begins an examination with a name and a date, and opens it", async () => {
    await renderPage("/", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Begin an examination" }));
    const dialog = await screen.findByRole("dialog", { name: "Begin an examination" });
    fireEvent.change(within(dialog).getByRole("textbox", { name: "What the piece is called" }), {
      target: { value: "Chest from the north room" },
    });
    fireEvent.change(within(dialog).getByRole("textbox", { name: "Date claimed" }), {
      target: { value: "1760~" },
    });
    expect(within(dialog).getByText("Read as: made 1760, give or take 5 years.")).toBeTruthy();
    fireEvent.click(within(dialog).getByRole("button", { name: "Begin" }));
    await waitFor(() => expect(location.pathname).toMatch(/^\/pieces\/examination\./));
    const [edge] = (await ask(titles)).data.examinations.edges;
    expect(edge.node.piece).toEqual({ title: "Chest from the north room", attribution: { date: "1760~" } });
    expect(location.pathname).toBe(`/pieces/${edge.node.id}`);
  });

  it("[P11] takes no date for any year up to this one", async () => {
    await renderPage("/", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Begin an examination" }));
    fireEvent.click(await screen.findByRole("button", { name: "Begin" }));
    await waitFor(() => expect(location.pathname).toMatch(/^\/pieces\//));
    const [edge] = (await ask(titles)).data.examinations.edges;
    expect(edge.node.piece.attribution.date).toBe(`../${new Date().getFullYear()}`);
  });

  it("[P11] refuses a date that cannot be read, and says what to write", async () => {
    await renderPage("/", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Begin an examination" }));
    const date = await screen.findByRole("textbox", { name: "Date claimed" });
    for (const typed of ["c1760", "c. 1760", "c. 17", "about 1760 to 1770"]) {
      fireEvent.change(date, { target: { value: typed } });
      expect((date as HTMLInputElement).value).toBe(typed);
    }
    fireEvent.change(date, { target: { value: "c. 1760" } });
    expect(await screen.findByText(/about a year is marked with ~.*Write 1760~ instead/)).toBeTruthy();
    expect((screen.getByRole("button", { name: "Begin" }) as HTMLButtonElement).disabled).toBe(true);
    expect((await ask(titles)).data.examinations.edges).toEqual([]);
    fireEvent.click(screen.getByRole("button", { name: "Take 1760~" }));
    expect((date as HTMLInputElement).value).toBe("1760~");
    expect((screen.getByRole("button", { name: "Begin" }) as HTMLButtonElement).disabled).toBe(false);
  });
});
