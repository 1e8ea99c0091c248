import type { Page, WebSocketRoute } from "playwright-core";
import { describe, expect, it } from "vitest";
import { auditPage } from "#tests/support/audit-page.ts";
import { DESKTOP, PHONE } from "#tests/support/in-browser.ts";
import { inSharedHouse } from "#tests/support/in-shared-house.ts";
import { post } from "#tests/support/open-http.ts";
import { textOf } from "#tests/support/read-page.ts";
import { NOTHING, sticksOut } from "#tests/support/sticks-out.ts";

const { as, cookieOf, house } = inSharedHouse({ Cleo: "contributor", Rolf: "reviewer", Rosa: "reviewer" });

const says = (page: Page, words: string | RegExp) =>
  page.getByRole("status").filter({ hasText: words }).waitFor();

const PROPOSE = `mutation ($input: ProposalInput!) { made: makeProposal(input: $input, open: true) {
  ... on ProposalChanged { proposal { id version } } ... on Refused { problems { message } } } }`;

/** A term under another name, handed in by Cleo. */
async function handIn(label: string): Promise<string> {
  const id = "tool.circular-saw" as never;
  const before = (await house().store.terms([id])).get(id);
  const input = {
    ...{ kind: "CORRECTION", title: `To be called ${label}`, why: "So it is called here." },
    ...{ change: [{ kind: "term", before, after: { ...before, label } }], base: null, form: null },
  };
  const { text } = await post(house().url, { query: PROPOSE, variables: { input } }, cookieOf("Cleo"));
  return JSON.parse(text).data.made.proposal.id;
}

/** Marks the window, so that a reload would show. */
const mark = (page: Page) => page.evaluate(() => Object.assign(window, { isMarked: true }));
const isMarked = (page: Page) => page.evaluate(() => "isMarked" in window);

describe("[J11] pages of proposals follow what others do", () => {
  it("said, judged, changed and decided by others: all of it comes without a reload, and what is typed stays", async () => {
    const path = `/house/proposals/${await handIn("round saw")}`;
    const [maker, reviewer, second] = await Promise.all([
      as("Cleo", path),
      as("Rolf", path),
      as("Rosa", path),
    ]);
    const pages = [maker, reviewer, second];
    await Promise.all(pages.map((page) => page.getByText(/examined both ways, over revision/).waitFor()));
    await Promise.all(pages.map(mark));

    await second.getByText("Decline", { exact: true }).click();
    const why = second.getByRole("textbox", { name: "Why", exact: true });
    await why.fill("The old name is the one in print.");
    const answer = maker.getByRole("textbox", { name: "Say something" });
    await answer.fill("I meant to say");

    await reviewer.getByRole("textbox", { name: "Say something" }).fill("Which book has it?");
    await reviewer.getByRole("button", { name: "Say it" }).click();
    await says(maker, "Rolf said something below.");
    await maker.getByText("Which book has it?").waitFor();
    expect(await textOf(maker.getByText(/Rolf .*new/))).toMatch(/ · new$/);
    expect(await answer.inputValue()).toBe("I meant to say");
    expect(await maker.evaluate(() => document.activeElement?.tagName)).toBe("TEXTAREA");
    expect(await reviewer.getByText("said something below").count()).toBe(0);

    await maker.getByRole("textbox", { name: "Why the evidence should change" }).fill("A mill book has it.");
    await maker.getByRole("button", { name: "Keep the change" }).click();
    await says(reviewer, "Its maker changed it: this is the new version.");
    await reviewer.getByText("A mill book has it.").waitFor();
    expect(await why.inputValue()).toBe("The old name is the one in print.");

    await reviewer.getByText("Accept", { exact: true }).click();
    await reviewer.getByRole("button", { name: "Accept", exact: true }).click();
    await reviewer.getByText("Accepted.", { exact: true }).waitFor();
    await expect.poll(() => reviewer.evaluate(() => document.activeElement?.textContent)).toBe("Accepted.");
    await says(maker, "Rolf agreed. It is now accepted.");
    await maker.getByText(/Accepting it made revision 2/).waitFor();
    await second.getByText("It was decided while you were writing.", { exact: false }).waitFor();
    const left = second.getByRole("region", { name: "What you were writing" });
    expect(await left.getByRole("textbox").inputValue()).toBe("The old name is the one in print.");
    for (const size of [DESKTOP, PHONE]) {
      await second.setViewportSize(size.viewport);
      expect(await auditPage(second)).toEqual([]);
      expect(await sticksOut(second)).toEqual(NOTHING);
    }
    await left.getByRole("button", { name: "Say it" }).click();
    await left.waitFor({ state: "detached" });
    await says(maker, "Rosa said something below.");
    await maker.getByText("The old name is the one in print.").waitFor();
    expect(await Promise.all(pages.map(isMarked))).toEqual([true, true, true]);
  });

  it("the queue and the house say what came in and what is gone", async () => {
    const [queue, start] = await Promise.all([as("Rolf", "/house/proposals"), as("Rolf", "/house")]);
    await queue.getByText("Nothing waits for a reviewer here.", { exact: false }).waitFor();
    await Promise.all([queue, start].map(mark));
    const id = await handIn("disc saw");
    await says(queue, "New here: “To be called disc saw”.");
    await queue.getByRole("link", { name: "To be called disc saw" }).waitFor();
    await start.getByRole("link", { name: "1 proposal waits for a reviewer" }).waitFor();
    const maker = await as("Cleo", `/house/proposals/${id}`);
    await maker.getByRole("button", { name: "Take it back" }).click();
    await says(queue, "No longer here: “To be called disc saw”.");
    await start.getByText("Nothing waits", { exact: false }).waitFor();
    expect(await Promise.all([queue, start].map(isMarked))).toEqual([true, true]);
  });

  it("what was missed while the connection was lost comes when it is back, also where it is more than is given at once", async () => {
    const path = `/house/proposals/${await handIn("blade saw")}`;
    const maker = await as("Cleo", "/learn");
    let isCut = false;
    const sockets: WebSocketRoute[] = [];
    await maker.routeWebSocket(/graphql/, (socket) => {
      if (isCut) return void socket.close();
      socket.connectToServer();
      sockets.push(socket);
    });
    await maker.goto(new URL(path, house().url).href);
    await maker.getByText(/examined both ways, over revision/).waitFor();
    await expect.poll(() => sockets.length).toBe(1);
    isCut = true;
    await Promise.all(sockets.map((socket) => socket.close()));
    await says(maker, /^Connection lost/);
    const query = "mutation ($on: ID!, $text: String!) { comment(on: $on, text: $text) { __typename } }";
    const say = (text: string) =>
      post(house().url, { query, variables: { on: path.split("/").at(-1), text } }, cookieOf("Rolf"));
    for (let n = 1; n <= 230; n++) await say(`Thought ${n}`);
    await say("While you were away");
    expect(await maker.getByText("While you were away").count()).toBe(0);
    isCut = false;
    await says(maker, "Rolf said something below.");
    await maker.getByText("While you were away").waitFor();
    expect(await maker.getByText(/^Thought \d+$/).count()).toBe(230);
    expect(await maker.getByText(/^Connection lost/).count()).toBe(0);
  });

  it("a dispute follows too, and ends for whoever was still writing", async () => {
    const says = `mutation { disputeClaim(claim: "claim.A14", says: "The patent names another machine.") {
      ... on Dispute { id } ... on Refused { problems { message } } } }`;
    const { text } = await post(house().url, { query: says }, cookieOf("Cleo"));
    const path = `/house/disputes/${JSON.parse(text).data.disputeClaim.id}`;
    const [one, other] = await Promise.all([as("Rolf", path), as("Rosa", path)]);
    await other.getByText("It was corrected", { exact: true }).click();
    await other.getByRole("textbox", { name: "Why" }).fill("Half written");
    await one.getByText("The claim stands", { exact: true }).click();
    await one.getByRole("textbox", { name: "Why" }).fill("The patent is of another thing.");
    await one.getByRole("button", { name: "End the dispute" }).click();
    await one.getByText("The dispute is ended.", { exact: false }).waitFor();
    await other.getByRole("status").filter({ hasText: "Rolf ended it." }).waitFor();
    const left = other.getByRole("region", { name: "What you were writing" });
    expect(await left.getByRole("textbox").inputValue()).toBe("Half written");
  });
});
