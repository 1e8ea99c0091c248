import { chromiumPath } from "./open-browser.ts";

/** The browser of the package is unpacked once, before several workers ask for it. What is wrong with it the tests tell. */
export default async function unpackBrowser(): Promise<void> {
  await chromiumPath().catch(() => undefined);
}
