import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";

describe("on paper", () => {
  it("prints the demo mark, the conclusion, the citations and the cautions, and no controls", async () => {
    const page = await open(CHEST);
    await page.emulateMedia({ media: "print" });
    for (const words of ["invented for demonstration", "No such object exists"])
      expect(await page.getByText(words).first().isVisible(), words).toBe(true);
    expect(await page.getByRole("region", { name: "Conclusion", exact: true }).isVisible()).toBe(true);
    const against = page.getByRole("region", { name: "What rules it out" });
    const sources = against.locator("a[href^='/sources/']");
    expect(await sources.count()).toBeGreaterThan(3);
    for (const source of await sources.all()) expect(await source.isVisible()).toBe(true);
    expect(await page.getByText("Evidence, not a certificate or a valuation.").first().isVisible()).toBe(
      true,
    );
    expect(
      await page
        .getByText(/qualified conservator/)
        .first()
        .isVisible(),
    ).toBe(true);
    for (const name of ["Rename", /^Undo/, /^Print/, "Change what is claimed"])
      expect(await page.getByRole("button", { name }).count(), String(name)).toBe(0);
    expect(await page.getByRole("combobox").count()).toBe(0);
  });

  it("prints what was seen on closed parts with its notes, and why signs are set aside", async () => {
    const page = await open("/pieces/examination.saltmarsh-chest");
    await page.emulateMedia({ media: "print" });
    expect(await page.getByText("Two rows of holes four millimetres apart.").isVisible()).toBe(true);
    const signs = page.getByRole("region", { name: "Signs of alteration" });
    expect(await signs.getByText(/^Set aside by /).count()).toBe(8);
    for (const reason of await signs.getByText(/^Set aside by /).all())
      expect(await reason.isVisible()).toBe(true);
  });

  it("fits the width of the paper", async () => {
    const page = await open(CHEST, { viewport: { width: 718, height: 1000 } });
    await page.emulateMedia({ media: "print" });
    expect(await sticksOut(page)).toEqual(NOTHING);
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  });
});
