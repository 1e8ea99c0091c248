import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([sawGraph])).ask;
});

describe("the evidence page", () => {
  it("says how much there is of each kind", async () => {
    await renderPage("/evidence", ask);
    const features = (await screen.findByRole("link", { name: "features" })).closest("li");
    expect(features?.textContent).toMatch(/3$/);
    expect(screen.getByText(/^9 claims in all/)).toBeTruthy();
  });

  it("[P12] finds terms as one types, and keeps the words in the address", async () => {
    await renderPage("/evidence", ask);
    const field = await screen.findByRole("searchbox", { name: "Search the terms" });
    // What suspends within an act that is not awaited is never taken up again.
    await act(async () => void fireEvent.change(field, { target: { value: "arc" } }));
    expect((await screen.findByRole("link", { name: "round saw marks" })).getAttribute("href")).toBe(
      "/terms/feature.round-saw-marks",
    );
    expect(new URLSearchParams(location.search).get("words")).toBe("arc");
  });

  it("[P12] opens on the words of its address, within a kind", async () => {
    await renderPage("/evidence?words=saw&kind=TOOL", ask);
    const found = await screen.findByRole("region", { name: "Found" });
    expect(within(found).getByRole("link", { name: "circular saw" })).toBeTruthy();
    expect(within(found).queryByRole("link", { name: "round saw marks" })).toBeNull();
  });

  it("[P12] says what to try when nothing is found", async () => {
    await renderPage("/evidence?words=zzzz", ask);
    expect((await screen.findByText(/^Nothing is called “zzzz”/)).textContent).toMatch(/Try fewer letters/);
  });

  it("[P12] says that nothing goes by all the words before it gives what holds some of them", async () => {
    const { unmount } = await renderPage("/evidence?words=circular+table", ask);
    expect((await screen.findByText(/^Nothing goes by “circular table”/)).textContent).toMatch(
      /nearest.*: \d+ terms?$/,
    );
    expect(screen.getByRole("link", { name: "circular saw" })).toBeTruthy();
    unmount();
    await renderPage("/evidence?words=circ+saw", ask);
    expect((await screen.findByText(/ for “circ saw”$/)).textContent).toMatch(/^\d+ terms?/);
  });

  it("lists a kind as a tree, narrower under broader", async () => {
    await renderPage("/evidence?kind=REGION", ask);
    const england = (await screen.findByRole("link", { name: "England" })).closest("li") as HTMLElement;
    expect(within(england).getByRole("link", { name: "London" })).toBeTruthy();
    expect(screen.getByRole("heading", { level: 1, name: "regions" })).toBeTruthy();
  });

  it("lists the sources with how many claims rest on each", async () => {
    await renderPage("/evidence?kind=SOURCE", ask);
    const source = (await screen.findByRole("link", { name: /Saws and their marks/ })).closest("li");
    expect(source?.textContent).toMatch(/1 claim$/);
  });
});

describe("a search that is narrowed", () => {
  const found = async () =>
    within(await screen.findByRole("region", { name: "Found" }))
      .queryAllByRole("link")
      .map((link) => link.textContent);

  it("[P41] opens on the filters of its address, without words too", async () => {
    await renderPage("/evidence?region=region.london&from=1780&to=1800", ask);
    expect(await found()).toEqual(["circular saw"]);
    expect(screen.getByText("1 term, narrowed")).toBeTruthy();
    await waitFor(() =>
      expect((screen.getByRole("combobox", { name: "Claimed for region" }) as HTMLInputElement).value).toBe(
        "London",
      ),
    );
    expect((screen.getByRole("textbox", { name: "Dated from" }) as HTMLInputElement).value).toBe("1780");
  });

  it("[P41] keeps what it is narrowed to in the address, and takes it away at once", async () => {
    await renderPage("/evidence", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Narrow by part, region or years" }));
    await act(
      async () =>
        void fireEvent.change(screen.getByRole("textbox", { name: "Dated from" }), {
          target: { value: "1790" },
        }),
    );
    expect(await found()).toContain("circular saw");
    expect(new URLSearchParams(location.search).get("from")).toBe("1790");
    await act(
      async () => void fireEvent.click(screen.getByRole("button", { name: "Take these filters away" })),
    );
    await screen.findByText(/^9 claims in all/);
    expect(location.search).toBe("");
  });

  it("[P41] is narrowed to a part that is chosen by some letters of its name", async () => {
    await renderPage("/evidence?words=marks", ask);
    fireEvent.click(await screen.findByRole("button", { name: "Narrow by part, region or years" }));
    const box = screen.getByRole("combobox", { name: "Looked for on" });
    await act(async () => {
      box.focus();
      fireEvent.change(box, { target: { value: "bott" } });
    });
    const offered = await screen.findByRole("option", { name: /^drawer bottom/ });
    await act(async () => void fireEvent.click(offered));
    await waitFor(() => expect(new URLSearchParams(location.search).get("part")).toBe("part.drawer-bottom"));
    expect(await found()).toEqual(["round saw marks"]);
  });

  it("[P41] says of years in the wrong order and of half a year what is wrong", async () => {
    await renderPage("/evidence?from=1800&to=1700", ask);
    expect(await screen.findByText(/Earlier than the year before it/)).toBeTruthy();
    expect(await screen.findByText(/^Nothing, narrowed like this\. Try/)).toBeTruthy();
    const from = screen.getByRole("textbox", { name: "Dated from" });
    fireEvent.change(from, { target: { value: "18" } });
    fireEvent.blur(from);
    expect(await screen.findByText("Write a year, such as 1760.")).toBeTruthy();
  });
});
