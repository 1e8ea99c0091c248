import { screen, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { rivalSawClaims } from "#tests/support/rival-saw-claims.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph, rivalSawClaims])).ask;
});

const headingNamed = (level: number, name: string | RegExp) => screen.findByRole("heading", { level, name });

describe("the page of a term", () => {
  it("[P4] is named after the term", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    await headingNamed(1, "circular saw");
    expect(document.title).toBe("circular saw · Scribeline");
  });

  it("says what a feature is, what else it is called and where to look for it", async () => {
    await renderPage("/terms/feature.round-saw-marks", ask);
    await headingNamed(1, "round saw marks");
    expect(screen.getByText("Arcs of one radius.")).toBeTruthy();
    expect(screen.getByText("also called arc marks")).toBeTruthy();
    expect(screen.getByRole("link", { name: "drawer bottom" }).getAttribute("href")).toBe(
      "/terms/part.drawer-bottom",
    );
  });

  it("[J48] says what it is called now where it was merged, and leads there", async () => {
    const merged = aTerm("tool.round-saw", { broader: id<"term">("tool.circular-saw"), merged: true });
    const { ask } = await openApi([sawGraph, adding(merged)]);
    await renderPage("/terms/tool.round-saw", ask);
    await headingNamed(1, "round saw");
    const told = screen.getByText(/^Now called/);
    expect(within(told).getByRole("link", { name: "circular saw" }).getAttribute("href")).toBe(
      "/terms/tool.circular-saw",
    );
  });

  it("shows a match in the thesaurus as unchecked", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    expect(await screen.findByText(/circular saws, 300022464/)).toBeTruthy();
    expect(screen.getByText(/match unchecked/)).toBeTruthy();
  });

  it("[P6] shows every claim about it with its basis", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    const claims = (await headingNamed(2, /^Claims about it/)).closest("section") as HTMLElement;
    const lines = within(claims)
      .getAllByRole("link")
      .filter((link) => link.getAttribute("href")?.startsWith("/claims/"));
    expect(lines.length).toBe(7);
    for (const line of lines) {
      const claim = line.closest("li")?.textContent ?? "";
      expect(claim).toMatch(/published|common practice|from memory, unconfirmed/);
    }
  });

  it("[P6] says of a rejected claim that it counts for nothing, and leaves it out of the years", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    const years = (await headingNamed(2, /^Its years, by region/)).closest("section") as HTMLElement;
    expect(within(years).queryByRole("link", { name: /common until/ })).toBeNull();
    expect(screen.getByText(/^rejected: /)).toBeTruthy();
  });

  it("[P8] gives the years of each region in words beside the drawing", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    const years = (await headingNamed(2, /^Its years, by region/)).closest("section") as HTMLElement;
    const regions = within(years).getAllByRole("heading", { level: 3 });
    expect(regions.map((region) => region.textContent)).toEqual(["England", "London"]);
    expect(within(years).getByRole("link", { name: "introduced 1805–1810" }).getAttribute("href")).toBe(
      "/claims/claim.saw-late",
    );
    expect(within(years).getByRole("link", { name: "introduced about 1793" })).toBeTruthy();
  });

  it("lists the claims of other terms that name it", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    const naming = (await headingNamed(2, /^Claims that name it/)).closest("section") as HTMLElement;
    expect(within(naming).getByRole("link", { name: /Round saw marks/ })).toBeTruthy();
  });

  it("[P5] says so when there is no such term", async () => {
    await renderPage("/terms/tool.no-such-saw", ask);
    await headingNamed(1, "There is no such term");
    expect(screen.getByText(/tool\.no-such-saw/)).toBeTruthy();
  });
});
