import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { adding } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";

const MAKE = `mutation ($input: ProposalInput!) { made: makeProposal(input: $input, open: true) {
  ... on ProposalChanged { proposal { id } }
} }`;
const attested = aClaim({
  ...{ id: "claim.early", relation: "attested", subject: "tool.circular-saw" },
  ...{ region: "region.england", when: "1650" },
});

let api: Awaited<ReturnType<typeof openApi>>;
let page: string;
beforeEach(async () => {
  api = await openApi([sawGraph]);
  const input = { kind: "CLAIM", title: "Earlier", why: "A bill has it.", change: adding(attested) };
  const { data } = await api.ask(MAKE, { input });
  page = `/house/proposals/${data.made.proposal.id}`;
});
afterEach(() => vi.useRealTimers());

/** Opens the page; the impact does not come before `release`, and the count is what `soFar` says. */
async function openWaiting() {
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
  let [asked, soFar] = [0, null as { looked: number; of: number; moved: number } | null];
  const waits: (() => void)[] = [];
  await renderPage(page, async (query, variables) => {
    if (query.includes("query ImpactOfProposal")) {
      asked++;
      await new Promise<void>((resolve) => waits.push(resolve));
    }
    const answer = await api.ask(query, variables);
    if (!query.includes("query ImpactSoFar")) return answer;
    return { ...answer, data: { proposal: { ...answer.data.proposal, impactSoFar: soFar } } };
  });
  const region = await screen.findByRole("region", { name: "What accepting it would do" });
  const count = async (next: typeof soFar) => {
    soFar = next;
    await act(() => vi.advanceTimersByTimeAsync(500));
  };
  return { region, count, asked: () => asked, release: () => waits.splice(0).forEach((go) => void go()) };
}

describe("what accepting a proposal would do", () => {
  it("[J8] shows what is known of it while the rest is worked out, and then all of it as one", async () => {
    const goes: (() => void)[] = [];
    const asked: unknown[] = [];
    const parts = [
      { looked: 300, reached: 9, left: 410, movedCount: 4 },
      { looked: 410, left: 0, movedCount: 3, created: [], settled: [] },
    ];
    await renderPage(page, async (query, variables) => {
      if (!query.includes("query ImpactOfProposal")) return api.ask(query, variables);
      asked.push([variables?.["after"], variables?.["pieces"]]);
      if (asked.length > 1) await new Promise<void>((resolve) => goes.push(resolve));
      const answer = await api.ask(query, { ...variables, after: null });
      const { proposal } = answer.data;
      const impact = { ...proposal.impact, moved: [], ...parts[asked.length - 1] };
      return { ...answer, data: { proposal: { ...proposal, impact } } };
    });
    const region = await screen.findByRole("region", { name: "What accepting it would do" });
    await within(region).findByText(
      "Something would be said otherwise of 4 of the 300 stored pieces looked at so far.",
    );
    within(region).getByText(/^300 of 710 pieces looked at; something would be said otherwise of 4 of them/);
    within(region).getByText(/on record in England 140 years before/);
    expect(within(region).queryByText(/two reviewers have to agree/)).toBeNull();
    await waitFor(() => expect(goes).toHaveLength(1));
    goes[0]?.();
    await within(region).findByText("Something would be said otherwise of 7 stored pieces.");
    within(region).getByText(/^710 stored pieces examined both ways/);
    within(region).getByText(/two reviewers have to agree/);
    within(region).getByText(/on record in England 140 years before/);
    expect(within(region).queryByRole("progressbar")).toBeNull();
    expect(asked).toEqual([
      [null, 5],
      [9, 5],
    ]);
  });

  it("[J8] says how many pieces were looked at, of how many, and what was found, while it is worked out", async () => {
    const { region, count, release } = await openWaiting();
    const bar = within(region).getByRole("progressbar", { name: "Stored pieces looked at" });
    expect(bar.getAttribute("value")).toBeNull();
    await count({ looked: 214, of: 710, moved: 33 });
    const says = "214 of 710 pieces looked at; something would be said otherwise of 33 of them";
    await within(region).findByText(says);
    expect([bar.getAttribute("value"), bar.getAttribute("max")]).toEqual(["214", "710"]);
    expect(bar.getAttribute("aria-valuetext")).toBe(says);
    release();
    await within(region).findByText(/on record in England 140 years before/);
    expect(within(region).queryByRole("progressbar")).toBeNull();
  });

  it("[J8] can be stopped, says then with how many looked at, and is worked out anew when asked", async () => {
    const { region, count, release, asked } = await openWaiting();
    await count({ looked: 214, of: 710, moved: 33 });
    await within(region).findByText(/^214 of 710 pieces looked at;/);
    fireEvent.click(within(region).getByRole("button", { name: "Stop" }));
    await within(region).findByText(
      /^Stopped with 214 of 710 pieces looked at; .* of 33 of them\. What it would do to the rest/,
    );
    release();
    await act(() => vi.advanceTimersByTimeAsync(500));
    expect(within(region).queryByText(/140 years before/)).toBeNull();
    fireEvent.click(within(region).getByRole("button", { name: "Work it out" }));
    await waitFor(() => expect(asked()).toBe(2));
    release();
    await within(region).findByText(/on record in England 140 years before/);
  });
});
