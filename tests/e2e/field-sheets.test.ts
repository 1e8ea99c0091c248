import { describe, expect, it } from "vitest";
import { inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open } = inBrowser();
/** A4 without its margins, in CSS pixels. */
const PAPER = { viewport: { width: 703, height: 1000 } };
/** Forms and the most pages that their sheets may take. */
const SHEETS: readonly (readonly [string, number])[] = [
  ["form.chest-of-drawers", 6],
  ["form.drop-leaf-table", 5],
  ["form.side-chair", 5],
  ["form.fall-front-desk", 7],
];

describe("a field sheet on paper", () => {
  it.each(SHEETS)("[F11] of a %s takes at most %i pages of A4 and cuts no row", async (form, most) => {
    const page = await open(`/sheets/${form}`, PAPER);
    await page.waitForLoadState("networkidle");
    await page.emulateMedia({ media: "print" });
    expect(await sticksOut(page)).toEqual(NOTHING);
    const rows = await page.getByRole("article").locator("li:has(h4)").all();
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows)
      expect(await row.evaluate((li) => getComputedStyle(li).breakInside)).toBe("avoid");
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    const pages = pdf.match(/\/Type\s*\/Page\b/g) ?? [];
    expect(pages.length).toBeGreaterThan(1);
    expect(pages.length).toBeLessThanOrEqual(most);
    expect(pdf).toMatch(/\/MediaBox\s*\[0 0 59[45][.\d]* 84[12][.\d]*\]/);
  });

  it("[F10] [F11] prints cautions, drawings, boxes and lines, and no controls", async () => {
    const page = await open("/sheets/form.side-chair");
    await page.waitForLoadState("networkidle");
    await page.emulateMedia({ media: "print" });
    expect(await page.getByRole("region", { name: "Cautions" }).isVisible()).toBe(true);
    expect(await page.locator("article svg[data-drawing]").count()).toBeGreaterThan(10);
    for (const label of ["Piece", "Where it stands", "Looked at on", "By"])
      expect(await page.getByText(label, { exact: true }).isVisible(), label).toBe(true);
    expect(await page.getByText("not visible", { exact: true }).first().isVisible()).toBe(true);
    expect(await page.getByRole("button").count()).toBe(0);
    expect(await page.getByRole("combobox").count()).toBe(0);
    expect(await page.getByRole("radio").count()).toBe(0);
  });
});

describe("a field sheet on a phone", () => {
  it("[F11] is found, narrowed to a region and read, without scrolling sideways", async () => {
    const page = await open("/sheets", PHONE);
    await page.getByRole("searchbox", { name: "Find a form" }).fill("drop-leaf");
    await page.getByRole("link", { name: "drop-leaf table" }).tap();
    await page.getByRole("heading", { level: 1, name: "Field sheet: drop-leaf table" }).waitFor();
    await page.getByRole("combobox", { name: "Region claimed" }).fill("new eng");
    await page.getByRole("option", { name: /^New England/ }).tap();
    await page.getByText(/^Claimed: New England/).waitFor();
    expect(new URL(page.url()).search).toBe("?region=region.new-england");
    await page.getByRole("link", { name: "From underneath" }).tap();
    expect(await sticksOut(page)).toEqual(NOTHING);
  });

  it("[F12] begins an examination of the form with its parts", async () => {
    const page = await open("/sheets/form.side-chair?region=region.england&date=1760/1780", PHONE);
    await page.getByRole("button", { name: "Begin an examination with this sheet" }).tap();
    await page.waitForURL(/\/pieces\/examination\./);
    await page.getByRole("heading", { level: 1, name: /Side chair/ }).waitFor();
    const parts = page.getByRole("region", { name: "Parts" });
    await parts.waitFor();
    for (const part of ["Leg", "Splat", "Seat rail"])
      expect(await parts.getByRole("button", { name: new RegExp(`^${part}`) }).count(), part).toBeGreaterThan(
        0,
      );
  });
});
