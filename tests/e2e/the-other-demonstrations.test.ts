import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";

const { open } = inBrowser();

const section = (page: Page, name: string) => page.getByRole("region", { name, exact: true });
const conclusion = (page: Page) => textOf(section(page, "Conclusion"));
/** Signs set aside, each with the reason given below it. */
const signsAside = (page: Page) =>
  section(page, "Signs of alteration").getByRole("listitem").filter({ hasText: "Set aside by" });

describe("a sound chest with innocent oddities", () => {
  it("is ruled out by nothing, and nothing of it is unusual", async () => {
    const page = await open("/pieces/examination.saltmarsh-chest");
    expect(await conclusion(page)).toMatch(/^Nothing recorded rules 1755 to 1775 out/);
    for (const name of ["What rules it out", "What would be unusual"]) {
      expect(await section(page, name).getByRole("link").count()).toBe(0);
      expect(await textOf(section(page, name))).not.toMatch(/cannot be|would be out of its time/);
    }
    expect(await page.getByRole("button", { name: /cannot be of|out of its time/ }).count()).toBe(0);
  });

  it("shows its signs of alteration as set aside, each with what was seen instead", async () => {
    const page = await open("/pieces/examination.saltmarsh-chest");
    const told = await signsAside(page).allTextContents();
    expect(told).toHaveLength(8);
    for (const reason of ["plug lying under the first finish", "drawer left open to the light"])
      expect(told.filter((text) => text.includes(`Set aside by ${reason}.`))).toHaveLength(1);
    const unlikeFeet = page.getByRole("button", { name: /^Feet of other wood/i });
    expect(await unlikeFeet.getAttribute("aria-label")).toMatch(/says nothing of the date/);
    expect(await textOf(unlikeFeet)).toMatch(/set aside/);
  });
});

describe("a chair with rough carving once gilded", () => {
  it("[W6] sets its carving aside by the gesso that was found", async () => {
    const page = await open("/pieces/examination.larkspur-chair");
    const told = await signsAside(page).allTextContents();
    expect(told).toHaveLength(2);
    for (const sign of told)
      expect(sign).toMatch(/^Rough, shallow tool work on carving.*Set aside by traces of gesso or bole\./);
    expect(await conclusion(page)).toMatch(/^Nothing recorded rules 1770 to 1780 out/);
  });
});

describe("a drop-leaf table with later leaves", () => {
  it("says the leaves cannot be of the claimed years, and leaves frame and legs alone", async () => {
    const page = await open("/pieces/examination.ropewalk-table");
    expect(await conclusion(page)).toMatch(/^The left leaf and the right leaf cannot be of 1745 to 1765/);
    const against = section(page, "What rules it out");
    const reasons = against.locator("ul > li", { hasText: "cannot be of 1745 to 1765" });
    expect(await reasons.allTextContents()).toEqual([
      expect.stringMatching(/on the left leaf cannot be/),
      expect.stringMatching(/on the right leaf cannot be/),
    ]);
    const parts = page.getByRole("region", { name: "Parts" });
    await parts.getByRole("button", { name: /^Frame/ }).click();
    await parts.getByText("can be of 1745 to 1765").waitFor();
    await parts.getByRole("button", { name: /^Left leaf/ }).click();
    await parts.getByText("cannot be of 1745 to 1765").waitFor();
  });

  it("[X15] hatches the leaves on the drawing, and says it", async () => {
    const page = await open("/pieces/examination.ropewalk-table");
    const leaf = page.getByRole("button", { name: /left leaf.*cannot be/i }).and(page.locator("svg *"));
    expect(await leaf.locator("[data-hatching='hard']").count()).toBeGreaterThan(0);
    await leaf.focus();
    await page.keyboard.press("Enter");
    await page
      .getByRole("region", { name: "Parts" })
      .getByRole("button", { name: /^Left leaf/, expanded: true })
      .waitFor();
  });
});
