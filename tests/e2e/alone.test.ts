import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { ROUTES } from "#tests/support/routes.ts";

const { open, url, takeComplaints } = inBrowser();

describe("[P2] pages that keep to themselves", () => {
  it("load everything from the server's own address, on every route", async () => {
    const page = await open("/");
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    for (const path of ROUTES) {
      const answer = await page.goto(new URL(path, url()).href);
      expect(answer?.headers()["content-security-policy"], path).toMatch(/default-src 'self'/);
      await page.getByRole("heading", { level: 1 }).waitFor();
      await page.waitForLoadState("networkidle");
    }
    expect(asked.length).toBeGreaterThan(ROUTES.length * 2);
    expect(asked.filter((address) => !address.startsWith(url()))).toEqual([]);
  });

  it("could not do otherwise: a request elsewhere and a script inside the page are refused", async () => {
    const page = await open("/method");
    const came = await page.evaluate(async () => {
      const script = document.createElement("script");
      script.textContent = "document.title = 'a script inside the page ran'";
      document.head.append(script);
      return fetch("http://127.0.0.2:9/").then(
        () => "an answer",
        () => "refused",
      );
    });
    expect(came).toBe("refused");
    expect(await page.title()).not.toMatch(/ran/);
    const told = takeComplaints().join("\n");
    expect(told).toMatch(/connect.*127\.0\.0\.2.*Content Security Policy/i);
    expect(told).toMatch(/inline script violates.*Content Security Policy/i);
  });
});
