import { appendFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { MISSING_MEANS } from "./closing-line.ts";
import { openBrowser } from "./open-browser.ts";

const sayMissing = (why: unknown): string =>
  `the tests in a browser (${String(why).split("\n", 1)[0]}). Install one: apt-get install --yes chromium\n`;

/**
 * A browser for the tests of one file, and what they look at with it, which is opened beside it and stopped after it.
 * Where no browser comes up nothing is opened, the tests are skipped, and named at the end of the run.
 */
export function withBrowser<Beside extends { readonly stop: () => Promise<unknown> }>(
  open: (browser: Browser) => Promise<Beside>,
): () => Beside {
  let browser: Browser | undefined;
  let beside: Beside | undefined;
  beforeAll(async () => {
    browser = await openBrowser().catch((error: unknown) => {
      appendFileSync(MISSING_MEANS, sayMissing(error));
      return undefined;
    });
    if (browser) beside = await open(browser);
  });
  beforeEach((context) => context.skip(browser === undefined, "no browser"));
  afterAll(async () => {
    await browser?.close();
    await beside?.stop();
  });
  return () => {
    if (beside === undefined) throw new Error("Nothing is open: a test without a browser has to be skipped");
    return beside;
  };
}
