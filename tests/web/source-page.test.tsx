import { fireEvent, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { rivalSawClaims } from "#tests/support/rival-saw-claims.ts";
import { SAW_BOOK, sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph, rivalSawClaims])).ask;
});

afterEach(() => vi.restoreAllMocks());

/** What is handed over as files, in order. */
function keepFiles(): Blob[] {
  const saved: Blob[] = [];
  vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
    saved.push(blob as Blob);
    return "blob:saved";
  });
  // A click on the link would lead the page of the test away.
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(() => {});
  return saved;
}

describe("the page of a source", () => {
  it("[P14] says how far the source was read", async () => {
    await renderPage("/sources/source.saw-book", ask);
    await screen.findByRole("heading", { level: 1, name: "Saws and their marks" });
    expect(screen.getByText("read in the passages cited")).toBeTruthy();
    expect(screen.getByRole("link", { name: "https://example.org/saws" })).toBeTruthy();
  });

  it("lists the claims that cite it, each with the place in it", async () => {
    await renderPage("/sources/source.saw-book", ask);
    const heading = await screen.findByRole("heading", { level: 2, name: /^Claims that cite it/ });
    const cited = within(heading.closest("section") as HTMLElement)
      .getAllByRole("listitem")
      .map((item) => item.textContent);
    expect(cited.length).toBe(2);
    expect(cited.join()).toMatch(/p\. 12/);
    expect(cited.join()).toMatch(/p\. 40/);
  });

  it("[P14] is kept as a file of CSL-JSON", async () => {
    const saved = keepFiles();
    await renderPage("/sources/source.saw-book", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Save as CSL-JSON" }));
    expect(JSON.parse((await saved[0]?.text()) ?? "")).toEqual([SAW_BOOK.csl]);
  });
});

describe("sources as files", () => {
  it("[P42] one is kept as BibTeX", async () => {
    const saved = keepFiles();
    await renderPage("/sources/source.saw-book", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Save as BibTeX" }));
    expect(await saved[0]?.text()).toMatch(/^@book\{saw-book,\n {2}title = \{\{Saws and their marks\}\},/);
  });

  it("[P42] all are kept in one file", async () => {
    const saved = keepFiles();
    await renderPage("/evidence?kind=SOURCE", ask);
    const { data } = await ask("{ sources(first: 200) { edges { node { id } } } }");
    const ids = data.sources.edges.map((edge: { node: { id: string } }) => edge.node.id);
    fireEvent.click(await screen.findByRole("button", { name: "Save all as CSL-JSON" }));
    await waitFor(() => expect(saved).toHaveLength(1));
    const items = JSON.parse((await saved[0]?.text()) ?? "");
    expect(items.map((item: { id: string }) => item.id)).toEqual(ids);
    fireEvent.click(await screen.findByRole("button", { name: "Save all as BibTeX" }));
    await waitFor(() => expect(saved).toHaveLength(2));
    expect((await saved[1]?.text())?.match(/^@/gm)).toHaveLength(ids.length);
  });

  it("[P42] says when they cannot be read, and keeps nothing", async () => {
    const saved = keepFiles();
    let isDown = false;
    await renderPage("/evidence?kind=SOURCE", (...asked) =>
      isDown ? Promise.reject(new TypeError("Failed to fetch")) : ask(...asked),
    );
    const button = await screen.findByRole("button", { name: "Save all as BibTeX" });
    isDown = true;
    fireEvent.click(button);
    expect((await screen.findByRole("alert")).textContent).toMatch(/got no answer.*then try again/);
    expect(saved).toEqual([]);
  });
});

describe("the page that looks through a list", () => {
  const paste = async (text: string) => {
    await renderPage("/evidence/sources/import", ask);
    fireEvent.change(await screen.findByRole("textbox", { name: "The list, as CSL-JSON" }), {
      target: { value: text },
    });
  };

  it("[P43] shows how each item would be cited, and why some would be refused", async () => {
    const taken = { id: "planes", type: "book", title: "Planes", issued: { "date-parts": [[1990]] } };
    await paste(JSON.stringify([taken, SAW_BOOK.csl, { id: "x", type: "song", title: "Sawing" }]));
    expect(await screen.findByText("1 of 3 would be taken, 2 refused")).toBeTruthy();
    const preview = screen.getByRole("heading", { name: "What would become of them" }).closest("section");
    const [planes, saws, song] = [...(preview?.querySelectorAll("ol > li") ?? [])];
    expect(planes?.textContent).toBe("Planes, 1990would be taken, as book");
    expect(saws?.textContent).toMatch(/Refused: It is there already, as source\.saw-book/);
    expect(song?.textContent).toMatch(/Refused: Its type song is not read here/);
  });

  it("[P43] says of another text what it should be, beside the field", async () => {
    await paste("@book{planes, title = {Planes}}");
    expect(await screen.findByText(/^This is not JSON; export the list/)).toBeTruthy();
    expect(screen.getByRole("textbox").getAttribute("aria-invalid")).toBe("true");
    expect(screen.queryByRole("heading", { name: "What would become of them" })).toBeNull();
  });
});
