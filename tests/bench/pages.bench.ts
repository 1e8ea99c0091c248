import type { Page } from "playwright-core";
import { openBrowser } from "#tests/support/open-browser.ts";
import { openScribeline } from "#tests/support/open-scribeline.ts";
import { quantile, sayFigure } from "./figure.ts";
import type { Bench } from "./measure.ts";

const CHANGES = 40;

interface Loaded {
  readonly path: string;
  readonly kind: "page" | "font" | "answer";
  /** KB of 1,000 bytes, with headers and compression as they come over the wire. */
  readonly weight: number;
  /** False if it was asked for only after the page had its heading. */
  readonly isFirst: boolean;
}

/** What a page fetches, as the browser counts it. */
async function loadsOf(page: Page, url: string): Promise<readonly Loaded[]> {
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (!document.querySelector("h1")) return;
      watch.disconnect();
      performance.mark("heading");
    });
    watch.observe(document, { subtree: true, childList: true });
  });
  await page.goto(url);
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.waitForLoadState("networkidle");
  return page.evaluate(() => {
    const shown = performance.getEntriesByName("heading")[0]?.startTime ?? 0;
    const loads = [
      ...performance.getEntriesByType("navigation"),
      ...performance.getEntriesByType("resource"),
    ];
    return loads.map((load) => {
      const { name, startTime, transferSize } = load as PerformanceResourceTiming;
      const path = new URL(name).pathname;
      const kind = path.endsWith(".woff2") ? "font" : path === "/graphql" ? "answer" : "page";
      return { path, kind, weight: transferSize / 1000, isFirst: startTime < shown } as const;
    });
  });
}

/**
 * Milliseconds from the press that changes how a thing was found to the frame after its row in the strips says
 * something else, once for each change; the page measures itself.
 */
async function timeChanges(page: Page): Promise<readonly number[]> {
  const parts = page.getByRole("region", { name: "Parts" });
  await parts.getByRole("button", { name: /^Top screws/ }).click();
  await parts.getByRole("button", { name: /^gimlet-pointed screw/i }).click();
  const choices = page.getByRole("radiogroup", { name: "How it was found" });
  const row = page.getByRole("button", { name: /gimlet-pointed screw/i }).and(page.locator("[data-strip]"));
  const strip = (await row.getAttribute("data-strip")) ?? "";
  const times: number[] = [];
  for (let n = 0; n < CHANGES; n++) {
    await page.evaluate((id) => {
      const says = () => document.querySelector(`[data-strip="${id}"]`)?.getAttribute("aria-label");
      const before = says();
      const took = new Promise<number>((resolve) => {
        let pressed = Number.NaN;
        const press = ({ timeStamp }: Event) => {
          pressed = timeStamp;
        };
        addEventListener("pointerup", press, { capture: true, once: true });
        const watch = new MutationObserver(() => {
          if (says() === before) return;
          watch.disconnect();
          // A message sent in a frame arrives once that frame is painted.
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve(performance.now() - pressed);
            port2.postMessage(null);
          });
        });
        watch.observe(document.body, { subtree: true, childList: true, attributeFilter: ["aria-label"] });
      });
      Object.assign(window, { took });
    }, strip);
    await choices.getByText(n % 2 === 0 ? "looked for, absent" : "seen", { exact: true }).click();
    times.push(await page.evaluate(() => (window as unknown as { took: Promise<number> }).took));
    await page
      .getByRole("status")
      .filter({ hasText: /^stored$/ })
      .waitFor();
  }
  return times;
}

/** What the first page weighs, and how long a change on the demonstration takes to be seen. */
export const bench: Bench = async () => {
  const server = await openScribeline();
  const browser = await openBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    const loads = await loadsOf(page, server.url);
    const weight = (wanted: (load: Loaded) => boolean) =>
      loads.filter(wanted).reduce((sum, load) => sum + load.weight, 0);
    sayFigure({
      what: "script, style and document of the first page",
      value: weight(({ kind, isFirst }) => kind === "page" && isFirst),
      unit: "KB",
      atMost: 200,
    });
    sayFigure({
      what: "what it fetches ahead",
      value: weight(({ kind, isFirst }) => kind === "page" && !isFirst),
      unit: "KB",
    });
    sayFigure({ what: "its fonts", value: weight(({ kind }) => kind === "font"), unit: "KB", atMost: 140 });
    sayFigure({
      what: "its four pieces, examined",
      value: weight(({ kind }) => kind === "answer"),
      unit: "KB",
    });
    sayFigure({
      what: "of the graph library with it",
      value: weight(({ path }) => /cytoscape|PathView/.test(path)),
      unit: "KB",
      atMost: 0,
    });
    await page.goto(new URL("pieces/examination.millrace-chest", server.url).href);
    const times = await timeChanges(page);
    const what = `one observation changed on the demonstration chest to its strip repainted, ${CHANGES} changes`;
    sayFigure({ what: `${what}, median`, value: quantile(times, 0.5), unit: "ms" });
    sayFigure({ what: `${what}, 95 % of them`, value: quantile(times, 0.95), unit: "ms", atMost: 100 });
  } finally {
    await browser.close();
    await server.stop();
  }
  return [];
};
