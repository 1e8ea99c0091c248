import { screen, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { rivalSawClaims } from "#tests/support/rival-saw-claims.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph, rivalSawClaims])).ask;
});

const sectionNamed = async (name: RegExp) =>
  (await screen.findByRole("heading", { level: 2, name })).closest("section") as HTMLElement;

describe("the page of a claim", () => {
  it("says when, where it holds and how far it can be leaned on", async () => {
    await renderPage("/claims/claim.saw-late", ask);
    const when = await sectionNamed(/^When/);
    expect(within(when).getByText("introduced between 1805 and 1810.")).toBeTruthy();
    expect(within(when).getByRole("heading").textContent).toBe("When · written 1805/1810");
    expect(screen.getAllByRole("link", { name: "England" }).length).toBeGreaterThan(0);
    expect(screen.getByText("furniture of every form", { exact: false })).toBeTruthy();
    expect(screen.getByText(/^tentative/).textContent).toMatch(/cannot be of others/);
  });

  it("[P6] shows each citation with its source, locator and basis", async () => {
    await renderPage("/claims/claim.saw", ask);
    const said = await sectionNamed(/^Who says so/);
    const source = within(said).getByRole("link");
    expect(source.textContent).toMatch(/Saws and their marks.*p\. 12$/);
    expect(source.getAttribute("href")).toBe("/sources/source.saw-book");
    expect(within(said).getByText("published")).toBeTruthy();
  });

  it("[P6] says of a claim from memory that nobody has confirmed it", async () => {
    await renderPage("/claims/claim.saw-late", ask);
    const said = await sectionNamed(/^Who says so/);
    expect(within(said).getByText("from memory, unconfirmed")).toBeTruthy();
    expect(within(said).getByText("Said in the workshop.")).toBeTruthy();
  });

  it("[P13] stands beside the others of its subject and relation, with how they stand to each other", async () => {
    await renderPage("/claims/claim.saw", ask);
    const beside = await sectionNamed(/^Beside it/);
    const verdicts = within(beside)
      .getAllByRole("listitem")
      .map((item) => item.querySelector("p")?.textContent?.trim())
      .filter((text) => text !== undefined);
    expect(verdicts).toEqual(["● can both be true", "✕ disagrees by 15 years", "○ meant for London"]);
  });

  it("[P6] says of a rejected claim that it counts for nothing", async () => {
    await renderPage("/claims/claim.saw-misprint", ask);
    expect(await screen.findByText(/This claim is rejected: .* counts for nothing/)).toBeTruthy();
  });

  it("lists the ways of what is required and what follows from them", async () => {
    await renderPage("/claims/claim.marks", ask);
    const ways = await sectionNamed(/^What it can be made with/);
    expect(within(ways).getByRole("link", { name: "circular saw" })).toBeTruthy();
    expect(within(ways).getByText(/^No other way is known/)).toBeTruthy();
  });

  it("leads from a sign to its exception and back", async () => {
    const { unmount } = await renderPage("/claims/claim.ground", ask);
    const exceptions = await sectionNamed(/^Exceptions/);
    expect(
      within(exceptions)
        .getByRole("link", { name: /traces of gesso/ })
        .getAttribute("href"),
    ).toBe("/claims/claim.ground-gilded");
    const states = await sectionNamed(/^What it speaks for/);
    expect(within(states).getByText(/the part is later than the piece/)).toBeTruthy();
    unmount();
    await renderPage("/claims/claim.ground-gilded", ask);
    const setAside = await sectionNamed(/^The claim it sets aside/);
    expect(
      within(setAside)
        .getByRole("link", { name: /^Rough ground/ })
        .getAttribute("href"),
    ).toBe("/claims/claim.ground");
  });
});
