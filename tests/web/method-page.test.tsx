import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";
import { seedChange } from "#tests/support/seed-examiner.ts";
import { EXAMPLES } from "#web/method/examples.ts";

let seed: Change;
beforeAll(async () => {
  seed = await seedChange();
});

const sectionOf = (title: string): HTMLElement =>
  screen.getByRole("heading", { level: 2, name: title }).closest("section") as HTMLElement;
const told = (section: HTMLElement) => section.querySelector("[aria-live='polite']")?.textContent;

describe("the page on how a finding is made", () => {
  it("[L1] answers every example by the engine, and leads to each from its top", async () => {
    await renderPage("/method", (await openApi([seed])).ask);
    await screen.findByRole("heading", { level: 1, name: /^How a finding is made/ });
    for (const { id, title } of EXAMPLES) {
      const section = sectionOf(title);
      await waitFor(() => expect(told(section)?.length, title).toBeGreaterThan(20));
      expect(screen.getByRole("link", { name: title }).getAttribute("href")).toBe(`#${id}`);
      expect(section.id).toBe(id);
    }
  });

  it("[L2] answers anew when one thing is changed", async () => {
    await renderPage("/method", (await openApi([seed])).ask);
    await screen.findByRole("heading", { level: 1 });
    const section = sectionOf("A later repair condemns nothing");
    await waitFor(() => expect(told(section)).toMatch(/^The back boards cannot be/));
    await act(async () =>
      fireEvent.click(within(section).getByRole("radio", { name: /^an older, dark-edged hole/ })),
    );
    await waitFor(() => expect(told(section)).toMatch(/^The evidence does not discriminate/));
    expect(within(section).getByRole("button", { name: /^wire nail .*: an exception holds/ })).toBeTruthy();
  });

  it("[L2] keeps what was shown until there is something new", async () => {
    const { ask } = await openApi([seed]);
    let letGo: (() => void) | undefined;
    const isHeld = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    await renderPage("/method", async (query, variables) => {
      if (JSON.stringify(variables).includes("1860/1870")) await isHeld;
      return ask(query, variables);
    });
    await screen.findByRole("heading", { level: 1 });
    const section = sectionOf("A dispute that stays open");
    await waitFor(() => expect(told(section)).toContain("1842 to 1845"));
    await act(async () => fireEvent.click(within(section).getByRole("radio", { name: /after both$/ })));
    expect(told(section)).toContain("1842 to 1845");
    await act(async () => letGo?.());
    await waitFor(() => expect(told(section)).toContain("1860 to 1870"));
  });

  it("[L3] walks a feature over its claims to its years, each with source and basis", async () => {
    await renderPage("/method", (await openApi([seed])).ask);
    const walk = await screen.findByRole("list", {
      name: "From dovetail sockets with rounded inner corners to rotary dovetail cutter to power-driven rotary cutter",
    });
    for (const term of ["rotary dovetail cutter", "power-driven rotary cutter"])
      expect(within(walk).getByRole("link", { name: term }).getAttribute("href")).toMatch(/^\/terms\/tool\./);
    for (const claim of ["claim.M103", "claim.M104", "claim.A55"])
      expect(walk.querySelector(`a[href='/claims/${claim}']`), claim).toBeTruthy();
    expect(walk.querySelectorAll("a[href^='/sources/']").length).toBeGreaterThan(1);
    expect(walk.textContent).toContain("common practice");
    expect(walk.textContent).toMatch(/so by this way: \d{4} or later$/);
    await act(async () => fireEvent.click(screen.getByRole("radio", { name: "a wire nail" })));
    expect((await screen.findByText(/^Assumed, not cited/)).closest("ol")?.textContent).toContain(
      "wire-nail machine",
    );
  });

  it("[L4] says what a store lacks, and stands all the same", async () => {
    await renderPage("/method", (await openApi([sawGraph])).ask);
    await screen.findByRole("heading", { level: 1 });
    for (const says of [/^This cannot be shown here/, /There is no term /])
      await waitFor(() => expect(screen.getAllByText(says).length).toBeGreaterThan(3));
    expect(screen.getByRole("heading", { level: 2, name: "What is assumed rather than cited" })).toBeTruthy();
    expect(screen.getByRole("heading", { level: 2, name: "Cautions" })).toBeTruthy();
  });
});
