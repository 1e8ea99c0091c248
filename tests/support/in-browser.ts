import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterEach, expect } from "vitest";
import type { Store } from "#server/ports/store.ts";
import { openScribeline, PATIENT } from "./open-scribeline.ts";
import { withBrowser } from "./with-browser.ts";

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

/** Where an examination stands to its last column, or there is none. */
const isWhole = (page: Page) =>
  page
    .getByRole("region", { name: "Conclusions" })
    .or(page.getByText("There is no such examination"))
    .first();

/**
 * A server and a browser for the tests of one file, a context for each page. After each test no page may have told an
 * error, broken the content security policy or spoken to another address, and the server may have logged nothing.
 */
export function inBrowser(): InBrowser {
  const running = withBrowser(async (browser) => ({ ...(await openScribeline()), browser }));
  let contexts: BrowserContext[] = [];
  const complaints: string[] = [];

  afterEach(async () => {
    await Promise.all(contexts.map((context) => context.close()));
    contexts = [];
    expect(complaints.splice(0), "complaints of the pages").toEqual([]);
    expect(running().logged.splice(0), "what the server logged").toEqual([]);
  });

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
      const context = await running().browser.newContext(options);
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
