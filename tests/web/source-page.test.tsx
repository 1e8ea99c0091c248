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

describe("the citation of a source", () => {
  it("[P14] is copied as a line with its address, and the page says so", async () => {
    const writeText = vi.spyOn(navigator.clipboard, "writeText").mockResolvedValue();
    await renderPage("/sources/source.saw-book", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Copy the citation" }));
    expect(await screen.findByText("Copied.")).toBeTruthy();
    expect(writeText).toHaveBeenCalledExactlyOnceWith(
      expect.stringMatching(/^Ann Example, Saws and their marks, .*1999, https:\/\/example\.org\/saws\.$/),
    );
  });

  it("[P14] stays to be selected where the browser does not let it be copied", async () => {
    vi.spyOn(navigator.clipboard, "writeText").mockRejectedValue(new Error("not allowed"));
    await renderPage("/sources/source.saw-book", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Copy the citation" }));
    expect(await screen.findByText(/select the line and copy it/)).toBeTruthy();
  });

  it("[P14] stands beside what a source of its kind is good for", async () => {
    await renderPage("/sources/source.saw-book", ask);
    expect((await screen.findByText("Kind")).closest("div")?.textContent).toMatch(
      /book.*Weigh it by who wrote it/,
    );
  });
});

describe("the page that looks through a list", () => {
  const LABEL = "The list, as BibTeX or CSL-JSON";
  const openPage = async () => {
    const page = await renderPage("/evidence/sources/import", ask);
    await screen.findByRole("textbox", { name: LABEL });
    return page;
  };
  const paste = async (text: string) => {
    await openPage();
    fireEvent.change(screen.getByRole("textbox", { name: LABEL }), { target: { value: text } });
  };
  const choose = async (parts: BlobPart[], name = "mine.bib") => {
    await openPage();
    const input = document.querySelector("input[type=file]") as HTMLInputElement;
    fireEvent.change(input, { target: { files: [new File(parts, name)] } });
  };
  const itemsShown = async () => {
    const heading = await screen.findByRole("heading", { name: "What would become of them" });
    return [...(heading.closest("section")?.querySelectorAll("ol > li") ?? [])].map(
      (item) => item.textContent,
    );
  };
  const PLANES = "@book{planes,\n title = {Planes},\n keywords = {tools}, year = 1990}\n";

  it("[P43] shows how each entry would be stored and cited, what it lacks, and why some would be refused", async () => {
    await paste(
      `${PLANES}@book{saws, title={Saws}, url={https://example.org/saws}}\n@book{x,\n title = {Broken}`,
    );
    expect(await screen.findByText("1 of 3 would be taken, 1 there already, 1 refused")).toBeTruthy();
    const [planes, saws, broken] = await itemsShown();
    expect(planes).toMatch(/^Planes, 1990entry 1, line 1, would be stored as source\.planes, as book/);
    expect(planes).toMatch(/Missing: author or editor, publisher or place/);
    expect(planes).toMatch(/Fields that would not be kept: keywords/);
    expect(saws).toMatch(/There already, as source\.saw-book \(same address\)\. Cite that one/);
    expect(broken).toMatch(/^BrokenRefused: line 5: The text ends inside this entry\. Close it with }/);
  });

  it("[P43] looks through CSL-JSON too", async () => {
    await paste(JSON.stringify([SAW_BOOK.csl, { id: "x", type: "song", title: "Sawing" }]));
    const [saws, song] = await itemsShown();
    expect(saws).toMatch(/There already, as source\.saw-book \(same id and title\)/);
    expect(song).toMatch(/^SawingRefused: line 1, type: Items of type song are not read here\. Choose/);
  });

  it("[P43] keeps what would be taken as a file of CSL-JSON, with what a person takes all the same", async () => {
    const saved = keepFiles();
    await paste(`${PLANES}@book{again, title={Planes}, year=1990}`);
    expect(await screen.findByText("1 of 2 would be taken, 1 there already, 0 refused")).toBeTruthy();
    fireEvent.click(screen.getByRole("checkbox", { name: "Another one, take it too" }));
    fireEvent.click(screen.getByRole("button", { name: "Save the 2 that would be taken as CSL-JSON" }));
    const kept = JSON.parse((await saved[0]?.text()) ?? "");
    expect(kept.map(({ id }: { id: string }) => id)).toEqual(["source.planes", "source.again"]);
    expect(kept[0]).toEqual({
      ...{ id: "source.planes", type: "book", title: "Planes" },
      issued: { "date-parts": [[1990]] },
    });
  });

  it("[P43] reads a file that is chosen, and gives way to what is pasted after it", async () => {
    await choose([PLANES]);
    expect(await screen.findByText("Looking through mine.bib")).toBeTruthy();
    expect(await itemsShown()).toHaveLength(1);
    fireEvent.change(screen.getByRole("textbox"), { target: { value: PLANES + PLANES } });
    await waitFor(async () => expect(await itemsShown()).toHaveLength(2));
    expect(screen.queryByText("Looking through mine.bib")).toBeNull();
  });

  it.each<[string, BlobPart[], RegExp]>([
    ["a picture", [new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe])], /mine\.bib is no text in UTF-8/],
    ["a packed file", [new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])], /mine\.bib: This is not a text/],
    ["a text in Latin-1", [new Uint8Array([0x40, 0x62, 0xe9, 0x20])], /save it again as UTF-8/],
    ["ten megabytes", [new Uint8Array(10_000_000).fill(0x40)], /mine\.bib is larger than 5 MB; split it/],
    ["nothing", [" "], /mine\.bib: There is no entry/],
  ])("[P43] says of a file that is no list what to do: %s", async (_, parts, why) => {
    await choose(parts);
    expect(await screen.findByText(why)).toBeTruthy();
    expect(screen.queryByRole("heading", { name: "What would become of them" })).toBeNull();
  });

  it("[P43] shows the first fifty of a long list, and more when asked", async () => {
    await paste(Array.from({ length: 60 }, (_, index) => `@book{k${index}, title={T${index}}}`).join("\n"));
    expect(await itemsShown()).toHaveLength(50);
    fireEvent.click(screen.getByRole("button", { name: "Show more" }));
    expect(await itemsShown()).toHaveLength(60);
  });

  it("[P43] says of another text what it should be, beside the field", async () => {
    await paste("Planes, 1990");
    expect(await screen.findByText(/^There is no entry in this; a list of BibTeX has/)).toBeTruthy();
    expect(screen.getByRole("textbox").getAttribute("aria-invalid")).toBe("true");
    expect(screen.queryByRole("heading", { name: "What would become of them" })).toBeNull();
  });
});
