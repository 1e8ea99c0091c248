import type { BrowserContextOptions } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { id } from "#server/domain/ids.ts";
import { auditPage } from "#tests/support/audit-page.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const browser = inBrowser();
const CHEST = "/pieces/examination.millrace-chest";
const SIZES: readonly (readonly [string, BrowserContextOptions])[] = [
  ["desktop", DESKTOP],
  ["phone", PHONE],
];

/** Dates the saws of the back boards earlier, and withdraws a sign. */
async function editEvidence(): Promise<void> {
  const store = browser.store();
  if ((await store.newestRevision())?.number !== 1) return;
  const dated = (await store.claims([id("claim.A13")])).get(id("claim.A13"));
  if (dated?.relation !== "common from") throw new Error("The seed has other claims");
  const moved: Change = [{ kind: "claim", before: dated, after: { ...dated, when: "1740/1750" } }];
  const at = new Date().toISOString();
  answered(await store.commit(aCommit(moved, { at, message: "Read the mill census again" })));
}

describe.each(SIZES)("what changed under a piece: %s", (_, size) => {
  const opened = async (path: string) => {
    await editEvidence();
    return browser.open(path, size);
  };

  it("[K11] is told on its page, within reach of the keyboard, and breaks no rule of WCAG 2.2 A and AA", async () => {
    const page = await opened(CHEST);
    const told = page.getByRole("region", { name: "Changed since" });
    expect(await textOf(told)).toMatch(/^One claim that this is read from changed since revision 1/);
    expect(await textOf(told)).toMatch(/Circular-saw mark on the back boards: now .*, before unusual by/);
    const fold = told.getByRole("button", { name: "The claim" });
    await fold.focus();
    await page.keyboard.press("Enter");
    await told.getByRole("link", { name: /1740/ }).waitFor();
    expect(await sticksOut(page)).toEqual(NOTHING);
    expect(await auditPage(page, { within: "[aria-label='Changed since']" })).toEqual([]);
  });

  it("[K11] is told in the list, until it was looked at in an earlier visit", async () => {
    const page = await opened("/");
    const row = page.getByRole("listitem").filter({ has: page.getByRole("link", { name: /millrace/i }) });
    await row.scrollIntoViewIfNeeded();
    const line = row.getByText(/^Changed since revision 1: Circular-saw mark on the back boards/);
    await line.waitFor();
    expect(await sticksOut(page)).toEqual(NOTHING);
    expect(await auditPage(page)).toEqual([]);
    await page.goto(new URL(CHEST, browser.url()).href);
    await page.getByRole("region", { name: "Changed since" }).waitFor();
    await page.goto(browser.url());
    await row.scrollIntoViewIfNeeded();
    await row
      .getByText(/^Nothing|cannot be/)
      .first()
      .waitFor();
    expect(await line.count()).toBe(0);
  });
});
