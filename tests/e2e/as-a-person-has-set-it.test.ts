import { describe, expect, it } from "vitest";
import { DESKTOP, inBrowser } from "#tests/support/in-browser.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";

describe("as a person has set it", () => {
  it("moves nothing where reduced motion is asked for", async () => {
    const page = await open(CHEST, { ...DESKTOP, reducedMotion: "reduce" });
    await page.getByRole("button", { name: "Draw the ways from things to years" }).click();
    await page.getByRole("dialog").getByRole("list", { name: "The ways, one by one" }).waitFor();
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll("*")]
          .map((element) => getComputedStyle(element))
          .filter(
            (style) =>
              Math.max(
                ...`${style.transitionDuration},${style.animationDuration}`.split(",").map(Number.parseFloat),
              ) > 0.01,
          ).length,
    );
    expect(moving).toBe(0);
  });

  it("tells the marks apart by shape and word in forced colours", async () => {
    const page = await open(CHEST, { ...DESKTOP, forcedColors: "active" });
    const rows = page.locator("li[data-mark]");
    const looks = await rows.evaluateAll((items) =>
      items.map((item) => {
        const mark = item.querySelector("button svg");
        const path = mark?.querySelector("path");
        const style = path && getComputedStyle(path);
        return {
          mark: item.getAttribute("data-mark"),
          shape: path?.getAttribute("d"),
          isDrawn:
            style !== null &&
            style !== undefined &&
            (style.fill !== "none" || style.stroke !== "none") &&
            mark?.checkVisibility(),
          says: item.querySelector("button")?.getAttribute("aria-label"),
        };
      }),
    );
    const marks = new Map(looks.map(({ mark, shape }) => [mark, shape]));
    expect([...marks.keys()]).toEqual(
      expect.arrayContaining(["against-hard", "against-soft", "for", "silent", "sign"]),
    );
    expect(new Set(marks.values()).size).toBeGreaterThanOrEqual(4);
    expect(looks.filter(({ isDrawn }) => !isDrawn)).toEqual([]);
    const says = {
      "against-hard": /cannot be/,
      "against-soft": /out of its time/,
      for: /agrees with|can be of/,
      silent: /says nothing|looked for and not there|could not be seen/,
      sign: /speaks/,
    };
    for (const { mark, says: words } of looks) expect(words).toMatch(says[mark as keyof typeof says]);
  });

  it("takes the dark colours where dark is asked for", async () => {
    const lightness = async (colorScheme: "dark" | "light") => {
      const page = await open("/", { ...DESKTOP, colorScheme });
      const [paper, ink] = await page.evaluate(() => {
        const { backgroundColor, color } = getComputedStyle(document.documentElement);
        return [backgroundColor, color].map((colour) =>
          (colour.match(/[\d.]+/g) ?? []).slice(0, 3).reduce((sum, part) => sum + Number(part), 0),
        );
      });
      return (paper ?? 0) - (ink ?? 0);
    };
    expect(await lightness("light")).toBeGreaterThan(0);
    expect(await lightness("dark")).toBeLessThan(0);
  });
});
