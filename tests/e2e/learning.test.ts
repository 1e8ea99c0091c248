import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { pressUntil } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open } = inBrowser();
const LESSON = "/learn/kerfs-on-a-curve";

describe("a lesson in the browser", () => {
  it("[L10] is gone through by keyboard alone: choose, ask, read, turn, go on", async () => {
    const page = await open(LESSON);
    await pressUntil(page, "Tab", /For sash-saw marks on the case sides$/);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    expect(await page.getByRole("radio", { name: /^For the mark of a bow saw/ }).isChecked()).toBe(true);
    expect(await page.getByRole("region", { name: "What the evidence says" }).count()).toBe(0);
    await pressUntil(page, "Tab", /^See what the evidence says$/, 3);
    await page.keyboard.press("Enter");
    const answer = page.getByRole("region", { name: "What the evidence says" });
    await answer.getByText("So it says.").waitFor();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe("What the evidence says");
    await pressUntil(page, "Tab", /^the other curves were not turned/, 40);
    await page.keyboard.press("ArrowDown");
    await expect
      .poll(() => answer.locator("[data-turning] [aria-live]").textContent())
      .toMatch(/says nothing/);
    await pressUntil(page, "Tab", /^Next: /, 20);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 1, name: "Ridges under the leaves" }).waitFor();
  });

  it("[L8] stays gone through in this browser, until it is forgotten", async () => {
    const page = await open(LESSON);
    await page.getByRole("radio", { name: /^For wear/ }).check({ force: true });
    await page.getByRole("button", { name: "See what the evidence says" }).click();
    await page.goto(new URL("/learn", page.url()).href);
    await page.getByText("gone through").waitFor();
    await page.reload();
    await page.getByText("gone through").waitFor();
    await page.getByRole("button", { name: "Forget what I went through" }).click();
    await page.getByText("gone through").waitFor({ state: "detached" });
  });

  it("[L10] prints the question with its choices, and the answer with its sources once it was asked for", async () => {
    const page = await open(LESSON, { viewport: { width: 718, height: 1000 } });
    await page.emulateMedia({ media: "print" });
    await page.getByText("Which one look could take that reason away?").waitFor();
    expect(await page.getByText("For wear under the feet").isVisible()).toBe(true);
    expect(await page.getByText("It does not say what cut the curve.").count()).toBe(0);
    expect(await page.getByRole("button", { name: /^(Print|See what)/ }).count()).toBe(0);
    await page.emulateMedia({ media: "screen" });
    await page.getByRole("radio", { name: /^For sash/ }).check({ force: true });
    await page.getByRole("button", { name: "See what the evidence says" }).click();
    await page.getByText("It says otherwise.").waitFor();
    await page.emulateMedia({ media: "print" });
    const answer = page.getByRole("region", { name: "What the evidence says" });
    expect(await answer.getByText("It does not say what cut the curve.").isVisible()).toBe(true);
    const sources = await answer.locator("a[href^='/sources/']").all();
    expect(sources.length).toBeGreaterThan(1);
    for (const source of sources) expect(await source.isVisible()).toBe(true);
    expect(await sticksOut(page)).toEqual(NOTHING);
  });

  it("[L1] [L2] answers the examples of the method while one reads, and anew when one is changed", async () => {
    const page = await open("/method");
    const section = page.locator("#repaired");
    await section.scrollIntoViewIfNeeded();
    const told = () => section.locator("[aria-live]").first().textContent();
    await expect.poll(told).toMatch(/^The back boards cannot be/);
    await section.getByRole("radio", { name: /^an older, dark-edged hole/ }).check({ force: true });
    await expect.poll(told).toMatch(/^The evidence does not discriminate/);
  });
});
