import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { rivalSawClaims } from "#tests/support/rival-saw-claims.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph, rivalSawClaims])).ask;
});

afterEach(() => {
  vi.useRealTimers();
});

describe("the pages of disagreements", () => {
  it("[Q10] are reached from the evidence; each kind says how much was found", async () => {
    await renderPage("/evidence", ask);
    fireEvent.click(await screen.findByRole("link", { name: "Where they disagree" }));
    await screen.findByRole("heading", { level: 1, name: "Where the evidence disagrees" });
    const countOf = (name: string) => screen.getByRole("link", { name }).closest("li")?.textContent;
    expect(countOf("Two dates for one thing")).toContain("1 found");
    expect(countOf("Spread in a circle")).toContain("looked for, none found");
    expect(screen.getByText(/^\d+ accepted claims are held against each other/)).toBeTruthy();
  });

  it("[Q10] show each finding with its claims drawn side by side, each with its basis", async () => {
    await renderPage("/evidence/disagreements/rivals", ask);
    await screen.findByRole("heading", { level: 1, name: "Two dates for one thing" });
    expect(screen.getByText("What to do.")).toBeTruthy();
    const heading = screen.getByRole("heading", { level: 2, name: /^Circular saw: three claims/ });
    const finding = heading.closest("section") as HTMLElement;
    const claims = [...finding.querySelectorAll("ul > li")].filter((item) => item.querySelector("svg"));
    expect(claims).toHaveLength(3);
    expect(claims.map((item) => item.querySelectorAll("svg rect, svg path").length > 0)).not.toContain(false);
    expect(within(finding).getAllByText("published")).toHaveLength(2);
    expect(within(finding).getByText("from memory, unconfirmed")).toBeTruthy();
    expect(within(finding).getByRole("link", { name: "Everything about circular saw" })).toBeTruthy();
  });

  it("[Q10] name the one source of a place", async () => {
    await renderPage("/evidence/disagreements/one-source", ask);
    const heading = await screen.findByRole("heading", {
      level: 2,
      name: /^England: four claims of its own/,
    });
    const source = within(heading.closest("section") as HTMLElement).getAllByRole("link", {
      name: /Saws and their marks/,
    })[0];
    expect(source?.getAttribute("href")).toBe("/sources/source.saw-book");
  });

  it("[Q10] say where nothing was found", async () => {
    await renderPage("/evidence/disagreements/spread-in-a-circle", ask);
    await screen.findByText(
      /^Looked for over the [1-9]\d* accepted claims .* nothing of the kind was found\.$/,
    );
  });

  it("[P5] say where there is no such kind", async () => {
    await renderPage("/evidence/disagreements/astrology", ask);
    await screen.findByRole("heading", { level: 1, name: "There is no such kind of disagreement" });
  });

  it.each([
    ["/evidence/disagreements", "Where the evidence disagrees", /^\d+ accepted claims/],
    ["/evidence/disagreements/rivals", "Two dates for one thing", /^1 found\.$/],
  ])("[Q11] %s says how far it is made while it is, and goes on by itself", async (path, title, found) => {
    vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
    let isMade = false;
    const unmade = { disagreementsMade: 40, disagreementRules: null, disagreements: null };
    await renderPage(path, async (query, variables) => {
      const answer = await ask(query, variables);
      return isMade || !query.includes("disagreementsMade")
        ? answer
        : { ...answer, data: { ...answer.data, ...unmade } };
    });
    const made = await screen.findByRole("progressbar", { name: "Looked for so far" });
    expect(made.getAttribute("value")).toBe("40");
    expect(screen.getByText("40 %")).toBeTruthy();
    isMade = true;
    await act(() => vi.advanceTimersByTimeAsync(4_000));
    await screen.findByRole("heading", { level: 1, name: title });
    await screen.findByText(found);
    expect(screen.queryByRole("progressbar")).toBeNull();
  });
});
