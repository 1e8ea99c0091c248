import { describe, expect, it } from "vitest";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";

describe("the ways from things to years", () => {
  it("[X19] fetches the graph library with the drawing, not with the page", async () => {
    const page = await open(CHEST);
    const fetched: string[] = [];
    page.on("request", (request) => fetched.push(new URL(request.url()).pathname));
    const before = await page.evaluate(() =>
      performance.getEntriesByType("resource").map(({ name }) => name),
    );
    expect(before.some((name) => name.endsWith(".js"))).toBe(true);
    expect(before.filter((name) => /cytoscape|PathView/.test(name))).toEqual([]);
    await page.getByRole("button", { name: "Draw the ways from things to years" }).click();
    await page.getByRole("dialog").getByRole("list", { name: "The ways, one by one" }).waitFor();
    await expect.poll(() => fetched.some((path) => path.includes("cytoscape"))).toBe(true);
  });

  it("[X19] is driven by the keyboard from its list, and drawn", async () => {
    const page = await open(CHEST);
    await page.getByRole("button", { name: "Draw the ways from things to years" }).press("Enter");
    const sheet = page.getByRole("dialog", { name: "The ways from what was seen to its years" });
    const drawing = sheet.getByRole("img", { name: "The ways, drawn. The list below says the same." });
    await drawing.waitFor();
    await expect
      .poll(() =>
        drawing.locator("canvas").evaluateAll((layers) => layers.map((layer) => layer.clientWidth > 200)),
      )
      .toContain(true);
    const ways = sheet.getByRole("list", { name: "The ways, one by one" });
    await ways.getByRole("button").first().focus();
    const unlit = await drawing.screenshot();
    await page.keyboard.press("ArrowDown");
    const lit = ways.getByRole("button", { pressed: true });
    expect(await lit.count()).toBe(1);
    expect(await lit.evaluate((way) => way === document.activeElement)).toBe(true);
    await expect.poll(async () => (await drawing.screenshot()).equals(unlit)).toBe(false);
    await page.keyboard.press("End");
    expect(await textOf(lit)).toBe(await textOf(ways.getByRole("button").last()));
    await page.keyboard.press("Escape");
    await sheet.waitFor({ state: "detached" });
  });

  it("[X19] says in the list what each way shows: the thing, the years, and what they rest on", async () => {
    const page = await open(CHEST, { ...DESKTOP, reducedMotion: "reduce" });
    await page.getByRole("button", { name: /^Gimlet-pointed screw/i }).click();
    await page
      .getByRole("button", { name: /^Draw the (\d+ )?paths?$/ })
      .first()
      .click();
    const sheet = page.getByRole("dialog", { name: /The ways from gimlet-pointed screw to its years/i });
    const ways = sheet.getByRole("list", { name: "The ways, one by one" }).getByRole("listitem");
    await ways.first().waitFor();
    const says = await ways.allTextContents();
    for (const way of says) expect(way).toMatch(/gimlet-pointed screw.*(\b1[5-9]\d\d\b|no date|no claim)/i);
    expect(
      says.filter((way) => /→ Gimlet-point screw machine: introduced in the United States, 1841/.test(way))
        .length,
    ).toBeGreaterThan(0);
    expect(says.join(" ")).toMatch(/this way is excluded/);
  });

  it("[X30] has all its years in sight on a phone", async () => {
    const page = await open(CHEST, { ...PHONE, reducedMotion: "reduce" });
    await page.getByRole("button", { name: "Draw the ways from things to years" }).click();
    const drawing = page.getByRole("img", { name: "The ways, drawn. The list below says the same." });
    const years = drawing.locator("svg text");
    await years.first().waitFor();
    const rights = await years.evaluateAll((texts) =>
      texts.map((text) => text.getBoundingClientRect().right),
    );
    expect(rights.length).toBeGreaterThan(4);
    for (const right of rights) expect(right).toBeLessThanOrEqual(PHONE.viewport.width);
    expect(await drawing.evaluate((frame) => frame.scrollWidth <= frame.clientWidth)).toBe(true);
  });

  it("[X30] prints alone and in lines", async () => {
    const page = await open(CHEST, { viewport: { width: 718, height: 1000 }, colorScheme: "dark" });
    await page.getByRole("button", { name: "Draw the ways from things to years" }).click();
    const sheet = page.getByRole("dialog", { name: "The ways from what was seen to its years" });
    await sheet.getByRole("list", { name: "The ways, one by one" }).waitFor();
    await page.emulateMedia({ media: "print" });
    expect(await sheet.locator("svg rect").first().isVisible()).toBe(true);
    expect(await sheet.locator("canvas").first().isVisible()).toBe(false);
    expect(await page.locator("#root").isVisible()).toBe(false);
    const end = await sheet.getByRole("listitem").last().boundingBox();
    expect(end?.y).toBeGreaterThan(1000);
    expect(
      (await page.pdf({ format: "A4" })).toString("latin1").match(/\/Type \/Page\b/g)?.length,
    ).toBeGreaterThan(1);
  });
});
