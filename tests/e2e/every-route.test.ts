import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { auditPage } from "#tests/support/audit-page.ts";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { ROUTES } from "#tests/support/routes.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open, url } = inBrowser();

/** A window of 1280 px at 200 %, and the narrowest that WCAG 2.2 asks for (1.4.10, at 400 %). */
const NARROWER = [
  { width: 640, height: 450 },
  { width: 320, height: 640 },
];

/** Resolves when the page has been laid out anew. */
const drawn = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));

// Whatever a page asks of another address, or says against its content security policy, fails its test as well.
describe.each(ROUTES)("%s", (path) => {
  it("breaks no rule of WCAG 2.2 A and AA on a desktop, light or dark, and flows anew at 200 % and at 320 px", async () => {
    const page = await open(path, { ...DESKTOP, reducedMotion: "reduce" });
    expect(await auditPage(page)).toEqual([]);
    for (const size of [DESKTOP.viewport, ...NARROWER]) {
      await page.setViewportSize(size);
      await drawn(page);
      expect(await sticksOut(page), `${size.width} px`).toEqual(NOTHING);
    }
  });

  it("breaks none on a phone either, and does not scroll sideways", async () => {
    const page = await open(path, { ...PHONE, reducedMotion: "reduce" });
    expect(await auditPage(page)).toEqual([]);
    expect(await sticksOut(page)).toEqual(NOTHING);
  });

  it("[P2] is sent with a policy that lets nothing in from elsewhere", async () => {
    const { headers } = await fetch(new URL(path, url()));
    expect(headers.get("content-security-policy")).toMatch(/default-src 'self'/);
  });
});
