import { appendFileSync } from "node:fs";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import type { Store } from "#server/ports/store.ts";
import { MISSING_MEANS } from "./closing-line.ts";
import { openBrowser } from "./open-browser.ts";
import { openScribeline, PATIENT, type Scribeline } from "./open-scribeline.ts";

export const DESKTOP = { viewport: { width: 1280, height: 900 } } as const satisfies BrowserContextOptions;
export const PHONE = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
} as const satisfies BrowserContextOptions;

export interface InBrowser {
  /** Opens an address of the server in a context of its own and waits for the heading of the page, and for all of an examination. */
  readonly open: (path: string, options?: BrowserContextOptions) => Promise<Page>;
  /** Address of the server, with a slash at its end. */
  readonly url: () => string;
  /** Data folder of the server. */
  readonly folder: () => string;
  /** The store of the server. */
  readonly store: () => Store;
  /** Takes what pages did so far that no page may do, for a test that made them do it. */
  readonly takeComplaints: () => readonly string[];
}

const sayMissing = (why: unknown): string =>
  `the tests in a browser (${String(why).split("\n", 1)[0]}). Install one: apt-get install --yes chromium\n`;

/** Where an examination stands to its last column, or there is none. */
const isWhole = (page: Page) =>
  page
    .getByRole("region", { name: "Conclusions" })
    .or(page.getByText("There is no such examination"))
    .first();

/**
 * A server and a browser for the tests of one file, a context for each page. After each test no page may have told an
 * error, broken the content security policy or spoken to another address, and the server may have logged nothing. Where
 * no browser can be opened the tests are skipped, and named at the end of the run.
 */
export function inBrowser(): InBrowser {
  let browser: Browser | undefined;
  let opened: Scribeline | undefined;
  let contexts: BrowserContext[] = [];
  const complaints: string[] = [];

  beforeAll(async () => {
    browser = await openBrowser().catch((error: unknown) => {
      appendFileSync(MISSING_MEANS, sayMissing(error));
      return undefined;
    });
    if (browser) opened = await openScribeline();
  });
  beforeEach((context) => context.skip(browser === undefined, "no browser"));
  afterEach(async () => {
    await Promise.all(contexts.map((context) => context.close()));
    contexts = [];
    expect(complaints.splice(0), "complaints of the pages").toEqual([]);
    expect(opened?.logged.splice(0) ?? [], "what the server logged").toEqual([]);
  });
  afterAll(async () => {
    await browser?.close();
    await opened?.stop();
  });

  const running = (): Scribeline => {
    if (!opened) throw new Error("There is no server: a test without a browser has to be skipped");
    return opened;
  };

  const watch = (page: Page): void => {
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(`console: ${message.text()}`);
    });
    page.on("pageerror", (error) => complaints.push(`thrown: ${error.message}`));
    page.on("request", (request) => {
      const to = new URL(request.url());
      const isOwn = to.origin === new URL(running().url).origin;
      if (!isOwn && !["blob:", "data:"].includes(to.protocol))
        complaints.push(`asked elsewhere: ${request.url()}`);
    });
    page.on("response", (response) => {
      if (response.status() >= 400) complaints.push(`answer ${response.status()}: ${response.url()}`);
    });
  };

  return {
    url: () => running().url,
    folder: () => running().folder,
    store: () => running().store,
    takeComplaints: () => complaints.splice(0),
    open: async (path, options = DESKTOP) => {
      if (!browser) throw new Error("There is no browser");
      const context = await browser.newContext(options);
      contexts.push(context);
      context.on("page", watch);
      const page = await context.newPage();
      page.setDefaultTimeout(PATIENT);
      await page.goto(new URL(path, running().url).href);
      await page.getByRole("heading", { level: 1 }).waitFor();
      if (path.startsWith("/pieces/")) await isWhole(page).waitFor();
      return page;
    },
  };
}
