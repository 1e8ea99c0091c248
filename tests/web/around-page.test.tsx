import { act, cleanup, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { aroundGraph } from "#tests/support/around-graph.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([aroundGraph])).ask;
});

const open = async (address: string) => {
  await renderPage(address, ask);
  await screen.findByRole("heading", { level: 1 });
};
const list = () => screen.findByRole("region", { name: /^Its neighbours/ });
const lines = async () => within(await list()).getAllByRole("button");
const press = async (button: HTMLElement) => act(async () => fireEvent.click(button));

describe("the page of what stands around a term", () => {
  it("[P60] says how many stand one step away, and how each is joined, what it is and its years", async () => {
    await open("/terms/tool.mill/around");
    expect(document.title).toBe("Around mill · Scribeline");
    expect(screen.getByText(/^18 terms stand one step away\. Needs: 1; needed for: 12;/)).toBeTruthy();
    const texts = (await lines()).map((line) => line.textContent);
    expect(texts[0]).toMatch(/^needs1 +water wheel tool ?introduced 1200$/);
    expect(texts).toContainEqual(
      expect.stringMatching(/^needed for\d+ +mark 7 feature ?introduced 1790, There; introduced 1820, Here$/),
    );
    expect(texts).toContainEqual(
      expect.stringMatching(/^a kind of it\d+ +small mill tool ?no years stated$/),
    );
    expect(texts).toContain("4 more needed for");
  });

  it("[P62] names what is left out, after those of its kind, and shows more when asked", async () => {
    await open("/terms/tool.mill/around");
    const all = await lines();
    const more = all.findIndex((line) => line.textContent === "4 more needed for");
    expect(all[more - 1]?.textContent).toMatch(/^needed for/);
    expect(all[more + 1]?.textContent).not.toMatch(/^needed for/);
    await press(all[more] as HTMLElement);
    const item = all[more]?.closest("li") as HTMLElement;
    const named = within(item)
      .getAllByRole("link")
      .map((link) => link.getAttribute("href"));
    expect(named.length).toBe(4);
    const shown = screen.getByRole("link", { name: "Show up to 24 of each" });
    expect(shown.getAttribute("href")).toBe("/terms/tool.mill/around?more=yes");
    await act(async () => fireEvent.click(shown));
    await waitFor(() => expect(screen.queryByText("4 more needed for")).toBeNull());
    expect(screen.getByRole("button", { name: /mark 11/ })).toBeTruthy();
  });

  it("[P6] [P60] unfolds who says so with the basis, and the ways on", async () => {
    await open("/terms/tool.mill/around");
    const line = (await lines()).find(({ textContent }) => textContent?.includes("mark 7 ")) as HTMLElement;
    await press(line);
    expect(line.getAttribute("aria-expanded")).toBe("true");
    const item = within(line.closest("li") as HTMLElement);
    expect(item.getByRole("link", { name: "Look around from it" }).getAttribute("href")).toBe(
      "/terms/feature.mark-07/around",
    );
    expect(item.getByRole("link", { name: "Its page" }).getAttribute("href")).toBe("/terms/feature.mark-07");
    expect(item.getAllByText("common practice").length).toBe(2);
    const tree = (await lines()).find(({ textContent }) =>
      textContent?.includes("small mill"),
    ) as HTMLElement;
    await press(tree);
    expect(within(tree.closest("li") as HTMLElement).getByText(/no claim stands behind it/)).toBeTruthy();
    expect(line.getAttribute("aria-expanded")).toBe("false");
  });

  it("[P60] goes through its list by the arrow keys", async () => {
    await open("/terms/tool.mill/around");
    const [first, second] = await lines();
    first?.focus();
    fireEvent.keyDown(first as HTMLElement, { key: "ArrowDown" });
    expect(document.activeElement).toBe(second);
    fireEvent.keyDown(second as HTMLElement, { key: "End" });
    expect(document.activeElement).toBe((await lines()).at(-1));
    fireEvent.keyDown(document.activeElement as HTMLElement, { key: "Home" });
    expect(document.activeElement).toBe(first);
  });

  it("[P60] walks two steps when asked, and says from what", async () => {
    await open("/terms/tool.mill/around");
    await act(async () => fireEvent.click(screen.getByRole("link", { name: "Walk two steps" })));
    const board = await screen.findByText("from mark 3:", { exact: false });
    expect(board.closest("button")?.textContent).toMatch(
      /^from mark 3: needed for\d+ +milled board material/,
    );
    expect(screen.getByText(/Nothing is looked for beyond regions and kinds of part/)).toBeTruthy();
  });

  it("[P60] goes back from two steps to one, and keeps how many are shown", async () => {
    await open("/terms/tool.mill/around?steps=2&more=yes");
    const back = screen.getByRole("link", { name: "One step only" });
    expect(back.getAttribute("href")).toBe("/terms/tool.mill/around?more=yes");
  });

  it("[P60] says by words that fit a place, a kind of part and a thing how each is joined", async () => {
    const said = async (address: string) => {
      await open(address);
      return (await lines()).map((line) => line.querySelector("span span span")?.textContent);
    };
    expect(await said("/terms/region.here/around")).toEqual(["lies in", "dated here", "dated here"]);
    cleanup();
    expect(await said("/terms/part.back/around")).toEqual([
      "looked for on it",
      "has it as a part",
      "described on it",
    ]);
  });

  it("[P60] is led to from the page of the term", async () => {
    await open("/terms/tool.mill");
    expect(screen.getByRole("link", { name: "What stands around it, drawn" }).getAttribute("href")).toBe(
      "/terms/tool.mill/around",
    );
  });

  it("[P51] is read as of a revision, and leads to what stood then", async () => {
    const two = await openApi([
      aroundGraph.filter(({ kind }) => kind === "term"),
      aroundGraph.filter(({ kind }) => kind !== "term"),
    ]);
    await renderPage("/terms/tool.mill/around?revision=1", two.ask);
    expect(
      await screen.findByText("2 terms stand one step away. A kind of: 1; a kind of it: 1."),
    ).toBeTruthy();
    expect(screen.getByRole("link", { name: "Walk two steps" }).getAttribute("href")).toBe(
      "/terms/tool.mill/around?steps=2&revision=1",
    );
  });

  it("[P5] says so where nothing stands beside a term", async () => {
    const lonely = await openApi([
      [{ kind: "term", after: { id: "tool.awl", kind: "tool", label: "awl" } }] as never,
    ]);
    await renderPage("/terms/tool.awl/around", lonely.ask);
    expect(await screen.findByText(/^Nothing stands beside it yet/)).toBeTruthy();
    expect(screen.queryByRole("region", { name: /^Its neighbours/ })).toBeNull();
  });

  it("[P5] says so where there is no such term", async () => {
    await open("/terms/tool.no-such/around");
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("There is no such term");
  });
});
