import { tmpdir } from "node:os";
import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { createServer } from "vite";
import { openBrowser } from "#tests/support/open-browser.ts";

/**
 * `npm run drawings [-- key …]`: every drawing, or those whose keys begin so, at 64 and 128 px, light and dark, as two
 * pictures in the folder for temporary files. To be looked at: what tells has to be seen at 64 px.
 */
const keys = process.argv.slice(2);
const project = join(import.meta.dirname, "../..");
const server = await createServer({
  root: import.meta.dirname,
  configFile: false,
  plugins: [react()],
  cacheDir: join(tmpdir(), "scribeline-contact-sheet"),
  logLevel: "error",
  server: { host: "127.0.0.1", port: 0, fs: { allow: [project] } },
});
await server.listen();
const browser = await openBrowser();
try {
  const address = new URL(server.resolvedUrls?.local[0] ?? "");
  for (const key of keys) address.searchParams.append("key", key);
  for (const colorScheme of ["light", "dark"] as const) {
    const page = await browser.newPage({ viewport: { width: 1760, height: 900 }, colorScheme });
    await page.goto(address.href);
    await page.locator("figure svg").first().waitFor();
    await page.evaluate(() => document.fonts.ready);
    const path = join(tmpdir(), `drawings-${colorScheme}.png`);
    await page.screenshot({ path, fullPage: true });
    console.log(`${await page.locator("figure").count()} drawings, ${colorScheme}: ${path}`);
    await page.close();
  }
} finally {
  await browser.close();
  await server.close();
}
