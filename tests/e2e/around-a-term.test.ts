import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open } = inBrowser();
const SAW = "/terms/tool.circular-saw/around";
const still = { reducedMotion: "reduce" } as const;

const drawing = (page: Page) => page.getByRole("img", { name: /^The neighbourhood, drawn\./ });
const list = (page: Page) => page.getByRole("region", { name: /^Its neighbours/ });
const lines = (page: Page) => list(page).getByRole("button");
const drawn = async (page: Page) => {
  await expect
    .poll(() =>
      drawing(page)
        .locator("canvas")
        .evaluateAll((layers) => layers.some((each) => each.clientWidth > 200)),
    )
    .toBe(true);
  return drawing(page);
};
/** Taps down the left of the drawing, where every line begins, until a tap chooses something. */
async function tapSomething(page: Page, tap: (x: number, y: number) => Promise<unknown>): Promise<void> {
  const canvas = (await drawn(page)).locator("canvas").first();
  for (let down = 60; down < 400; down += 3) {
    const box = await canvas.boundingBox();
    if (!box) throw new Error("the drawing has no place");
    await tap(box.x + 60, box.y + down);
    if ((await list(page).getByRole("button", { expanded: true }).count()) > 0) return;
  }
  throw new Error("no tap chose anything");
}

describe("around a term", () => {
  it("[P60] fetches the graph library with the drawing, and has the list before it", async () => {
    const page = await open("/terms/tool.circular-saw");
    const before = await page.evaluate(() =>
      performance.getEntriesByType("resource").map(({ name }) => name),
    );
    expect(before.some((name) => name.endsWith(".js"))).toBe(true);
    expect(before.filter((name) => /cytoscape/.test(name))).toEqual([]);
    await page.getByRole("link", { name: "What stands around it, drawn" }).click();
    await page.getByRole("heading", { level: 1, name: "Around circular saw" }).waitFor();
    await drawn(page);
    expect(await lines(page).count()).toBeGreaterThan(10);
  });

  it("[P60] unfolds in the list what is clicked in the drawing, with its claim and sources, and goes on from it", async () => {
    const page = await open(SAW, { ...DESKTOP, ...still });
    await tapSomething(page, (x, y) => page.mouse.click(x, y));
    const chosen = list(page)
      .getByRole("listitem")
      .filter({ has: page.getByRole("button", { expanded: true }) });
    expect(
      await chosen
        .getByRole("link", { name: /circular saw/ })
        .first()
        .getAttribute("href"),
    ).toMatch(/^\/claims\//);
    expect(await chosen.getByText(/published|common practice|from memory/).count()).toBeGreaterThan(0);
    const next = chosen.getByRole("link", { name: "Look around from it" });
    const to = await next.getAttribute("href");
    await next.click();
    await page.waitForURL((url) => url.pathname === to);
    await page.getByRole("heading", { level: 1, name: /^Around (?!circular saw$)/ }).waitFor();
  });

  it("[P60] is driven by the keyboard from its list, which lights the drawing", async () => {
    const page = await open(SAW, { ...DESKTOP, ...still });
    const picture = await drawn(page);
    await lines(page).first().focus();
    const first = await picture.screenshot();
    await page.keyboard.press("ArrowDown");
    expect(
      await lines(page)
        .nth(1)
        .evaluate((line) => line === document.activeElement),
    ).toBe(true);
    await expect.poll(async () => (await picture.screenshot()).equals(first)).toBe(false);
    await page.keyboard.press("Enter");
    expect(await lines(page).nth(1).getAttribute("aria-expanded")).toBe("true");
    await page.keyboard.press("End");
    expect(
      await lines(page)
        .last()
        .evaluate((line) => line === document.activeElement),
    ).toBe(true);
  });

  it("[P60] says on a phone what was tapped, in sight, and leads to who says so", async () => {
    const page = await open(SAW, { ...PHONE, ...still });
    await tapSomething(page, (x, y) => page.touchscreen.tap(x, y));
    const chosen = page.getByRole("complementary", { name: "Chosen in the drawing" });
    expect(await textOf(chosen)).toMatch(/circular saw: needed for/);
    const box = await chosen.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(PHONE.viewport.height + 1);
    await chosen.getByRole("button", { name: "Who says so" }).click();
    const line = list(page).getByRole("button", { expanded: true });
    expect(await line.evaluate((each) => each === document.activeElement)).toBe(true);
  });

  it.each([
    ["a phone", PHONE],
    ["a desk", DESKTOP],
  ])("[P61] has all its years in sight on %s", async (_, size) => {
    const page = await open("/terms/region.britain/around", { ...size, ...still });
    await drawn(page);
    expect(await sticksOut(page)).toEqual(NOTHING);
    const years = await drawing(page)
      .locator("svg text")
      .evaluateAll((texts) => texts.map((text) => text.getBoundingClientRect().right));
    expect(years.length).toBeGreaterThan(4);
    for (const right of years) expect(right).toBeLessThanOrEqual(size.viewport.width);
  });

  it("[P63] prints in lines, with who says what of every neighbour", async () => {
    const page = await open(SAW, { viewport: { width: 718, height: 1000 }, colorScheme: "dark" });
    await drawn(page);
    await page.emulateMedia({ media: "print" });
    expect(await drawing(page).isVisible()).toBe(false);
    expect(await page.locator("svg polygon").first().isVisible()).toBe(true);
    expect(await page.locator("svg text", { hasText: "veneer circular saw" }).isVisible()).toBe(true);
    const claims = list(page).locator("a[href^='/claims/']");
    expect(await claims.count()).toBeGreaterThan(10);
    for (const claim of await claims.all()) expect(await claim.isVisible()).toBe(true);
    expect(await sticksOut(page)).toEqual(NOTHING);
  });
});
