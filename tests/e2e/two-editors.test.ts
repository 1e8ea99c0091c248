import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { auditPage } from "#tests/support/audit-page.ts";
import { inBrowser } from "#tests/support/in-browser.ts";

const { open, takeComplaints } = inBrowser();
const CHEST = "/pieces/examination.saltmarsh-chest";

const beginToRename = async (page: Page, title: string): Promise<void> => {
  await page.getByRole("button", { name: "Rename" }).click();
  await page.getByRole("textbox", { name: "What the piece is called" }).fill(title);
};
const keep = (page: Page) => page.getByRole("button", { name: "Keep", exact: true }).click();
async function rename(page: Page, title: string): Promise<void> {
  await beginToRename(page, title);
  await keep(page);
}
const isCalled = (page: Page, title: string) =>
  page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor();
const says = (page: Page, words: string | RegExp) =>
  page.getByRole("status").filter({ hasText: words }).waitFor();
const isStored = (page: Page) => says(page, /^stored$/);

/** Two people have the piece open, each told of the other. */
async function openByTwo(): Promise<readonly [Page, Page]> {
  const pages = await Promise.all([open(CHEST), open(CHEST)]);
  for (const page of pages) await says(page, "You, in another window, are looking at this piece.");
  return [pages[0] as Page, pages[1] as Page];
}

/** Both name it: the second began before the first had done so. */
async function nameByTwo(theirs: string, mine: string): Promise<Page> {
  const [first, second] = await openByTwo();
  await beginToRename(second, mine);
  await rename(first, theirs);
  await isStored(first);
  await says(second, "Somebody else changed: Title.");
  await keep(second);
  return second;
}

describe("[X5] two who change the same", () => {
  it("the second is told what differs, and keeps what is theirs; undo brings the other back", async () => {
    const second = await nameByTwo("Called by the first", "Called by the second");
    const told = second.getByRole("alertdialog", { name: "Changed elsewhere meanwhile" });
    await told.getByRole("cell", { name: "Called by the first" }).waitFor();
    await told.getByRole("cell", { name: "Called by the second" }).waitFor();
    expect(await auditPage(second, { within: "[role=alertdialog]" })).toEqual([]);
    await told.getByRole("button", { name: "Keep mine" }).click();
    await told.waitFor({ state: "detached" });
    await isStored(second);
    await isCalled(await open(CHEST), "Called by the second");
    await second.getByRole("button", { name: /^Undo/ }).click();
    await isCalled(second, "Called by the first");
  });

  it("the second can take what the first did instead", async () => {
    const second = await nameByTwo("Once more by the first", "Once more by the second");
    await second.getByRole("alertdialog").getByRole("button", { name: "Take theirs" }).click();
    await isCalled(second, "Once more by the first");
    await second.reload();
    await isCalled(second, "Once more by the first");
    await rename(second, "After both agreed");
    await isStored(second);
    expect(await second.getByRole("alertdialog").count()).toBe(0);
  });
});

describe("two who work on one examination at once", () => {
  it("[X22] [X23] see what the other does as it is stored, and lose neither the focus nor what they type", async () => {
    const [first, second] = await openByTwo();
    await second.getByRole("button", { name: /^Back/ }).first().click();
    await says(first, /You, in another window, are looking at .*ack/);
    await second.locator("[aria-label='Parts'] h4 button, [aria-label='Parts'] li li button").first().click();
    await says(first, /You, in another window, are editing .*ack/);
    const note = second.getByRole("textbox", { name: "Note" });
    await note.fill("");
    await note.pressSequentially("two boards, ");
    await rename(first, "Named while the other types");
    await isCalled(second, "Named while the other types");
    await note.pressSequentially("one split");
    expect(await note.inputValue()).toBe("two boards, one split");
    expect(await note.evaluate((field) => field === document.activeElement)).toBe(true);
    await second.keyboard.press("Tab");
    await isStored(second);
    await says(first, /Somebody else changed: .*ack/);
    expect(await auditPage(first, { within: "[data-empty=false]" })).toEqual([]);
    await isCalled(first, "Named while the other types");
    expect(await second.getByRole("alertdialog").count()).toBe(0);
    await second.close();
    await expect.poll(() => first.getByText("in another window").count()).toBe(0);
  });

  it("[X22] [Z2] have what was done without a connection stored beside what the other did, when it is back", async () => {
    const [first, second] = await openByTwo();
    await second.waitForLoadState("networkidle");
    await second.context().setOffline(true);
    await rename(second, "Named without a connection");
    await says(second, /not stored/);
    await first.getByRole("button", { name: "Change what is claimed" }).click();
    const date = first.getByRole("textbox", { name: "Date" });
    await date.fill("1771/1779");
    await date.press("Enter");
    await isStored(first);
    await second.context().setOffline(false);
    await isStored(second);
    await second.getByText("1771/1779").first().waitFor();
    await isCalled(first, "Named without a connection");
    const complaints = takeComplaints().filter(
      (each) => !/ERR_INTERNET_DISCONNECTED|dynamically imported/.test(each),
    );
    expect(complaints).toEqual([]);
  });
});
