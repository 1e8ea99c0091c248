import { fireEvent, screen, within } from "@testing-library/react";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { rivalSawClaims } from "#tests/support/rival-saw-claims.ts";
import { SAW_BOOK, sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph, rivalSawClaims])).ask;
});

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
    const saved: Blob[] = [];
    vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
      saved.push(blob as Blob);
      return "blob:saved";
    });
    await renderPage("/sources/source.saw-book", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Save as CSL-JSON" }));
    expect(JSON.parse((await saved[0]?.text()) ?? "")).toEqual([SAW_BOOK.csl]);
  });
});
