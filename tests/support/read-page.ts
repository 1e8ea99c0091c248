import type { Locator, Page } from "playwright-core";

/** The text of an element, each run of white space as one space. */
export const textOf = async (element: Locator): Promise<string> =>
  ((await element.textContent()) ?? "").replace(/\s+/g, " ").trim();

/** How the element that has the keyboard's focus would be called: its label, else its text. */
export const focusedName = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const focused = document.activeElement;
    const labelled = focused instanceof HTMLInputElement ? focused.labels?.[0]?.textContent : undefined;
    return (focused?.getAttribute("aria-label") ?? labelled ?? focused?.textContent ?? "").trim();
  });

/** Presses a key until the focus is on an element of that name. Throws when it was not met in `most` presses. */
export async function pressUntil(page: Page, key: string, name: RegExp | string, most = 60): Promise<void> {
  const isMet = (focused: string) => (typeof name === "string" ? focused.includes(name) : name.test(focused));
  const met: string[] = [];
  for (let presses = 0; presses <= most; presses++) {
    const focused = await focusedName(page);
    if (isMet(focused)) return;
    met.push(focused.slice(0, 40));
    await page.keyboard.press(key);
  }
  throw new Error(`${key} pressed ${most} times met nothing called ${name}, but: ${met.join(" | ")}`);
}
