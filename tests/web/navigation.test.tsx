import { act, fireEvent, screen, waitFor } from "@testing-library/react";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeEach(async () => {
  ask = (await openApi([sawGraph])).ask;
});

describe("going from page to page", () => {
  it("[P4] leaves the focus alone on the first page of a visit", async () => {
    await renderPage("/method", ask);
    await screen.findByRole("heading", { level: 1, name: /^How a finding is made/ });
    expect(document.activeElement).toBe(document.body);
  });

  it("[P4] moves the focus to the heading of the next page, and to its top", async () => {
    const scroll = vi.spyOn(window, "scrollTo").mockImplementation(() => {});
    await renderPage("/method", ask);
    fireEvent.click(await screen.findByRole("link", { name: "Evidence" }));
    const heading = await screen.findByRole("heading", { level: 1, name: "Evidence" });
    await waitFor(() => expect(document.activeElement).toBe(heading));
    expect(scroll).toHaveBeenCalledWith(0, 0);
    expect(document.title).toBe("Evidence · Scribeline");
  });

  it("[P4] keeps the page one is on until the next one is ready", async () => {
    let answer: (() => void) | undefined;
    const isHeld = new Promise<void>((resolve) => {
      answer = resolve;
    });
    await renderPage("/method", async (query, variables) => {
      if (query.includes("TermPage")) await isHeld;
      return ask(query, variables);
    });
    await screen.findByRole("heading", { level: 1, name: /^How a finding is made/ });
    await act(async () => window.history.pushState(null, "", "/terms/tool.circular-saw"));
    expect(screen.getByText("Reading the next page …").getAttribute("role")).toBe("status");
    expect(screen.getByRole("heading", { level: 1, name: /^How a finding is made/ })).toBeTruthy();
    await act(async () => answer?.());
    const heading = await screen.findByRole("heading", { level: 1, name: "circular saw" });
    await waitFor(() => expect(document.activeElement).toBe(heading));
    expect(screen.queryByText("Reading the next page …")).toBeNull();
  });

  it("[P4] goes back to where a page was left", async () => {
    const scroll = vi.spyOn(window, "scrollTo").mockImplementation(() => {});
    await renderPage("/method", ask);
    await screen.findByRole("heading", { level: 1, name: /^How a finding is made/ });
    vi.spyOn(window, "scrollY", "get").mockReturnValue(740);
    await act(async () => fireEvent.click(screen.getByRole("link", { name: "Evidence" })));
    await screen.findByRole("heading", { level: 1, name: "Evidence" });
    expect(scroll).toHaveBeenLastCalledWith(0, 0);
    await act(async () => {
      // As the browser goes back: the address is changed without a word, then told.
      History.prototype.replaceState.call(window.history, null, "", "/method");
      dispatchEvent(new PopStateEvent("popstate"));
    });
    await screen.findByRole("heading", { level: 1, name: /^How a finding is made/ });
    expect(scroll).toHaveBeenLastCalledWith(0, 740);
  });

  it("marks the place one is at", async () => {
    await renderPage("/terms/tool.circular-saw", ask);
    await screen.findByRole("heading", { level: 1, name: "circular saw" });
    expect(screen.getByRole("link", { name: "Evidence" }).getAttribute("aria-current")).toBe("page");
    expect(screen.getByRole("link", { name: "Pieces" }).getAttribute("aria-current")).toBeNull();
  });

  it("names the revision that answers", async () => {
    await renderPage("/method", ask);
    expect(
      (await screen.findByRole("link", { name: /^knowledge as of revision 1 / })).getAttribute("href"),
    ).toBe("/house/history");
  });

  it("[P5] says of an address that nothing stands there", async () => {
    await renderPage("/nowhere", ask);
    await screen.findByRole("heading", { level: 1, name: "There is no such page" });
  });

  it("[P5] keeps a failure to its page, and tries again when asked", async () => {
    vi.spyOn(console, "error").mockImplementation(() => {});
    const reload = vi.spyOn(window.location, "reload").mockImplementation(() => {});
    await renderPage("/terms/tool.circular-saw", () => Promise.reject(new TypeError("Failed to fetch")));
    await screen.findByRole("heading", { level: 1, name: "The server cannot be reached" });
    expect(screen.getByRole("link", { name: "Evidence" })).toBeTruthy();
    expect(reload).not.toHaveBeenCalled();
    fireEvent.click(screen.getByRole("button", { name: "Try again" }));
    expect(reload).toHaveBeenCalledOnce();
  });

  it("[P5] says what the server says when it refuses a page", async () => {
    vi.spyOn(console, "error").mockImplementation(() => {});
    await renderPage("/terms/tool.circular-saw", (query, variables) =>
      ask(query.replace("otherLabels", "noSuchField"), variables),
    );
    await screen.findByRole("heading", { level: 1, name: "The answer could not be given" });
    expect(screen.getByText(/^The server says: .*noSuchField/)).toBeTruthy();
  });
});
