import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { pressUntil, textOf } from "#tests/support/read-page.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";

describe("a chest of drawers whose attribution fails", () => {
  it("[X1] concludes in a sentence, says that the piece is invented, and from which revision", async () => {
    const page = await open("/");
    await page.getByRole("link", { name: /Millrace chest/ }).click();
    await page.waitForURL(/\/pieces\/examination\.millrace-chest$/);
    const conclusion = page.getByRole("region", { name: "Conclusion", exact: true });
    await expect.poll(() => textOf(conclusion)).toMatch(/cannot be of 1760 to 1780/);
    expect(await textOf(conclusion)).toMatch(/top screws.*feet.*two lower drawers/);
    expect(await textOf(conclusion)).toMatch(/not a certificate or a valuation/);
    expect(await conclusion.getByRole("link", { name: "revision 1" }).isVisible()).toBe(true);
    expect(await page.getByText("invented for demonstration").isVisible()).toBe(true);
    expect(await page.getByText("No such object exists").isVisible()).toBe(true);
  });

  it("[X17] gives three reasons, each with its chain and cited sources, and keeps the unusual apart", async () => {
    const page = await open(CHEST);
    const against = page.getByRole("region", { name: "What rules it out" });
    const items = against.locator("ul > li", { hasText: "cannot be of 1760 to 1780" });
    const reasons = await items.allTextContents();
    expect(reasons).toHaveLength(3);
    for (const feature of [/^gimlet/i, /^band-saw/i, /^dovetail/i])
      expect(reasons.filter((reason) => feature.test(reason))).toHaveLength(1);
    for (const item of await items.all()) {
      const cited = await item
        .getByRole("link")
        .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).pathname));
      expect(cited.some((path) => path.startsWith("/claims/claim."))).toBe(true);
      expect(cited.some((path) => path.startsWith("/sources/source."))).toBe(true);
      expect(await textOf(item)).toMatch(/ published\b/);
    }
    const unusual = page.getByRole("region", { name: "What would be unusual" });
    expect(await textOf(unusual)).toMatch(
      /circular-saw mark[^.]* would be out of its time in 1760 to 1780 by \d+ years: [^.]*\. Unusual, not impossible/i,
    );
  });

  it("[W6] names the exception that would lift a reason and was not looked for", async () => {
    const page = await open(CHEST);
    const conclusion = page.getByRole("region", { name: "Conclusion", exact: true });
    expect(await textOf(conclusion)).toMatch(/exception that was not looked for/);
    const against = page.getByRole("region", { name: "What rules it out" });
    expect(await textOf(against)).toMatch(
      /would count for nothing if found with bow-saw mark on a curve: look for it/i,
    );
  });

  it("[X11] unfolds a strip by keyboard to its steps; a step leads to its source and back", async () => {
    const page = await open(CHEST);
    const strip = page.getByRole("button", { name: /^Gimlet-pointed screw/i });
    await page.locator("[data-strip][tabindex='0']").focus();
    await pressUntil(page, "ArrowDown", /^gimlet-pointed/i);
    await page.keyboard.press("Enter");
    expect(await strip.getAttribute("aria-expanded")).toBe("true");
    const told = page.getByRole("listitem").filter({ has: strip });
    expect(await told.locator("ol > li").count()).toBeGreaterThanOrEqual(3);
    const source = await textOf(told.locator("a[href^='/sources/']").first());
    await page.keyboard.press("Tab");
    await pressUntil(page, "Tab", source, 10);
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/sources\/source\./);
    await page.getByText("How far it was read").waitFor();
    expect(await textOf(page.getByRole("main"))).toContain(source.split(",")[0]);
    await page.goBack();
    await page.getByRole("region", { name: "Conclusion", exact: true }).waitFor();
    expect(page.url()).toContain(CHEST);
  });
});
