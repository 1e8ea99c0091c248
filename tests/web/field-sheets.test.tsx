import { act, fireEvent, screen, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sheetGraph } from "#tests/support/sheet-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sheetGraph])).ask;
});

const BUREAU = "/sheets/form.bureau?region=region.home&date=1760/1770";
const rowOf = async (name: string) => {
  const heading = await screen.findByRole("heading", { level: 4, name });
  return heading.closest("li") as HTMLElement;
};

describe("the list of field sheets", () => {
  it("[F9] leads to the sheet of every form, under its broadest form", async () => {
    await renderPage("/sheets", ask);
    const group = (await screen.findByRole("heading", { level: 2, name: "case piece" })).closest("section");
    const bureau = within(group as HTMLElement).getByRole("link", { name: "bureau" });
    expect(bureau.getAttribute("href")).toBe("/sheets/form.bureau");
    expect(bureau.parentElement?.textContent).toContain("writing chest");
    const places = within(screen.getByRole("navigation", { name: "Places" }));
    expect(places.getByRole("link", { name: "Learn" }).getAttribute("aria-current")).toBe("page");
  });

  it("[F9] is searched by another name, tells how many are found, and says what to try if none is", async () => {
    await renderPage("/sheets", ask);
    const field = await screen.findByRole("searchbox", { name: "Find a form" });
    expect(screen.getByText("3 forms")).toBeTruthy();
    fireEvent.change(field, { target: { value: "writing" } });
    expect(screen.getByText("1 form found")).toBeTruthy();
    expect(screen.queryByRole("link", { name: "stool" })).toBeNull();
    fireEvent.change(field, { target: { value: "gondola" } });
    expect(screen.getByText(/^No form by these words/)).toBeTruthy();
  });

  it("[F9] says so where there are none", async () => {
    await renderPage("/sheets", (await openApi([])).ask);
    expect(await screen.findByText(/^No forms yet/)).toBeTruthy();
  });
});

describe("a field sheet", () => {
  it("[F10] stands under its cautions and says what it is for", async () => {
    await renderPage(BUREAU, ask);
    expect((await screen.findByRole("heading", { level: 1 })).textContent).toBe("Field sheet: bureau");
    expect(screen.getByText(/^Claimed: Home, .*1760.*1770/)).toBeTruthy();
    const cautions = screen.getByRole("region", { name: "Cautions" });
    for (const of of [/Lifting/, /Old finishes/, /locks/, /samples/i, /Protected species/])
      expect(cautions.textContent).toMatch(of);
    expect(screen.getAllByRole("heading", { level: 2 }).map(({ textContent }) => textContent)).toEqual([
      ...["As it stands", "Drawers out, doors open", "From behind"],
    ]);
  });

  it("[F10] [P6] has for a feature how to look, with what, what it would mean and on which claims of which basis", async () => {
    await renderPage(BUREAU, ask);
    const row = await rowOf("saw arcs");
    expect(row.textContent).toContain(
      "Rake the lamp across the board. Measure three arcs. raking light, rule or tape.",
    );
    expect(row.textContent).toContain("Possible 1800 or later. 30 years too late for the claimed date.");
    expect(row.textContent).toContain("published; common practice: arcs, disc-saw");
    expect(within(row).getByRole("link", { name: "disc-saw" }).getAttribute("href")).toBe(
      "/claims/claim.disc-saw",
    );
    expect(within(row).getByRole("link", { name: "saw arcs" }).getAttribute("href")).toBe(
      "/terms/feature.arcs",
    );
    for (const box of ["seen", "not there", "not visible"]) expect(within(row).getByText(box)).toBeTruthy();
  });

  it("[F10] cautions where something has to be unfastened", async () => {
    await renderPage(`${BUREAU}&each=8`, ask);
    expect((await rowOf("turned screw")).textContent).toContain("Caution: Only with the owner's leave");
  });

  it("[F6] [F10] leads to what it leaves out", async () => {
    await renderPage("/sheets/form.case-piece?region=region.home", ask);
    const left = await screen.findAllByRole("link", { name: /^1 more tells something on it$/ });
    expect(left.map((link) => link.getAttribute("href"))).toEqual([
      "/evidence/parts?form=form.case-piece&part=part.carcase",
      "/evidence/parts?form=form.case-piece&part=part.back",
    ]);
  });

  it("[F10] takes a claimed date, and refuses one that cannot be read with what to write instead", async () => {
    await renderPage("/sheets/form.bureau", ask);
    const field = await screen.findByRole("textbox", { name: "Date claimed" });
    fireEvent.change(field, { target: { value: "c.1765" } });
    expect(screen.getByText(/cannot be read/)).toBeTruthy();
    fireEvent.change(field, { target: { value: "1765~" } });
    await act(async () => fireEvent.submit(field.closest("form") as HTMLFormElement));
    expect(await screen.findByText(/^Claimed: made 1765/)).toBeTruthy();
    expect(window.location.search).toBe("?date=1765%7E");
  });

  it("[F10] changes its length in the address", async () => {
    await renderPage("/sheets/form.bureau", ask);
    const longest = await screen.findByRole("radio", { name: /^longest/ });
    await act(async () => fireEvent.click(longest));
    expect(await screen.findByRole("heading", { level: 4, name: "turned screw" })).toBeTruthy();
    expect(window.location.search).toBe("?each=8");
  });

  it("[P5] says that there is no such form, or what is wrong with the address", async () => {
    const { unmount } = await renderPage("/sheets/form.bureaux", ask);
    expect(await screen.findByRole("heading", { level: 1, name: "There is no such form" })).toBeTruthy();
    unmount();
    await renderPage("/sheets/form.bureau?region=region.nowhere", ask);
    expect(await screen.findByText(/There is no term region.nowhere/)).toBeTruthy();
    expect(screen.getByRole("link", { name: /for any place and date/ }).getAttribute("href")).toBe(
      "/sheets/form.bureau",
    );
  });

  it("says so where nothing would tell anything", async () => {
    const bare = sheetGraph.filter(({ kind }) => kind === "term");
    await renderPage("/sheets/form.bureau", (await openApi([bare])).ask);
    expect(await screen.findByText(/^Nothing is known yet/)).toBeTruthy();
  });

  it("[F12] begins an examination with its form, date and parts", async () => {
    const api = await openApi([sheetGraph]);
    await renderPage(BUREAU, api.ask);
    const begin = await screen.findByRole("button", { name: "Begin an examination with this sheet" });
    await act(async () => fireEvent.click(begin));
    await screen.findByRole("heading", { level: 1, name: /Bureau/ });
    expect(window.location.pathname).toMatch(/^\/pieces\/examination\./);
    const { data } = await api.ask(
      "{ examinations { edges { node { piece { attribution { date form { id } region { id } } parts { kind { id } } observations { id } } } } } }",
    );
    expect(data.examinations.edges).toEqual([
      {
        node: {
          piece: {
            attribution: { date: "1760/1770", form: { id: "form.bureau" }, region: { id: "region.home" } },
            parts: ["carcase", "back", "drawer", "foot"].map((kind) => ({ kind: { id: `part.${kind}` } })),
            observations: [],
          },
        },
      },
    ]);
  });

  it("is reached from the form and from the lessons, and every page has the list at its foot", async () => {
    const { unmount } = await renderPage("/terms/form.bureau", ask);
    const link = await screen.findByRole("link", { name: "What to look for on a piece" });
    expect(link.getAttribute("href")).toBe("/sheets/form.bureau");
    expect(screen.getByRole("link", { name: "Field sheets" }).getAttribute("href")).toBe("/sheets");
    unmount();
    await renderPage("/learn", ask);
    expect((await screen.findByRole("link", { name: /^field sheets by form/ })).getAttribute("href")).toBe(
      "/sheets",
    );
  });
});
