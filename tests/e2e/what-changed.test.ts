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
const { open } = browser;
const CHEST = "/pieces/examination.millrace-chest";

/** The second revision dates a claim otherwise, in a longer note; the third withdraws one with what excepts it. */
async function editEvidence(): Promise<void> {
  const store = browser.store();
  const claims = await store.claims([id("claim.A13"), id("claim.J28")]);
  const dated = claims.get(id("claim.A13"));
  const gone = claims.get(id("claim.J28"));
  if (dated?.relation !== "common from" || !gone) throw new Error("The seed has other claims");
  const note = `${dated.note} Two early mills are said to have had one before; neither is dated.`;
  const by = "a keeper of the evidence";
  const moved: Change = [{ kind: "claim", before: dated, after: { ...dated, when: "1835~/1850", note } }];
  answered(await store.commit(aCommit(moved, { by, message: "Read the mill census again" })));
  const exceptions = await store.listClaims({ of: [gone.id] }, { first: 50 });
  const withdrawn = [...exceptions.rows, gone].map((before) => ({ kind: "claim" as const, before }));
  answered(await store.commit(aCommit(withdrawn, { by, message: "Withdraw a rule of thumb" })));
}

describe("what changed since", () => {
  let isEdited = false;
  const opened = async (path: string, size = DESKTOP as Parameters<typeof open>[1]) => {
    if (!isEdited) await editEvidence();
    isEdited = true;
    return open(path, size);
  };

  it("[P50] [P51] goes from the history of a claim to an old reading of it, and back to the newest", async () => {
    const page = await opened("/claims/claim.A13");
    const history = page.getByRole("region", { name: /^History/ });
    await history.getByText("Read the mill census again").waitFor();
    expect(await textOf(history)).toMatch(/Changed: date, note at revision 2.*by a keeper of the evidence/);
    await history.getByRole("link", { name: "read it as it stood then" }).last().click();
    await page.getByRole("heading", { level: 1, name: /from about 1820 to 1840/ }).waitFor();
    const notice = page.getByRole("complementary", { name: "Revision that is read" });
    expect(await textOf(notice)).toMatch(/An old reading.*revision 1 of 3.*What changed since: date, note/);
    // What is new of a long text is set apart from what stayed.
    expect(await notice.locator("strong").last().textContent()).toMatch(/^Two early mills.*dated\.$/);
    await notice.getByRole("link", { name: "Read it as it stands now" }).click();
    await page.getByRole("heading", { level: 1, name: /from about 1835 to 1850/ }).waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
  });

  it("[P52] goes from a claim to the strip of a finding that leans on it, unfolded and in sight", async () => {
    const page = await opened("/claims/claim.A13");
    const leaning = page.getByRole("region", { name: /^What leans on it/ });
    await leaning.getByText(/unusual by \d+ years/).waitFor();
    expect(await textOf(leaning)).toMatch(/without this claim.*says nothing/);
    await leaning.getByRole("link", { name: "Circular-saw mark on the back boards" }).click();
    const strip = page.locator("[data-strip=o06]");
    await strip.waitFor();
    await expect.poll(() => strip.evaluate((row) => row === document.activeElement)).toBe(true);
    expect(await strip.getAttribute("aria-expanded")).toBe("true");
    const isInSight = async () => {
      const { y = 0 } = (await strip.boundingBox()) ?? {};
      return y > 0 && y < DESKTOP.viewport.height;
    };
    await expect.poll(isInSight).toBe(true);
  });

  it.each([
    ["desktop", DESKTOP],
    ["phone", PHONE],
  ] as const)("breaks no rule of WCAG 2.2 A and AA, and pushes nothing out: %s", async (_, size) => {
    for (const path of [
      "/claims/claim.A13",
      "/claims/claim.A13?revision=1",
      "/claims/claim.J28",
      "/claims/claim.J28?revision=2",
    ]) {
      const page = await opened(path, { ...size, reducedMotion: "reduce" });
      expect(await auditPage(page), path).toEqual([]);
      expect(await sticksOut(page)).toEqual(NOTHING);
    }
  });
});

describe("coming back to an examination", () => {
  it.each([
    ["desktop", DESKTOP],
    ["phone", PHONE],
  ] as const)("[P4] [X20] finds it as it was left, unfolded strips and place: %s", async (_, size) => {
    const page = await open(CHEST, size);
    // What comes late would move the place that one leaves.
    await page.getByText(/^Weighed under what is assumed/).waitFor();
    for (const strip of ["o06", "o16"]) await page.locator(`[data-strip=${strip}]`).click();
    const unfolded = () =>
      page
        .locator("[data-strip][aria-expanded=true]")
        .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset["strip"]));
    const before = await unfolded();
    expect(before).toHaveLength(2);
    const strips = page.getByRole("region", { name: /^When each thing/ });
    const claim = strips.locator("a[href='/claims/claim.A13']").first();
    await claim.scrollIntoViewIfNeeded();
    const top = await page.evaluate(() => window.scrollY);
    expect(top).toBeGreaterThan(100);
    await claim.click();
    await page.getByRole("heading", { level: 1, name: /^Circular-saw mark: in common use/ }).waitFor();
    await page.goBack();
    await page.getByRole("heading", { level: 1, name: /Millrace/ }).waitFor();
    await expect.poll(unfolded).toEqual(before);
    await expect.poll(() => page.evaluate(() => Math.round(window.scrollY))).toBe(Math.round(top));
  });

  it("[X20] is folded for who comes anew", async () => {
    const page = await open(CHEST);
    await page.locator("[data-strip=o06]").click();
    await page.getByRole("link", { name: "Pieces" }).click();
    await page.locator(`a[href='${CHEST}']`).first().click();
    await page.locator("[data-strip=o06]").waitFor();
    expect(await page.locator("[data-strip][aria-expanded=true]").count()).toBe(0);
  });

  it("[X21] shows the strength of each claim in a chain", async () => {
    const page = await open(CHEST);
    await page.locator("[data-strip=o06]").click();
    const steps = page
      .getByRole("region", { name: /^When each thing/ })
      .getByRole("list")
      .getByRole("listitem");
    await steps
      .filter({
        hasText: /Circular-saw mark: in common use in the United States.*(usual|tentative), practice/,
      })
      .first()
      .waitFor();
  });
});
