import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { serveWeb } from "#server/http/serve-web.ts";

let folder: string;
let url: string;
let close: () => Promise<void>;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "scribeline-web-"));
  mkdirSync(join(folder, "assets"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>Scribeline</title>");
  for (const name of ["page-a1.js", "page-a1.js.br", "page-a1.js.gz", "other-b2.js"])
    writeFileSync(join(folder, "assets", name), "export {};");
  const server = createServer(serveWeb(folder));
  await new Promise<void>((listens) => server.listen(0, "127.0.0.1", listens));
  url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  close = () => new Promise((closed) => server.close(() => closed()));
});
afterEach(async () => {
  await close();
  rmSync(folder, { recursive: true, force: true });
});

describe("[A19] a file that another build takes away", () => {
  it.each(["br", "gzip", "identity"])("breaks off its own answer alone (%s)", async (encoding) => {
    rmSync(join(folder, "assets"), { recursive: true });
    const headers = { "Accept-Encoding": encoding, Connection: "close" };
    const gone = fetch(`${url}/assets/page-a1.js`, { headers }).then((answer) => answer.text());
    await expect(gone).rejects.toThrow(/fetch failed|terminated/);
    const page = await fetch(url, { headers: { Connection: "close" } });
    expect(await page.text()).toContain("Scribeline");
  });
});
