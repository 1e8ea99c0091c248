import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openScribeline } from "#tests/support/open-scribeline.ts";
import { withBrowser } from "#tests/support/with-browser.ts";

/** Half of what is called good (0.1): web.dev, "Cumulative Layout Shift (CLS)". */
const MOST_SHIFT = 0.05;

describe("the first page of a visit", () => {
  const opened = withBrowser(async (browser) => ({ ...(await openScribeline()), browser }));
  const newPage = () => opened().browser.newPage({ viewport: { width: 390, height: 844 } });
  const addressOf = (path: string) => new URL(path, opened().url).href;

  /** A page whose answers of these operations do not come before `letGo` is called. */
  async function heldBack(operations: RegExp): Promise<{ page: Page; letGo: () => void }> {
    const page = await newPage();
    const { promise: isLetGo, resolve: letGo } = Promise.withResolvers<void>();
    await page.route("**/graphql", async (route) => {
      if (operations.test(route.request().postData() ?? "")) await isLetGo;
      await route.continue();
    });
    return { page, letGo };
  }

  it.each([
    ["/", /StartPage/, "Record the piece part by part", "Millrace chest"],
    ["/evidence?words=saw", /EvidenceSearch/, "Terms name what can be seen", "circular saw"],
  ])("[P15] %s says what it is for before its answers come", async (path, operation, says, answer) => {
    const { page, letGo } = await heldBack(operation);
    await page.goto(addressOf(path));
    await page.getByText(says).waitFor();
    expect(await page.getByText(answer).count()).toBe(0);
    letGo();
    await page.getByText(answer).first().waitFor();
    await page.close();
  });

  it("[P15] an examination says its conclusion before the piece can be drawn", async () => {
    const page = await newPage();
    const { promise: isLetGo, resolve: letGo } = Promise.withResolvers<void>();
    await page.route("**/ExaminationColumns-*.js", async (route) => {
      await isLetGo;
      await route.continue();
    });
    await page.goto(addressOf("pieces/examination.millrace-chest"));
    await page.getByRole("region", { name: "Conclusion" }).getByText("cannot be of").first().waitFor();
    expect(await page.getByRole("region", { name: "The piece" }).count()).toBe(0);
    letGo();
    await page.getByRole("region", { name: "The piece" }).waitFor();
    await page.close();
  });

  it.each(["/", "/evidence?words=saw", "/terms/tool.circular-saw", "/pieces/examination.millrace-chest"])(
    "[P15] %s moves nothing that was seen",
    async (path) => {
      const page = await newPage();
      await page.addInitScript(() => {
        const shifts: number[] = [];
        Object.assign(window, { shifts });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
        }).observe({ type: "layout-shift", buffered: true });
      });
      await page.goto(addressOf(path));
      await page.getByRole("heading", { level: 1 }).waitFor();
      await page.waitForLoadState("networkidle");
      const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
      expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBeLessThan(MOST_SHIFT);
      await page.close();
    },
  );
});
