import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { inBrowser } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";

const { open } = inBrowser();

/** Types words into a field that offers things, and takes the first offer that fits. */
async function take(page: Page, field: string, words: string, offer: RegExp): Promise<void> {
  const box = page.getByRole("combobox", { name: field, exact: true });
  await box.fill(words);
  await page.getByRole("option", { name: offer }).first().click();
}
/** Adds a part by its kind and opens it. */
async function addPart(page: Page, kind: string): Promise<void> {
  await take(page, "Add a part", kind, new RegExp(`^${kind}`));
  const part = page
    .getByRole("region", { name: "Parts" })
    .getByRole("button", { name: new RegExp(`^${kind}`) });
  await part.waitFor();
  if ((await part.getAttribute("aria-expanded")) !== "true") await part.click();
}
/** Presses the words of one of a few choices in sight. */
const choose = (page: Page, choice: string) =>
  page.getByRole("radiogroup").getByText(choice, { exact: true }).last().click();
const stored = (page: Page) =>
  page
    .getByRole("status")
    .filter({ hasText: /^stored$/ })
    .waitFor();
const conclusion = (page: Page) => textOf(page.getByRole("region", { name: "Conclusion", exact: true }));
const strips = (page: Page) => page.getByRole("region", { name: /^When each thing seen was made/ });

async function begin(page: Page, title: string, date: string): Promise<void> {
  await page.getByRole("button", { name: "Begin an examination" }).click();
  const dialog = page.getByRole("dialog", { name: "Begin an examination" });
  await dialog.getByRole("textbox", { name: "What the piece is called" }).fill(title);
  await dialog.getByRole("textbox", { name: "Date claimed" }).fill(date);
  await dialog.getByRole("button", { name: "Begin", exact: true }).click();
  await page.waitForURL(/\/pieces\/examination\./);
}

describe("recording a chest of drawers", () => {
  it("[P11] refuses a claimed date it cannot read with what to write instead, and takes that", async () => {
    const page = await open("/");
    await page.getByRole("button", { name: "Begin an examination" }).click();
    const dialog = page.getByRole("dialog", { name: "Begin an examination" });
    const date = dialog.getByRole("textbox", { name: "Date claimed" });
    await date.fill("1760-1780");
    await dialog.getByText(/"1760-1780" cannot be read.*1760\/1780/).waitFor();
    expect(await dialog.getByRole("button", { name: "Begin", exact: true }).isDisabled()).toBe(true);
    await dialog.getByRole("button", { name: "Take 1760/1780" }).click();
    await dialog.getByText(/^Read as: /).waitFor();
    await dialog.getByRole("button", { name: "Begin", exact: true }).click();
    await page.waitForURL(/\/pieces\/examination\./);
  });

  it("[X2] goes from an empty page to a rule-out, part by part, and keeps it all over a reload", async () => {
    const page = await open("/");
    await begin(page, "Chest in the back room", "");
    const date = page.getByRole("textbox", { name: "Date", exact: true });
    await date.fill("c. 1770");
    await page.getByRole("button", { name: "Take 1770~" }).click();
    await page.getByText(/^Read as: /).waitFor();
    await take(page, "Region", "suffol", /^Suffolk/);
    await take(page, "Form", "chest of dra", /^chest of drawers/);
    await stored(page);

    await addPart(page, "drawer bottom");
    await take(page, "Add to drawer bottom", "circular saw", /^circular-saw mark/i);
    await expect
      .poll(() =>
        strips(page)
          .getByRole("button", { name: /^Circular-saw mark/i })
          .count(),
      )
      .toBe(1);
    await addPart(page, "fastener");
    await take(page, "Add to fastener", "gimlet", /^gimlet-pointed screw/i);
    await expect.poll(() => conclusion(page)).toMatch(/fastener cannot be of 1765 to 1775/);
    const against = page.getByRole("region", { name: "What rules it out" });
    expect(await textOf(against)).toMatch(/gimlet-pointed screw.*published/i);

    await choose(page, "looked for, absent");
    await take(page, "Add to fastener", "filed", /^screw point with filed/i);
    await choose(page, "could not be seen");
    await take(page, "Add to fastener", "screw in old hole", /older hole/i);
    await strips(page).getByText("looked for and not there").waitFor();
    await strips(page).getByText("could not be seen").waitFor();
    await stored(page);

    await page.getByRole("button", { name: /^gimlet-pointed screw seen/i }).click();
    await choose(page, "probable");
    await page.getByRole("button", { name: /^gimlet-pointed screw seen, probable/i }).waitFor();
    await stored(page);

    await page.reload();
    await page.getByRole("heading", { level: 1, name: "Chest in the back room" }).waitFor();
    expect(await conclusion(page)).toMatch(/fastener cannot be of 1765 to 1775/);
    expect(await textOf(page.getByRole("article"))).toMatch(/Claimed: Suffolk, 1770~.*chest of drawers/);
    await page.getByRole("button", { name: /^fastener/ }).click();
    expect(await page.getByRole("button", { name: /^gimlet-pointed screw seen, probable/i }).count()).toBe(1);
    expect(await strips(page).getByText("looked for and not there").count()).toBe(1);
  });

  it("[X4] takes back the newest change, and the one before", async () => {
    const page = await open("/");
    await begin(page, "Chest to be undone", "1770");
    await addPart(page, "fastener");
    await take(page, "Add to fastener", "gimlet", /^gimlet-pointed screw/i);
    await expect.poll(() => conclusion(page)).toMatch(/the fastener cannot be of/);
    await stored(page);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => conclusion(page)).not.toMatch(/cannot be/);
    await expect.poll(() => page.getByRole("button", { name: /^fastener/ }).count()).toBe(1);
    await page.getByRole("heading", { level: 1 }).click();
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.getByRole("button", { name: /^fastener/ }).count()).toBe(0);
  });

  it("[X7] offers the thing named before those that contain its name", async () => {
    const page = await open("/");
    await begin(page, "Chest to be searched", "1770");
    await addPart(page, "drawer");
    await page.getByRole("combobox", { name: "Add to drawer" }).fill("circular saw");
    await expect.poll(() => page.getByRole("option").first().textContent()).toMatch(/^circular-saw mark/i);
  });

  it("[X7] says where nothing goes by the words before it offers what comes near", async () => {
    const page = await open("/");
    await begin(page, "Chest with an odd joint", "1660");
    await addPart(page, "carcase");
    const box = page.getByRole("combobox", { name: "Add to carcase" });
    await box.fill("snipe hinge");
    await page.getByText("Nothing goes by “snipe hinge”. These come near:").waitFor();
    expect(await page.getByRole("option").count()).toBeGreaterThan(0);
    await box.fill("pegged");
    await page.getByRole("option", { name: /^pegged mortise-and-tenon/ }).waitFor();
    await expect.poll(() => page.getByText(/^Nothing goes by/).count()).toBe(0);
    await box.fill("zzzz");
    await page.getByText(/take a broader term and write the rest in its note/).waitFor();
  });

  it("[X7] opens what is recorded on the part already, and does not record it a second time", async () => {
    const page = await open("/");
    await begin(page, "Chest with one screw", "1770");
    await addPart(page, "fastener");
    await take(page, "Add to fastener", "gimlet", /^gimlet-pointed screw/i);
    const recorded = page.getByRole("button", { name: /^gimlet-pointed screw seen/i });
    await recorded.waitFor();
    await stored(page);
    await take(page, "Add to fastener", "gimlet", /^gimlet-pointed screw recorded already/i);
    await expect.poll(() => recorded.getAttribute("aria-expanded")).toBe("true");
    expect(await recorded.count()).toBe(1);
    expect(await recorded.evaluate((button) => button === document.activeElement)).toBe(true);
  });

  it("[W8] does not condemn a piece of no stated region for what holds in some regions only", async () => {
    const page = await open("/");
    await begin(page, "Chest from nowhere", "1770");
    await addPart(page, "fastener");
    await take(page, "Add to fastener", "gimlet", /^gimlet-pointed screw/i);
    await expect
      .poll(() => conclusion(page))
      .toMatch(/But if it was made in (Britain or )?the United States.*, the fastener cannot be of/);
    expect(await conclusion(page)).not.toMatch(/^The fastener/);
    const against = page.getByRole("region", { name: "What rules it out" });
    const inAmerica = against.getByText(/^If made in the United States: gimlet-pointed screw/);
    expect(await inAmerica.isVisible()).toBe(false);
    await against.getByRole("button", { name: /only at some of the places it can be from/ }).click();
    await inAmerica.waitFor();
    await take(page, "Region", "massachu", /^Massachusetts/);
    await expect.poll(() => conclusion(page)).toMatch(/^The fastener cannot be of 1770/);
    expect(await textOf(against)).toMatch(/^What rules it out · 1 reason/);
  });

  it("[P10] deletes a piece from the start page and brings it back", async () => {
    const page = await open("/");
    await begin(page, "Chest to be deleted", "1770");
    await page.getByRole("link", { name: "Pieces" }).click();
    const own = page.getByRole("region", { name: "Your examinations" });
    await own.getByRole("button", { name: "Delete Chest to be deleted" }).click();
    await own.getByText("“Chest to be deleted” is deleted.").waitFor();
    expect(await own.getByRole("link", { name: "Chest to be deleted" }).count()).toBe(0);
    await own.getByRole("button", { name: "Undo", exact: true }).click();
    await own.getByRole("link", { name: "Chest to be deleted" }).click();
    await page.getByRole("heading", { level: 1, name: "Chest to be deleted" }).waitFor();
  });
});
