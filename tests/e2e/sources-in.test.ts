import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { auditPage } from "#tests/support/audit-page.ts";
import { DESKTOP, inBrowser, PHONE } from "#tests/support/in-browser.ts";
import { textOf } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { open } = inBrowser();
const PAGE = "/evidence/sources/import";

/** Invented works, one that the seed graph has, one broken entry. */
const LIST = `@string{fh = "Journal of Benches"}
@article{alder1990, author = {Alder, Ann and {van der Berg}, Jan}, title = {On {Saws} of K{\\o}benhavn, 1680--1720},
  journal = fh, volume = 12, pages = {40--52}, year = 1990, keywords = {saws}}
@book{half,
  title = {Half an entry,
  year = {1990}
}
@article{katlan, author = {Katlan, Alexander W.}, title = {Early Wood-Fiber Panels}, doi = {10.2307/3179639}, year = 1994}
`;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "scribeline-list-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const fileOf = (name: string, content: string | Uint8Array): string => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

describe("looking through a list of sources", () => {
  it.each([
    ["desktop", DESKTOP],
    ["phone", PHONE],
  ])("[P43] of a file shows what each would become, and keeps what would be taken: %s", async (_, size) => {
    const page = await open(PAGE, size);
    const choosing = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Choose a file" }).click();
    await (await choosing).setFiles(fileOf("mine.bib", LIST));
    await page.getByText("1 of 3 would be taken, 1 there already, 1 refused").waitFor();
    const text = await textOf(page.getByRole("main"));
    expect(text).toMatch(
      /Ann Alder and Jan van der Berg, “On Saws of København, 1680–1720”, Journal of Benches 12, pp\. 40–52, 1990/,
    );
    expect(text).toMatch(/line 2, would be stored as source\.alder1990, as article/);
    expect(text).toMatch(/Fields that would not be kept: keywords/);
    expect(text).toMatch(/Refused: line 5, title: Behind its value stands “@”, in line 8\. Put a comma/);
    expect(text).toMatch(/There already, as source\.katlan-1994 \(same DOI\)/);
    expect(await sticksOut(page)).toEqual(NOTHING);
    expect(await auditPage(page)).toEqual([]);
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save the one that would be taken as CSL-JSON" }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toBe("sources.csl.json");
    const kept = JSON.parse(readFileSync(await download.path(), "utf8"));
    expect(kept).toMatchObject([{ id: "source.alder1990", type: "article-journal", page: "40-52" }]);
  });

  it("[P43] refuses what is no list, and goes on with the next file", async () => {
    const page = await open(PAGE);
    const input = page.locator("input[type=file]");
    await input.setInputFiles(fileOf("large.bib", LIST.repeat(20_000)));
    await page.getByText(/large\.bib is larger than 5 MB/).waitFor();
    await input.setInputFiles(fileOf("picture.bib", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 0xff])));
    await page.getByText(/picture\.bib is no text in UTF-8/).waitFor();
    await input.setInputFiles(fileOf("mine.bib", LIST));
    await page.getByText("1 of 3 would be taken, 1 there already, 1 refused").waitFor();
  });

  it("[P42] [P43] knows all its own sources again in its own file of BibTeX", async () => {
    const page = await open("/evidence?kind=SOURCE");
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save all as BibTeX" }).click();
    const file = await (await saving).path();
    await page.getByRole("link", { name: "Look through a list of your own" }).click();
    await page.locator("input[type=file]").setInputFiles(fileOf("all.bib", readFileSync(file)));
    await page.getByText(/^0 of \d{3} would be taken, \d{3} there already, 0 refused$/).waitFor();
  });
});
