import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";

const { open } = inBrowser();

describe("reading the evidence", () => {
  it("[P12] finds a term in spite of a typing error, and keeps the words in the address", async () => {
    const page = await open("/evidence");
    await page.getByRole("searchbox", { name: "Search the terms" }).fill("circulr saw");
    const found = page.getByRole("region", { name: "Found" });
    await found.getByRole("link", { name: "circular saw", exact: true }).waitFor();
    expect(new URL(page.url()).searchParams.get("words")).toBe("circulr saw");
    await page.getByRole("searchbox").fill("zzqqy");
    await found.getByText(/^Nothing is called “zzqqy”.*Try /).waitFor();
  });

  it("[P6] goes from a term to a claim with its basis, to the source, and to the claims that rest on it", async () => {
    const page = await open("/evidence?words=gimlet-point+screw+machine");
    await page.getByRole("link", { name: "gimlet-point screw machine", exact: true }).click();
    await page.getByRole("heading", { level: 1, name: "gimlet-point screw machine" }).waitFor();
    const claims = page
      .getByRole("region", { name: /Claims about it/ })
      .or(page.getByRole("main"))
      .first();
    const bases = await claims.getByText(/^(published|common practice|from memory.*)$/).count();
    expect(bases).toBeGreaterThan(0);
    await page
      .getByRole("link", { name: "Gimlet-point screw machine: introduced in the United States, 1846." })
      .click();
    await page.getByRole("heading", { level: 1, name: /introduced in the United States, 1846/ }).waitFor();
    const main = page.getByRole("main");
    const citation = main.getByRole("listitem").filter({ hasText: "Dating of Old Houses" }).first();
    await citation.getByText("published", { exact: true }).waitFor();
    expect(await textOf(main)).toMatch(/Where it holds.*in (the )?United States/);
    await expect.poll(() => textOf(main)).toMatch(/introduced in the United States, 1841/);
    await citation.getByRole("link", { name: /Dating of Old Houses/ }).click();
    await page.getByRole("heading", { level: 1, name: /Dating of Old Houses/ }).waitFor();
    expect(await textOf(main)).toMatch(/How far it was read/);
    await main.getByRole("link", { name: /Gimlet-point screw machine: introduced/ }).waitFor();
  });

  it("[P4] names the document, puts the focus on the heading of a new page, and starts at its top", async () => {
    const page = await open("/terms/tool.circular-saw");
    expect(await page.title()).toBe("circular saw · Scribeline");
    const claim = page.getByRole("main").locator("a[href^='/claims/']").last();
    await claim.scrollIntoViewIfNeeded();
    await claim.click();
    await page.waitForURL(/\/claims\//);
    await expect
      .poll(() => page.evaluate(() => [document.activeElement?.tagName, Math.round(window.scrollY)]))
      .toEqual(["H1", 0]);
    expect(await page.getByRole("heading", { level: 1 }).count()).toBe(1);
  });

  it.each([
    ["/nowhere", "There is no such page"],
    ["/terms/tool.perpetual-plane", "There is no such term"],
    ["/claims/claim.none", "There is no such claim"],
    ["/sources/source.none", "There is no such source"],
    ["/pieces/examination.none", "There is no such examination"],
  ])("[P5] says of %s that there is none, and where to go on", async (path, says) => {
    const page = await open(path);
    await page.getByRole("heading", { level: 1, name: says }).waitFor();
    await page.getByRole("main").getByRole("link", { name: "search the evidence" }).click();
    await page.getByRole("heading", { level: 1, name: "Evidence" }).waitFor();
  });
});
