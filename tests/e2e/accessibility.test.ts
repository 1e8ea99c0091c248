import { AxeBuilder } from "@axe-core/playwright";
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { ROUTES } from "#tests/support/routes.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";
const TAGS = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"];
const SETTINGS: readonly (readonly [string, BrowserContextOptions])[] = [
  ["desktop, light", { ...DESKTOP, colorScheme: "light" }],
  ["desktop, dark", { ...DESKTOP, colorScheme: "dark" }],
  ["phone, light", { ...PHONE, colorScheme: "light" }],
  ["phone, dark", { ...PHONE, colorScheme: "dark" }],
];

/** What breaks a rule of WCAG 2.2 A or AA on the page as it stands, with the elements. */
async function violations(page: Page): Promise<readonly string[]> {
  await page.waitForLoadState("networkidle");
  const { violations: found, passes } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  expect(passes.length, "rules that were tried").toBeGreaterThan(5);
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`);
}

/** States of pages that one comes to by doing something. */
const STATES: readonly (readonly [string, string, (page: Page) => Promise<unknown>])[] = [
  ["other demonstrations: sound chest", "/pieces/examination.saltmarsh-chest", async () => undefined],
  ["other demonstrations: table", "/pieces/examination.ropewalk-table", async () => undefined],
  ["other demonstrations: chair", "/pieces/examination.larkspur-chair", async () => undefined],
  [
    "beginning an examination, with a date that cannot be read",
    "/",
    async (page) => {
      await page.getByRole("button", { name: "Begin an examination" }).click();
      await page.getByRole("textbox", { name: "Date claimed" }).fill("c. 1770");
      await page.getByText(/cannot be read/).waitFor();
    },
  ],
  [
    "every strip unfolded",
    CHEST,
    async (page) => {
      for (const strip of await page.locator("[data-strip]").all()) await strip.click();
    },
  ],
  [
    "a part open, with one of its things open",
    CHEST,
    async (page) => {
      const parts = page.getByRole("region", { name: "Parts" });
      await parts.getByRole("button", { name: /^Top screws/ }).click();
      await parts.getByRole("button", { name: /^gimlet-pointed screw/i }).click();
      await page.getByRole("radiogroup", { name: "How sure" }).waitFor();
    },
  ],
  [
    "offers of a search open",
    CHEST,
    async (page) => {
      await page.getByRole("combobox", { name: "Add a part" }).fill("drawer");
      await page.getByRole("option").first().waitFor();
    },
  ],
  [
    "the fields of the claim, with a date refused",
    CHEST,
    async (page) => {
      await page.getByRole("button", { name: "Change what is claimed" }).click();
      await page.getByRole("textbox", { name: "Date", exact: true }).fill("c. 1770");
      await page.getByRole("button", { name: "Take 1770~" }).waitFor();
    },
  ],
  [
    "the path view",
    CHEST,
    async (page) => {
      await page.getByRole("button", { name: "Draw the ways from things to years" }).click();
      await page.getByRole("list", { name: "The ways, one by one" }).waitFor();
    },
  ],
];

describe.each(SETTINGS)("breaks no rule of WCAG 2.2 A and AA: %s", (_, settings) => {
  it.each(ROUTES)("%s", async (path) => {
    expect(await violations(await open(path, settings))).toEqual([]);
  });

  it.each(STATES)("%s", async (_state, path, reach) => {
    const page = await open(path, settings);
    await reach(page);
    expect(await violations(page)).toEqual([]);
  });
});
