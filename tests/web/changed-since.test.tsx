import { fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { aCommit, adding, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";
import { beginVisit, lookedOn, markLooked } from "#web/answers/last-looked.ts";

const CREATE = `mutation ($piece: PieceInput!) {
  createExamination(piece: $piece) { ... on ExaminationChanged { examination { id version } } }
}`;
const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;
const EARLIER = replacing(saw, { ...saw, when: "1740" } as Claim);
const OTHER = adding(
  aClaim({ id: "claim.other", relation: "attested", subject: "tool.circular-saw", when: "1800" }),
);

let api: Awaited<ReturnType<typeof openApi>>;
let page: string;
let minutes: number;
beforeEach(async () => {
  localStorage.clear();
  beginVisit();
  minutes = 0;
  api = await openApi([sawGraph]);
  const { data } = await api.ask(CREATE, { piece: sawnChest });
  page = `/pieces/${data.createExamination.examination.id}`;
});
afterEach(() => localStorage.clear());

/** After the record, whose clock stands still. */
const commit = async (change: Parameters<typeof aCommit>[0]) =>
  void answered(await api.store.commit(aCommit(change, { at: `2026-03-0${++minutes}T00:00:00.000Z` })));

describe("what changed under a piece", () => {
  it("[K11] is told on its page: what is said otherwise, as it is and as it was, and the claims", async () => {
    await commit(EARLIER);
    await renderPage(page, api.ask);
    const told = await screen.findByRole("region", { name: "Changed since" });
    expect(told.textContent).toContain("One claim that this is read from changed since revision 1.");
    expect(within(told).getAllByRole("listitem")[0]?.textContent).toBe(
      "Round saw marks on the drawer bottom: now agrees, before 15 years too late",
    );
    fireEvent.click(within(told).getByRole("button", { name: "The claim" }));
    expect(
      within(told)
        .getByRole("link", { name: /circular saw/i })
        .getAttribute("href"),
    ).toBe("/claims/claim.saw");
  });

  it("[K11] is told as little where nothing is said otherwise, and not at all where nothing changed", async () => {
    await commit(OTHER);
    const { unmount } = await renderPage(page, api.ask);
    const told = await screen.findByRole("region", { name: "Changed since" });
    expect(told.textContent).toContain("Nothing it says is otherwise.");
    unmount();
    beginVisit();
    await renderPage(page, api.ask);
    await screen.findByRole("region", { name: "Conclusion" });
    expect(screen.queryByRole("region", { name: "Changed since" })).toBeNull();
  });

  it("[K11] stays told as long as the visit lasts, and is measured from it at the next", async () => {
    await commit(EARLIER);
    const first = await renderPage(page, api.ask);
    await screen.findByRole("region", { name: "Changed since" });
    first.unmount();
    const second = await renderPage(page, api.ask);
    await screen.findByRole("region", { name: "Changed since" });
    second.unmount();
    beginVisit();
    await commit(OTHER);
    await renderPage(page, api.ask);
    const told = await screen.findByRole("region", { name: "Changed since" });
    expect(told.textContent).toContain("One claim that this is read from changed since revision 2.");
  });

  it("[K11] is told in the list of pieces in one line where something is said otherwise", async () => {
    await commit(EARLIER);
    await renderPage("/", api.ask);
    const row = (await screen.findByRole("link", { name: sawnChest.title })).closest("li") as HTMLElement;
    expect(
      await within(row).findByText(/^Changed since revision 1: Round saw marks on the drawer bottom/),
    ).toBeTruthy();
    expect(row.textContent).toContain("now agrees, before 15 years too late.");
  });
});

describe("what was looked at in this browser", () => {
  it("[K11] is known at the next visit, not in the one that looks, and is no more than a stated number", () => {
    markLooked("examination.a", 3);
    expect(lookedOn("examination.a")).toBeUndefined();
    beginVisit();
    expect(lookedOn("examination.a")).toBe(3);
    for (let n = 0; n < 600; n++) markLooked(`examination.n${n}`, n);
    beginVisit();
    expect(lookedOn("examination.n599")).toBe(599);
    expect(lookedOn("examination.a")).toBeUndefined();
    expect(JSON.parse(localStorage.getItem("scribeline.looked-at") ?? "").length).toBe(500);
  });

  it("[K11] is nothing where the browser keeps nonsense", () => {
    for (const text of ["{", "3", '[["a"],["b","c"],7]']) {
      localStorage.setItem("scribeline.looked-at", text);
      beginVisit();
      expect(["a", "b"].map(lookedOn)).toEqual([undefined, undefined]);
    }
  });
});
