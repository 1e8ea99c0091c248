import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";

const { open } = inBrowser();
const CHEST = "/pieces/examination.saltmarsh-chest";

async function rename(page: Page, title: string): Promise<void> {
  await page.getByRole("button", { name: "Rename" }).click();
  await page.getByRole("textbox", { name: "What the piece is called" }).fill(title);
  await page.getByRole("button", { name: "Keep", exact: true }).click();
}
const isCalled = (page: Page, title: string) =>
  page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor();
const isStored = (page: Page) =>
  page
    .getByRole("status")
    .filter({ hasText: /^stored$/ })
    .waitFor();

/** Both have the piece open; the first names it, then the second does. */
async function openByTwo(theirs: string, mine: string): Promise<Page> {
  const [first, second] = await Promise.all([open(CHEST), open(CHEST)]);
  await rename(first, theirs);
  await isStored(first);
  await rename(second, mine);
  return second;
}

describe("[X5] two who change one examination", () => {
  it("the second is told what differs, and keeps what is theirs; undo brings the other back", async () => {
    const second = await openByTwo("Called by the first", "Called by the second");
    const told = second.getByRole("alertdialog", { name: "Changed elsewhere meanwhile" });
    await told.getByRole("cell", { name: "Called by the first" }).waitFor();
    await told.getByRole("cell", { name: "Called by the second" }).waitFor();
    await told.getByRole("button", { name: "Keep mine" }).click();
    await told.waitFor({ state: "detached" });
    await isStored(second);
    await isCalled(await open(CHEST), "Called by the second");
    await second.getByRole("button", { name: /^Undo/ }).click();
    await isCalled(second, "Called by the first");
  });

  it("the second can take what the first did instead", async () => {
    const second = await openByTwo("Once more by the first", "Once more by the second");
    await second.getByRole("alertdialog").getByRole("button", { name: "Take theirs" }).click();
    await isCalled(second, "Once more by the first");
    await second.reload();
    await isCalled(second, "Once more by the first");
    await rename(second, "After both agreed");
    await isStored(second);
    expect(await second.getByRole("alertdialog").count()).toBe(0);
  });
});
