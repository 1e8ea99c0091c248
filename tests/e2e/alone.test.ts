import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";

const { open, takeComplaints } = inBrowser();

describe("[P2] pages that keep to themselves", () => {
  it("cannot do otherwise: a request elsewhere and a script inside the page are refused", async () => {
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
