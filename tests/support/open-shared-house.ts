import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { isProblem } from "#server/domain/problem.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { builtPages } from "./house-in-browser.ts";
import { type Cookie, openHouse } from "./open-house.ts";
import { PATIENT } from "./open-scribeline.ts";

/** A house with accounts over the seed and its pieces, in memory, with the built client; `open` is a page of somebody signed in. */
export async function openSharedHouse(browser: Browser) {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const store = openMemoryStore();
  const seeded = await seedStore(store, seed);
  if (isProblem(seeded)) throw new Error(seeded.message);
  const house = await openHouse({ webFolder: builtPages(), deadline: PATIENT }, store, []);
  const open = async (path: string, { Cookie }: Cookie, size: BrowserContextOptions): Promise<Page> => {
    const context = await browser.newContext({ ...size, reducedMotion: "reduce" });
    const [name = "", ...value] = Cookie.split("=");
    await context.addCookies([{ name, value: value.join("="), url: house.url }]);
    const page = await context.newPage();
    page.setDefaultTimeout(PATIENT);
    await page.goto(new URL(path, house.url).href);
    await page.getByRole("heading", { level: 1 }).waitFor();
    return page;
  };
  return { ...house, open };
}
