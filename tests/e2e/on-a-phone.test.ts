import { describe, expect, it } from "vitest";
import { inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";

describe("on a phone of 390 px", () => {
  it("lays the strips out anew: the name above the bar, each row at least 44 px high", async () => {
    const page = await open(CHEST, PHONE);
    const rows = await page.locator("[data-strip]").evaluateAll((strips) =>
      strips.map((strip) => {
        const [name, bar] = [...strip.children].map((child) => child.getBoundingClientRect());
        return {
          high: strip.getBoundingClientRect().height,
          gap: (bar?.bottom ?? 0) - (name?.bottom ?? 0),
          wide: (bar?.width ?? 0) / strip.getBoundingClientRect().width,
        };
      }),
    );
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows) {
      expect(row.high).toBeGreaterThanOrEqual(44);
      expect(row.gap, "bar ends below the name").toBeGreaterThan(0);
      expect(row.wide, "bar takes the width").toBeGreaterThan(0.9);
    }
  });

  it("puts piece, years and conclusions one below the other", async () => {
    const page = await open(CHEST, PHONE);
    const tops = await Promise.all(
      [
        page.getByRole("region", { name: "Conclusion", exact: true }),
        page.getByRole("region", { name: "The piece", exact: true }),
        page.getByRole("region", { name: /^When each thing seen/ }),
        page.getByRole("region", { name: "What rules it out" }),
      ].map(async (region) => (await region.boundingBox())?.y ?? Number.NaN),
    );
    expect(tops).toEqual(tops.toSorted((a, b) => a - b));
    expect(new Set(tops).size).toBe(4);
  });

  it("unfolds a strip and opens the path view by touch", async () => {
    const page = await open(CHEST, PHONE);
    await page.getByRole("button", { name: /^Gimlet-pointed screw/i }).tap();
    await page
      .getByRole("button", { name: /^Draw the (\d+ )?paths?$/ })
      .first()
      .tap();
    await page.getByRole("dialog").getByRole("list", { name: "The ways, one by one" }).waitFor();
    expect(await sticksOut(page)).toEqual(NOTHING);
  });

  it("breaks a long title, which pushes nothing out", async () => {
    const page = await open(CHEST, { viewport: { width: 390, height: 844 } });
    await page.getByRole("button", { name: "Rename" }).click();
    const long = "Nussbaumfurnierte Schreibkommodenaufsatzschrankrückwandverstärkungsleiste";
    await page.getByRole("textbox", { name: "What the piece is called" }).fill(`${long} ${long}`);
    await page.getByRole("button", { name: "Keep", exact: true }).click();
    await page.getByRole("heading", { level: 1, name: long }).waitFor();
    expect(await sticksOut(page)).toEqual(NOTHING);
  });
});
