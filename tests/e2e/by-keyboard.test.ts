import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { pressUntil, textOf } from "#tests/support/read-page.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";
/** More stops of the tab key than any page has; who needs more is in a trap. */
const MANY = 250;

interface Stop {
  readonly name: string;
  /** Of the section it stands in. */
  readonly within: string;
  readonly isVisible: boolean;
  /** True if an outline shows that it has the focus, or a heavy stroke in a drawing. */
  readonly isMarked: boolean;
  /** A shape of a drawing. */
  readonly isShape: boolean;
}

/** Where the focus is, or undefined when it has left the page. */
const stopOf = (page: Page): Promise<Stop | undefined> =>
  page.evaluate(() => {
    const focused = document.activeElement;
    if (!focused || focused === document.body) return undefined;
    const box = focused.getBoundingClientRect();
    const style = getComputedStyle(focused);
    const isOutlined = style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) > 0;
    const isShape = focused instanceof SVGElement;
    const strokes = [...focused.children].map((line) =>
      Number.parseFloat(getComputedStyle(line).strokeWidth),
    );
    const isHeavy = isShape && strokes.some((width) => width > 3);
    return {
      name: (focused.getAttribute("aria-label") ?? focused.textContent ?? "").trim().slice(0, 60),
      within:
        focused.closest("section")?.getAttribute("aria-label") ??
        focused.closest("header, nav, main, footer")?.tagName ??
        "",
      isVisible: box.width > 0 && box.height > 0 && box.bottom > 0 && box.top < innerHeight,
      isMarked: isOutlined || isHeavy,
      isShape,
    };
  });

/** What is still being worked out would move what the focus is on. */
const isWeighed = (page: Page) => page.getByText(/^Weighed under what is assumed/).waitFor();

/** Takes the first of what is offered, once it is what is meant: what half of the words find is offered before. */
async function takeFirst(page: Page, meant: RegExp): Promise<void> {
  await page
    .getByRole("option")
    .first()
    .and(page.getByRole("option", { name: meant }))
    .waitFor();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
}

/** Every stop of the tab key from the top of the page until the focus leaves it or comes round. */
async function tabThrough(page: Page): Promise<readonly Stop[]> {
  const stops: Stop[] = [];
  for (let presses = 0; presses < MANY; presses++) {
    await page.keyboard.press("Tab");
    const stop = await stopOf(page);
    if (stop === undefined || (stops.length > 2 && stop.name === stops[0]?.name)) return stops;
    stops.push(stop);
  }
  throw new Error(`After ${MANY} presses the focus is still in the page: ${stops.at(-1)?.name}`);
}

describe("the examination page by keyboard alone", () => {
  it("leads through piece, years and conclusions in that order, with the focus always seen, and out again", async () => {
    const page = await open(CHEST);
    await isWeighed(page);
    const stops = await tabThrough(page);
    expect(stops[0]?.name).toBe("Skip to the page");
    const sections = stops.map(({ within }) => within).filter((name, at, all) => name !== all[at - 1]);
    const order = ["Parts", "Add a part", "What rules it out", "What would be unusual"].map((name) =>
      sections.indexOf(name),
    );
    expect(order).not.toContain(-1);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(stops.filter((stop) => !stop.isVisible).map(({ name }) => name)).toEqual([]);
    expect(stops.filter((stop) => !stop.isMarked).map(({ name }) => name)).toEqual([]);
  });

  it("[X11] takes the strips as one stop, and the drawing as one", async () => {
    const page = await open(CHEST);
    await isWeighed(page);
    const strips = await page.locator("[data-strip]").count();
    expect(strips).toBeGreaterThan(20);
    const names = new Set(
      await page
        .locator("[data-strip]")
        .evaluateAll((rows) => rows.map((row) => row.getAttribute("aria-label")?.slice(0, 60))),
    );
    const stops = await tabThrough(page);
    expect(stops.filter(({ name }) => names.has(name))).toHaveLength(1);
    expect(stops.filter(({ isShape }) => isShape)).toHaveLength(1);
  });

  it("skips to the content, and goes on from there", async () => {
    const page = await open(CHEST);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("content");
    await page.keyboard.press("Tab");
    expect((await stopOf(page))?.name).toMatch(/^Rename/);
  });

  it("records a thing, changes how sure it is, and takes it back, without a pointer", async () => {
    const page = await open("/");
    await pressUntil(page, "Tab", /^Begin an examination$/);
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor();
    await pressUntil(page, "Tab", /^What the piece is called/, 5);
    await page.keyboard.type("By keyboard");
    await page.keyboard.press("Tab");
    await page.keyboard.type("1770");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/pieces\//);
    await page.getByRole("heading", { level: 1, name: "By keyboard" }).waitFor();

    await pressUntil(page, "Tab", /^Add a part$/);
    await page.keyboard.type("fastener");
    await takeFirst(page, /^fastener/);
    const part = page.getByRole("region", { name: "Parts" }).getByRole("button", { name: /^fastener/ });
    await part.waitFor();
    if ((await part.getAttribute("aria-expanded")) !== "true") {
      await pressUntil(page, "Shift+Tab", /^fastener/);
      await page.keyboard.press("Enter");
    }
    await page.getByRole("combobox", { name: "Add to fastener" }).waitFor();
    await pressUntil(page, "Tab", /^Add to fastener$/);
    await page.keyboard.type("gimlet");
    await takeFirst(page, /^gimlet-pointed screw/i);
    const conclusion = page.getByRole("region", { name: "Conclusion", exact: true });
    await expect.poll(() => textOf(conclusion)).toMatch(/the fastener cannot be of/);

    await pressUntil(page, "Shift+Tab", /^gimlet-pointed screw seen/i);
    await page.keyboard.press("Enter");
    await pressUntil(page, "Tab", /^seen$|^sure$/, 10);
    await pressUntil(page, "Tab", /^sure$/, 4);
    await page.keyboard.press("ArrowDown");
    await page.getByRole("button", { name: /^gimlet-pointed screw seen, probable/i }).waitFor();
    await page
      .getByRole("status")
      .filter({ hasText: /^stored$/ })
      .waitFor();
    await page.keyboard.press("Control+z");
    await page.getByRole("button", { name: /^gimlet-pointed screw seen$/i }).waitFor();
  });

  it("keeps the focus in an open dialog and gives it back on Escape", async () => {
    const page = await open("/");
    await pressUntil(page, "Tab", /^Begin an examination$/);
    await page.keyboard.press("Enter");
    const dialog = page.getByRole("dialog");
    await dialog.waitFor();
    for (let presses = 0; presses < 8; presses++) {
      await page.keyboard.press("Tab");
      expect(await dialog.evaluate((box) => box.contains(document.activeElement))).toBe(true);
    }
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await expect.poll(async () => (await stopOf(page))?.name).toBe("Begin an examination");
  });
});
