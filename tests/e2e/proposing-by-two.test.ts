import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { auditPage } from "#tests/support/audit-page.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { inSharedHouse } from "#tests/support/in-shared-house.ts";
import { post } from "#tests/support/open-http.ts";
import { textOf } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const CLAIM = "/claims/claim.A13";
const CHEST = "examination.millrace-chest";

const { as, cookieOf, house } = inSharedHouse({ Cleo: "contributor", Rolf: "reviewer" });

const foreseen = (page: Page) => page.getByText(/examined both ways, over revision/).waitFor();

/** The report on the chest as it is given on a revision, to the byte. */
async function reportOn(revision: number): Promise<string> {
  const examination = await house().store.examination(CHEST as never);
  const { id: _, ...piece } = { id: "", ...examination?.piece };
  const query = `query ($piece: PieceInput!, $revision: Int) { examine(piece: $piece, revision: $revision) {
    ... on Examined { report } ... on Refused { problems { message } }
  } }`;
  const upper = {
    ...piece,
    odds: null,
    observations: (examination?.piece.observations ?? []).map((seen) => ({
      ...seen,
      seen: seen.seen.toUpperCase(),
      sureness: seen.sureness.toUpperCase(),
    })),
  };
  const { text } = await post(
    house().url,
    { query, variables: { piece: upper, revision } },
    cookieOf("Rolf"),
  );
  expect(JSON.parse(text).data.examine.report).toBeDefined();
  return JSON.stringify(JSON.parse(text).data.examine.report);
}

/** Breaks no rule of accessibility, and nothing sticks out, on a desktop and on a phone. */
async function isSound(who: "Cleo" | "Rolf", path: string, ready: (page: Page) => Promise<unknown>) {
  for (const size of [DESKTOP, PHONE]) {
    const page = await as(who, path, size);
    await ready(page);
    expect(await auditPage(page)).toEqual([]);
    expect(await sticksOut(page)).toEqual(NOTHING);
    await page.context().close();
  }
}

describe("two people in one house", () => {
  it("[J8] [J9] propose, discuss, see what it would do, accept; the old report is unchanged", async () => {
    const before = await reportOn(1);
    const maker = await as("Cleo", CLAIM);
    await maker.getByRole("link", { name: "Put it right" }).click();
    await maker.getByText("The date", { exact: true }).click();
    await maker.getByRole("textbox", { name: "The right date" }).fill("c. 1760");
    await maker.getByText(/cannot be read/).waitFor();
    await maker.getByRole("textbox", { name: "The right date" }).fill("1760");
    await maker.getByRole("button", { name: "See what it would change" }).click();
    await foreseen(maker);
    const impact = await textOf(maker.getByRole("region", { name: "What accepting it would do" }));
    expect(impact).toMatch(
      /Something would be said otherwise of 1 stored piece\..*Its conclusion would read the same\./,
    );
    expect(impact).toMatch(/Circular-saw mark on the back boards: agrees instead of: unusual by 35 years/);
    const path = new URL(maker.url()).pathname;
    // A draft without a reason is not taken, and is nobody else's to see.
    await maker.getByRole("button", { name: "Hand it to the reviewers" }).click();
    await maker.getByText("Say why, so that others can decide.").waitFor();
    await (await as("Rolf", path))
      .getByRole("heading", { name: /There is no such page|nothing here/i })
      .waitFor();
    await maker.getByRole("textbox", { name: "Why the evidence should change" }).fill("A mill book has it.");
    await maker.getByRole("button", { name: "Hand it to the reviewers" }).click();
    await maker.getByText("open and waits for a reviewer").waitFor();
    await maker.getByText(/role of reviewer; yours is contributor/).waitFor();

    const reviewer = await as("Rolf", "/house");
    await reviewer.getByRole("link", { name: "1 proposal waits for a reviewer" }).click();
    await reviewer.getByRole("link", { name: /^Another date: Circular-saw mark/ }).click();
    await foreseen(reviewer);
    await isSound("Rolf", path, foreseen);
    await reviewer
      .getByRole("textbox", { name: "Say something" })
      .fill("<script>alert(1)</script> Which book?");
    await reviewer.getByRole("button", { name: "Call somebody" }).click();
    await reviewer.getByRole("option", { name: "Cleo" }).click();
    await reviewer.getByRole("button", { name: "Say it" }).click();
    await reviewer.getByText("<script>alert(1)</script> Which book?").waitFor();
    await maker.goto(new URL("/house", house().url).href);
    await maker.getByRole("link", { name: /^Rolf, / }).click();
    await maker.getByRole("button", { name: "Answer Rolf" }).click();
    await maker.getByRole("textbox", { name: "Your answer" }).fill("That of the lower mill.");
    await maker.getByRole("button", { name: "Answer", exact: true }).click();
    await maker.getByText("That of the lower mill.").waitFor();

    await reviewer.getByRole("radio", { name: /^Accept/ }).check({ force: true });
    await reviewer.getByRole("button", { name: "Accept", exact: true }).click();
    await reviewer.getByText(/Accepting it made revision 2/).waitFor();
    expect(await house().store.newestRevision()).toMatchObject({ number: 2 });
    expect(await reportOn(1)).toBe(before);
    expect(await reportOn(2)).not.toBe(before);
    const claim = await as("Cleo", CLAIM);
    await claim.getByRole("heading", { level: 1, name: /from 1760/ }).waitFor();
    await isSound("Cleo", path, (page) => page.getByText(/Accepting it made/).waitFor());
  });

  it("[J10] dispute a claim, which is seen wherever it is, and counts as before until it ends", async () => {
    const claim = await as("Cleo", "/claims/claim.A14");
    const says = await textOf(claim.getByRole("heading", { level: 1 }));
    await claim.getByRole("button", { name: "Dispute this claim" }).click();
    await claim
      .getByRole("textbox", { name: /^What is wrong/ })
      .fill("<b>The patent</b> names another machine.");
    await claim.getByRole("button", { name: "Bring it up" }).click();
    await claim.getByText("<b>The patent</b> names another machine.").waitFor();
    await isSound("Cleo", "/claims/claim.A14", (page) => page.getByText("1 open").waitFor());
    await claim.getByRole("link", { name: "read and discuss it" }).click();
    const path = new URL(claim.url()).pathname;
    await claim.getByRole("heading", { level: 1, name: /^Disputed: / }).waitFor();

    const subject = (await house().store.claims(["claim.A14" as never])).get("claim.A14" as never);
    const term = subject && "subject" in subject ? subject.subject : "";
    const list = await as("Rolf", `/terms/${term}`);
    await list.getByRole("link", { name: "disputed" }).first().waitFor();
    await isSound("Rolf", path, (page) => page.getByRole("heading", { name: "End it" }).waitFor());
    const reviewer = await as("Rolf", "/house");
    await reviewer.getByRole("link", { name: "1 claim is disputed" }).click();
    await reviewer.getByRole("link", { name: says }).click();
    await reviewer.getByText("The claim stands", { exact: true }).click();
    await reviewer.getByRole("button", { name: "End the dispute" }).click();
    await reviewer.getByText("Say why it ends so.").waitFor();
    await reviewer.getByRole("textbox", { name: "Why" }).fill("The patent is of another thing.");
    await reviewer.getByRole("button", { name: "End the dispute" }).click();
    await reviewer.getByText("The patent is of another thing.").waitFor();
    await claim.goto(new URL("/claims/claim.A14", house().url).href);
    await claim.getByText(/ended .*: the claim stands, by Rolf/).waitFor();
    await isSound("Rolf", "/house/disputes?state=ended", (page) =>
      page.getByRole("link", { name: says }).waitFor(),
    );
  });

  it("[J7] narrow the queue by kind and region, and the address keeps it", async () => {
    const maker = await as("Cleo", "/house/propose?kind=correction");
    await maker.getByRole("combobox", { name: "What is it about?" }).fill("circular saw");
    await maker
      .getByRole("option", { name: /^circular saw/ })
      .first()
      .click();
    await maker.getByRole("link", { name: "The term itself: circular saw" }).click();
    await maker.getByText("Its name or its note", { exact: true }).click();
    await maker.getByRole("textbox", { name: "Name in the trade" }).fill("round saw");
    await maker
      .getByRole("textbox", { name: "Why the evidence should change" })
      .fill("So it is called here.");
    await maker.getByRole("button", { name: "Hand it to the reviewers" }).click();
    await maker.getByText("open and waits for a reviewer").waitFor();
    const title = "circular saw, to be called round saw";
    const queue = await as("Rolf", "/house/proposals");
    await queue.getByRole("link", { name: title }).waitFor();
    await queue.getByRole("combobox", { name: "Region" }).fill("Boston");
    await queue.getByRole("option", { name: "Boston" }).click();
    await queue.getByText("Nothing waits for a reviewer here.", { exact: false }).waitFor();
    expect(new URL(queue.url()).search).toBe("?region=region.boston");
    const all = await as("Cleo", "/house/proposals?list=accepted&region=region.united-states");
    await all.getByRole("link", { name: /^Another date: Circular-saw mark/ }).waitFor();
    for (const path of ["/house", "/house/proposals?list=all"])
      await isSound("Rolf", path, (page) =>
        page
          .getByRole("link", { name: /waits|to be called/ })
          .first()
          .waitFor(),
      );
  });
});
