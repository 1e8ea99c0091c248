import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Term } from "#server/domain/term.ts";
import { replacing, withdrawing } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const thing = (name: string) => sawGraph.find(({ after }) => after?.id === name)?.after;
const claim = thing("claim.saw") as Claim;
const tool = thing("tool.circular-saw") as Term;
const later = { ...claim, when: "1795", strength: "firm" } as Claim;
const roundSaw = { ...tool, label: "round saw" };
const ground = ["claim.ground-gilded", "claim.ground"].map((name) => thing(name) as Claim);

const changes: readonly Change[] = [
  sawGraph,
  replacing(claim, later),
  replacing(tool, roundSaw),
  withdrawing(...ground),
];
const ask = async () => (await openApi(changes)).ask;
const heading = (name: RegExp | string) => screen.findByRole("heading", { level: 1, name });
const sectionNamed = async (name: RegExp) =>
  (await screen.findByRole("heading", { level: 2, name })).closest("section") as HTMLElement;
const click = (element: HTMLElement) => act(async () => fireEvent.click(element));
const notice = () => screen.findByRole("complementary", { name: "Revision that is read" });

describe("[P50] the history of a claim, a term and a source", () => {
  it("stands on its page, newest first: what, when, by whom, why, and both sides in words", async () => {
    await renderPage("/claims/claim.saw", await ask());
    const history = await sectionNamed(/^History · edited at 2 revisions/);
    const [changed, added] = within(history).getAllByRole("listitem") as [HTMLElement, HTMLElement];
    expect(within(changed).getByRole("heading").textContent).toBe("Changed: date, strength at revision 2");
    expect(changed.textContent).toMatch(/by test/);
    expect(changed.textContent).toMatch(/datewas1790became1795/);
    expect(within(changed).getByRole("link").getAttribute("href")).toBe("/claims/claim.saw?revision=2");
    expect(within(added).getByRole("heading").textContent).toBe("Added at revision 1");
  });

  it("says that nothing was changed", async () => {
    await renderPage("/sources/source.saw-book", await ask());
    await sectionNamed(/^History · not changed since it was added/);
  });
});

describe("[P51] a page as of a revision", () => {
  it("is read as it stood, says so, tells what changed since, and leads to the newest", async () => {
    await renderPage("/claims/claim.saw?revision=1", await ask());
    await heading("Circular saw: introduced in England, 1790.");
    const said = await notice();
    expect(said.textContent).toMatch(/^An old reading\. This claim as of revision 1 of 4, of 1 Jan 2026/);
    expect(within(said).getByRole("button", { name: "What changed since: date, strength" })).toBeTruthy();
    expect(said.textContent).toMatch(/datewas1790is now1795/);
    await click(within(said).getByRole("link", { name: "Read it as it stands now" }));
    await heading("Round saw: introduced in England, 1795.");
    expect(screen.queryByRole("complementary", { name: "Revision that is read" })).toBeNull();
  });

  it("leads to what it names as that stood then, and keeps what it read apart from the newest", async () => {
    await renderPage("/claims/claim.saw?revision=2", await ask());
    await heading("Circular saw: introduced in England, 1795.");
    await click(screen.getByRole("link", { name: "circular saw" }));
    await heading("circular saw");
    expect(window.location.search).toBe("?revision=2");
    await click(within(await notice()).getByRole("link", { name: "Read it as it stands now" }));
    await heading("round saw");
    await click(screen.getByRole("link", { name: "Round saw: introduced in England, 1795." }));
    await heading("Round saw: introduced in England, 1795.");
    expect(window.location.search).toBe("");
  });

  it("names that revision at the top of the page", async () => {
    await renderPage("/terms/tool.circular-saw?revision=1", await ask());
    await screen.findByRole("link", { name: "knowledge as of revision 1 of 4 · 1 Jan 2026" });
    expect((await notice()).textContent).toMatch(/namewascircular sawis nowround saw/);
  });

  it("says that nothing is otherwise now, or that it was withdrawn since", async () => {
    const { unmount } = await renderPage("/sources/source.saw-book?revision=2", await ask());
    expect((await notice()).textContent).toMatch(/Nothing of it is otherwise now/);
    unmount();
    await renderPage("/claims/claim.ground?revision=3", await ask());
    expect((await notice()).textContent).toMatch(/It was withdrawn since/);
    await heading(/^Rough ground: speaks for/);
  });

  it("can be kept at the newest revision", async () => {
    await renderPage("/claims/claim.saw?revision=4", await ask());
    expect((await notice()).textContent).toMatch(/^The newest reading, kept at its revision/);
  });

  it("says of a withdrawn claim when, by whom and why, and leads to how it last stood", async () => {
    await renderPage("/claims/claim.ground", await ask());
    await heading("This claim was withdrawn");
    expect(screen.getByText(/^It was withdrawn at revision 4/).textContent).toMatch(/by test: test\./);
    expect(screen.getByRole("link", { name: "Read it as it last stood" }).getAttribute("href")).toBe(
      "/claims/claim.ground?revision=3",
    );
  });

  it("says of a revision before it was there that it was not there yet", async () => {
    await renderPage("/claims/claim.saw?revision=0", await ask());
    await heading("This claim was not there yet");
    expect(screen.getByRole("link", { name: "Read it as it was added" }).getAttribute("href")).toBe(
      "/claims/claim.saw?revision=1",
    );
  });

  it.each([
    ["9", /^Revision 9 has not been made yet\. Revisions are numbered from 1 to 4/],
    ["99999999999", /^Revision 99999999999 has not been made yet/],
    ["two", /^“two” is not the number of a revision/],
    ["-1", /^“-1” is not/],
    ["1.5", /^“1\.5” is not/],
    ["", /^“” is not/],
  ])("says of revision %j that there is none, and where to go on", async (asked, says) => {
    await renderPage(`/claims/claim.saw?revision=${asked}`, await ask());
    await heading("There is no such revision");
    expect(screen.getByText(says)).toBeTruthy();
    await click(screen.getByRole("link", { name: "the claim as it stands now" }));
    await heading("Round saw: introduced in England, 1795.");
  });

  it("[P5] says of an id that never was that there is none, on any revision", async () => {
    await renderPage("/claims/claim.none?revision=1", await ask());
    await heading("There is no such claim");
    expect(screen.queryByRole("complementary", { name: "Revision that is read" })).toBeNull();
  });
});

const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) { __typename } }`;

describe("[P52] what leans on a claim", () => {
  const withPieces = async (count: number) => {
    const api = await openApi([sawGraph]);
    for (let n = 1; n <= count; n++) await api.ask(CREATE, { piece: { ...sawnChest, title: `Chest ${n}` } });
    return api.ask;
  };

  it("stands on its page: each finding with its strip, how it stands and how without", async () => {
    await renderPage("/claims/claim.saw", await withPieces(1));
    const leaning = await sectionNamed(/^What leans on it/);
    const strip = await within(leaning).findByRole("link", { name: "Round saw marks on the drawer bottom" });
    expect(strip.getAttribute("href")).toMatch(/^\/pieces\/examination\.[^#]+#strip-o1$/);
    expect(leaning.textContent).toMatch(/contradiction/);
    expect(leaning.textContent).toMatch(/as it stands15 years too late/);
    expect(leaning.textContent).toMatch(/without this claimsays nothing/);
    expect(leaning.textContent).toMatch(/Without this claim it would readThe evidence does not discriminate/);
    expect(leaning.textContent).toMatch(/The one examination looked through/);
  });

  it("says that nothing leans on it, and that no piece has been examined", async () => {
    const { unmount } = await renderPage("/claims/claim.plain-saw", await withPieces(2));
    await screen.findByText("All 2 examinations looked through: nothing in them leans on this claim.");
    unmount();
    await renderPage("/claims/claim.saw", await withPieces(0));
    await screen.findByText("No piece has been examined yet.");
  });

  it("looks through ten at a time, and says so", async () => {
    await renderPage("/claims/claim.saw", await withPieces(12));
    const leaning = await sectionNamed(/^What leans on it/);
    await within(leaning).findByText(/^10 of 12 examinations looked through/);
    const shown = () => within(leaning).getAllByRole("heading", { level: 3 }).length;
    expect(shown()).toBe(10);
    await click(within(leaning).getByRole("button", { name: "Look through more" }));
    await within(leaning).findByText(/^All 12 examinations looked through/);
    await waitFor(() => expect(shown()).toBe(12));
  });

  it("is not said on an old reading, nor of a claim that counts for nothing, nor on a term", async () => {
    const rejected = replacing(claim, { ...claim, status: "rejected" });
    const { ask } = await openApi([sawGraph, rejected]);
    for (const path of ["/claims/claim.saw?revision=1", "/claims/claim.saw", "/terms/tool.circular-saw"]) {
      const { unmount } = await renderPage(path, ask);
      await sectionNamed(/^History/);
      expect(screen.queryByRole("heading", { name: /^What leans on it/ })).toBeNull();
      unmount();
    }
  });
});
