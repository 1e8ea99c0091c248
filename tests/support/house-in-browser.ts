import type { Browser, Page } from "playwright-core";
import { expect } from "vitest";
import { readConfig } from "#server/config.ts";
import { auditPage } from "./audit-page.ts";
import { openHouse } from "./open-house.ts";
import { PATIENT } from "./open-scribeline.ts";
import { withBrowser } from "./with-browser.ts";

/** A house with the built pages, its first owner, and a browser for it, for the tests of one file. */
export function houseInBrowser(settings: () => Parameters<typeof openHouse>[0] = () => ({})) {
  return withBrowser(async (browser) => {
    const house = await openHouse({ webFolder: builtPages(), deadline: PATIENT, ...settings() });
    return {
      ...{ ...house, browser },
      open: (path: string, size: object): Promise<Page> =>
        openPage(browser, new URL(path, house.url).href, size),
    };
  });
}

/** The folder of the built pages. */
export function builtPages(): string {
  const config = readConfig({});
  if (!("port" in config)) throw new Error("The settings are not sane where none is made");
  return config.webFolder;
}

/** A page in a window of its own, once its heading is there. */
export async function openPage(browser: Browser, url: string, size: object): Promise<Page> {
  const page = await (await browser.newContext({ ...size, reducedMotion: "reduce" })).newPage();
  page.setDefaultTimeout(PATIENT);
  await page.goto(url);
  await page.getByRole("heading", { level: 1 }).waitFor();
  return page;
}

/** Nothing breaks a rule of WCAG 2.2 A or AA, and nothing sticks out of the window. */
export async function isAccessible(page: Page): Promise<void> {
  expect(await auditPage(page)).toEqual([]);
  const [inner, whole] = await page.evaluate(() => [window.innerWidth, document.documentElement.scrollWidth]);
  expect(whole).toBeLessThanOrEqual(inner ?? 0);
}

/** Fills fields by their labels. */
export async function fill(page: Page, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(fields))
    await page.getByLabel(label, { exact: true }).fill(text);
}
