import { screen, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";
import { SAW_MEASURES } from "#tests/support/saw-measures.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph], undefined, undefined, SAW_MEASURES)).ask;
});

describe("the reference tables of a term", () => {
  it("[P40] name what was measured before how much, one table a measure", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    const marks = await screen.findByRole("table", { name: "saw marks" });
    expect(
      within(marks)
        .getAllByRole("columnheader")
        .map((cell) => cell.textContent),
    ).toEqual(["What", "How much, and who says so"]);
    const pitch = within(marks).getByRole("row", { name: /^distance between the arcs/ });
    expect(pitch.textContent).toMatch(/^distance between the arcs1\.5 to 4 mmusual.*common practice$/);
    expect(within(screen.getByRole("table", { name: "rules" })).getByText("c²/8h + h/2")).toBeTruthy();
  });

  it("[P40] set values that differ side by side, each with its place, basis and source", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    const row = await screen.findByRole("row", { name: /^diameter of the blade/ });
    expect(within(row).getByRole("rowheader").textContent).toMatch(/2 values, which differ$/);
    const [london, memory] = within(row)
      .getAllByText(/^(760|900) mm$/)
      .map((value) => value.closest("li") as HTMLElement);
    expect(within(london as HTMLElement).getByRole("link", { name: "London" })).toBeTruthy();
    expect(
      within(london as HTMLElement)
        .getByRole("link", { name: /Saws and their marks.*p\. 31$/ })
        .getAttribute("href"),
    ).toBe("/sources/source.saw-book");
    expect(memory?.textContent).toMatch(/tentative.*Of one mill only\..*from memory, unconfirmed/);
  });

  it("[P40] are not there where nothing is measured", async () => {
    await renderPage("/terms/feature.round-saw-marks", ask);
    await screen.findByRole("heading", { level: 1, name: "round saw marks" });
    expect(screen.queryByRole("heading", { name: /^Measured and counted/ })).toBeNull();
  });
});
