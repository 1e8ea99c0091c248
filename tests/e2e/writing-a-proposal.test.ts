import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { auditPage } from "#tests/support/audit-page.ts";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open, store, takeComplaints } = inBrowser();

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "scribeline-table-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const fileOf = (name: string, content: string | Uint8Array): string => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

/** Types into a box that searches, and takes the first that is found, by the keyboard alone. */
async function choose(page: Page, name: string, words: string, found: RegExp) {
  const box = page.getByRole("combobox", { name, exact: true });
  await box.focus();
  await page.keyboard.type(words);
  // What is found by half of the words goes before the arrow is pressed.
  await page
    .getByRole("option")
    .first()
    .and(page.getByRole("option", { name: found }))
    .waitFor();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
}
const said = (page: Page) => page.getByRole("region", { name: "It would say" });

describe("writing a proposal", () => {
  it("[J40] [J42] [J46] is done by the keyboard, from a date as one would write it to a draft that is handed in", async () => {
    const page = await open("/house/propose");
    await choose(page, "Subject", "circular saw", /^circular saw/);
    await page.getByText(/^Said of it already/).waitFor();
    await page.getByRole("button", { name: /I can say$/ }).focus();
    await page.keyboard.press("Enter");
    await page.keyboard.type("When it is on rec");
    await page.keyboard.press("Enter");
    await page.getByRole("textbox", { name: "When", exact: true }).focus();
    await page.keyboard.type("c. 1805");
    await page.getByRole("button", { name: "Take 1805~" }).focus();
    await page.keyboard.press("Enter");
    await page.getByText(/^Read as: about 1805/).waitFor();
    await choose(page, "Where it holds", "england", /^England/);
    await page.getByRole("radio", { name: /^I remember it/ }).focus();
    await page.keyboard.press("Space");
    await said(page).getByText("Circular saw: on record in England, about 1805.").waitFor();
    await page.getByRole("textbox", { name: "Why the evidence should change" }).focus();
    await page.keyboard.type("An invented reason, for the test.");
    await page.getByText("Kept as a draft.").waitFor();
    expect(await auditPage(page)).toEqual([]);
    const draft = await page.getByRole("link", { name: /^Its address/ }).getAttribute("href");

    const elsewhere = await page.context().newPage();
    await elsewhere.goto(new URL(draft ?? "", page.url()).href);
    await said(elsewhere).getByText("Circular saw: on record in England, about 1805.").waitFor();
    await elsewhere.getByRole("textbox", { name: "Why the evidence should change" }).fill("Another reason.");
    await elsewhere.getByText("Being kept …").waitFor();
    await elsewhere.getByText("Kept as a draft.").waitFor();

    await page.getByRole("textbox", { name: "Why the evidence should change" }).fill("A third reason.");
    await page.getByText(/was changed in another tab/).waitFor();
    await page.getByRole("button", { name: "Keep mine as a draft of its own" }).click();
    await page.getByText("Kept as a draft.").waitFor();
    await page.getByRole("button", { name: "Hand it to the reviewers" }).click();
    await page
      .getByRole("heading", { level: 1, name: "Circular saw: on record in England, about 1805." })
      .waitFor();
    await page.getByText("A third reason.").first().waitFor();
  });

  it("[J40] says what is lacking once one tries, and fills a source from a citation that was pasted", async () => {
    const page = await open("/house/propose?subject=tool.circular-saw&relation=introduced");
    await page.getByRole("button", { name: "Hand it to the reviewers" }).click();
    await page.getByText("Say how you know it.").first().waitFor();
    await page.getByRole("radio", { name: /^It is printed/ }).check({ force: true });
    await page.getByRole("button", { name: "It is not there: describe it" }).click();
    await page
      .getByRole("textbox", { name: /^Paste a citation/ })
      .fill("Example, Ann. Saws of the invented north. London: Bench Press, 1990. ISBN 978-0-306-40615-7");
    await page.getByRole("button", { name: "Fill the fields from it" }).click();
    expect(await page.getByRole("textbox", { name: "Title", exact: true }).inputValue()).toBe(
      "Saws of the invented north",
    );
    await page.getByRole("textbox", { name: "Where in it" }).fill("p. 4");
    await page.getByRole("textbox", { name: "When", exact: true }).fill("1805");
    await said(page)
      .getByText(/Saws of the invented north/)
      .waitFor();
    expect(await auditPage(page)).toEqual([]);
  });

  it("[J9] [J47] corrects the sources of a claim one by one, and is gone on with as it was left", async () => {
    const claim = await open("/claims/claim.A14");
    await claim.getByRole("link", { name: "Put it right" }).click();
    await claim.getByText("Where it is from", { exact: true }).click();
    expect(await claim.getByRole("textbox", { name: "When" }).count()).toBe(0);
    const add = claim.getByRole("button", { name: "Add another source" });
    await add.click();
    await claim.getByRole("button", { name: /^\d+\. Not said yet/ }).waitFor();
    await claim
      .getByRole("radio", { name: /^I remember it/ })
      .last()
      .check({ force: true });
    const [second] = await claim.getByRole("button", { name: /^\d+\. from memory, unconfirmed$/ }).all();
    await second?.waitFor();
    await claim.getByRole("button", { name: "Tell first: from memory, unconfirmed" }).click();
    await claim.getByRole("button", { name: /^1\. from memory, unconfirmed · told first$/ }).waitFor();
    await said(claim).getByText("from memory", { exact: false }).first().waitFor();
    expect(await auditPage(claim)).toEqual([]);
    await claim.getByText("Kept as a draft.").waitFor();
    const draft = await claim.getByRole("link", { name: /^Its address/ }).getAttribute("href");
    const elsewhere = await open(draft ?? "");
    await elsewhere.getByRole("button", { name: /^1\. from memory, unconfirmed · told first$/ }).click();
    await elsewhere.getByRole("button", { name: "Take out: from memory, unconfirmed" }).click();
    await said(elsewhere).getByText("Nothing differs yet", { exact: false }).waitFor();
  });

  it("[J46] keeps what is written on the machine while the server cannot be reached, and sends it when it is back", async () => {
    const page = await open("/house/propose?kind=term");
    await page.context().setOffline(true);
    await page.getByRole("textbox", { name: "Name in the trade" }).fill("invented gauge");
    await page.getByText(/^The connection is gone/).waitFor();
    await page.context().setOffline(false);
    await page.getByText("Kept as a draft.").waitFor();
    expect(takeComplaints().every((one) => one.includes("ERR_INTERNET_DISCONNECTED"))).toBe(true);
  });

  it.each([
    ["desktop", DESKTOP],
    ["phone", PHONE],
  ])("[J45] of many claims shows each row, and makes one draft of all: %s", async (_, size) => {
    const page = await open("/house/propose?kind=batch", size);
    const input = page.locator("input[type=file]");
    await input.setInputFiles(fileOf("quotes.csv", '"'.repeat(10_000_000)));
    await page.getByText(/quotes\.csv is larger than 100 kB/).waitFor();
    await input.setInputFiles(fileOf("picture.csv", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 0xff])));
    await page.getByText(/picture\.csv is no text in UTF-8/).waitFor();
    const head = "relation;subject;region;when;basis;note\r\n";
    const row = "attested;circular saw;England;1806;from memory;<script>alert(1)</script>\r\n";
    await input.setInputFiles(
      fileOf("wrong.csv", `\uFEFF${head}${row}attested;circular sow;England;c. 1806;from memory;\r\n`),
    );
    await page
      .getByText("1 of 2 rows have something wrong; nothing is proposed before all are right.")
      .waitFor();
    expect(await textOf(page.getByRole("main"))).toMatch(
      /row 3.*Column subject: There is no term “circular sow”/s,
    );
    expect(await sticksOut(page)).toEqual(NOTHING);
    expect(await auditPage(page)).toEqual([]);
    await input.setInputFiles(fileOf("right.csv", `\uFEFF${head}${row}`));
    await page.getByText("The one row can be proposed.").waitFor();
    await page.getByRole("button", { name: "Make one draft of all rows" }).click();
    await page.getByRole("heading", { level: 1, name: "1 claim from a table" }).waitFor();
  });
});

describe("the forms", () => {
  it.each([
    ["desktop", DESKTOP],
    ["phone", PHONE],
  ])(
    "[J40] [J46] break no rule of accessibility, nothing sticks out, and looking at one keeps no draft: %s",
    async (_, size) => {
      const kept = async () => (await store().listCards({ kind: "proposal" }, { first: 1 })).total;
      const before = await kept();
      for (const address of [
        "/house/propose?kind=term",
        "/house/propose?kind=source",
        "/house/propose?kind=correction&about=claim.A13",
        "/house/propose?kind=correction&about=claim.A13&wrong=all",
        "/house/propose?kind=correction&about=claim.A13&wrong=sources",
        "/house/propose?kind=correction&about=claim.A13&wrong=exception",
        "/house/propose?kind=correction&about=claim.A13&wrong=retract",
        "/house/propose?kind=correction&about=tool.circular-saw&wrong=belongs",
        "/house/propose?kind=merge&about=tool.circular-saw",
      ]) {
        const page = await open(address, size);
        await (address.includes("correction")
          ? page.getByText("What is wrong with it?")
          : said(page)
        ).waitFor();
        expect(await auditPage(page), address).toEqual([]);
        expect(await sticksOut(page), address).toEqual(NOTHING);
      }
      expect(await kept()).toBe(before);
    },
  );
});
