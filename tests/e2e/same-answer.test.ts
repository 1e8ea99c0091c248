import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import { inBrowser } from "#tests/support/in-browser.ts";
import { post } from "#tests/support/open-http.ts";
import { textOf } from "#tests/support/read-page.ts";
import { runNode } from "#tests/support/run-node.ts";

const { open, url, folder } = inBrowser();

const DEMONSTRATIONS = ["millrace-chest", "saltmarsh-chest", "ropewalk-table", "larkspur-chair"] as const;
const seedPath = (name: string) => join(import.meta.dirname, "../../seed-data/pieces", `${name}.json`);

/** The report of a demonstration as the API gives it. */
async function reportFromApi(name: string): Promise<unknown> {
  const query = "query ($id: ID!) { examination(id: $id) { examined { ... on Examined { report } } } }";
  const { text } = await post(url(), { query, variables: { id: `examination.${name}` } });
  return JSON.parse(text).data.examination.examined.report;
}
const fromCommandLine = (args: readonly string[]) =>
  runNode(["server/examine-piece.ts", ...args], { SCRIBELINE_DATA: folder() }).ended;

describe("one answer, however it is asked for", () => {
  it.each(DEMONSTRATIONS)("the command line gives the bytes of the API for %s", async (name) => {
    const { exit, out, err } = await fromCommandLine([seedPath(name)]);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toBe(`${canonicalJson(await reportFromApi(name))}\n`);
  });

  it("the page tells the sentences of the command line", async () => {
    const { out } = await fromCommandLine([seedPath("millrace-chest"), "--words"]);
    const page = await open("/pieces/examination.millrace-chest");
    const conclusion = await textOf(page.getByRole("region", { name: "Conclusion", exact: true }));
    const [, , , headline, firstReason] = out.split("\n");
    expect(headline).toMatch(/cannot be of 1760 to 1780/);
    expect(conclusion).toContain(headline);
    expect(conclusion).toContain(firstReason?.trim());
    const reasons = out
      .split("\n")
      .filter((line) => /^ {2}\S.* cannot be of 1760 to 1780: possible/.test(line));
    const against = await textOf(page.getByRole("region", { name: "What rules it out" }));
    for (const reason of new Set(reasons)) expect(against).toContain(reason.trim());
  });

  it("an unsaved change gives the answer that it gives once stored", async () => {
    const piece = JSON.parse(readFileSync(seedPath("millrace-chest"), "utf8"));
    const changed = { ...piece, attribution: { ...piece.attribution, date: "1850" } };
    const path = join(folder(), "changed.json");
    writeFileSync(path, JSON.stringify(changed));
    const { out } = await fromCommandLine([path]);
    const page = await open("/pieces/examination.millrace-chest");
    await page.getByRole("button", { name: "Change what is claimed" }).click();
    await page.getByRole("textbox", { name: "Date", exact: true }).fill("1850");
    await page.keyboard.press("Enter");
    await page.getByText(/1850/).first().waitFor();
    await page
      .getByRole("status")
      .filter({ hasText: /^stored$/ })
      .waitFor();
    await expect.poll(async () => `${canonicalJson(await reportFromApi("millrace-chest"))}\n`).toBe(out);
  });
});
