import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { replacing } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { openChronicle } from "#tests/support/open-chronicle.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";

const claim = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;
const changes = [sawGraph, replacing(claim, { ...claim, when: "1795" } as Claim)];

const closing: (() => void)[] = [];
afterEach(() => {
  vi.unstubAllGlobals();
  for (const close of closing.splice(0)) close();
});

/** Opens a page whose questions below `/chronicle/` are answered by the chronicle over the same changes. */
async function open(path: string) {
  const chronicle = await openChronicle(changes);
  closing.push(chronicle.close);
  const answerAsked = async (address: string, { body }: { body: string }) => {
    const answer = await chronicle.ask(address.replace("/chronicle/", ""), JSON.parse(body));
    return new Response(JSON.stringify(answer), { status: "refused" in answer ? 400 : 200 });
  };
  vi.stubGlobal("fetch", vi.fn(answerAsked));
  await renderPage(path, (await openApi(changes)).ask);
  return chronicle;
}
async function click(name: string | RegExp) {
  const button = await screen.findByRole("button", { name });
  await act(async () => fireEvent.click(button));
}

describe("[I9] the page of revisions", () => {
  it("lists who made them, when and why, with their hashes, also under its former address", async () => {
    const { store } = await open("/revisions");
    await screen.findByRole("heading", { level: 1, name: "Revisions of the evidence" });
    const newest = (await screen.findByText(/change 2/)).closest("li") as HTMLElement;
    expect(newest.textContent).toContain((await store.newestRevision())?.hash.slice(0, 10));
    expect(newest.textContent).toMatch(/1 Jan 2026 · by test · 1 edit ·/);
    expect(window.location.pathname).toBe("/house/history");
  });

  it("tells the difference of two in groups, each thing with a link to its reading of then", async () => {
    await open("/house/history?from=1&to=2");
    const group = await screen.findByRole("region", { name: "1 claim changed" });
    expect(group.textContent).toMatch(/datewas1790became1795/);
    expect(within(group).getByRole("link").getAttribute("href")).toBe("/claims/claim.saw?revision=2");
  });

  it("asks for two that there are, and compares them", async () => {
    await open("/house/history");
    const field = await screen.findByRole("textbox", { name: "From revision" });
    await act(async () => fireEvent.change(field, { target: { value: "7" } }));
    expect(screen.getByText("Two numbers from 0 to 2 are wanted.")).toBeTruthy();
    await act(async () => fireEvent.change(field, { target: { value: "2" } }));
    await click("Compare");
    expect(await screen.findByText("They say the same.")).toBeTruthy();
  });
});

describe("[I4] [I1] the page of the proof", () => {
  it("signs a checkpoint and says that it holds", async () => {
    await open("/house/proof");
    await click("Sign a checkpoint now");
    const item = (await screen.findByRole("heading", { name: /^Revision 2, signed/ })).closest("li");
    expect(item?.textContent).toMatch(
      /Holds\. Revision 2 and write 2 of the ledger are here as they were signed/,
    );
  });
});
