import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeAll, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";

const MANY = 300;
const numbered = (kind: string, nth: number, broader?: string) =>
  aTerm(`${kind}.n${String(nth).padStart(3, "0")}`, {
    label: `${kind} number ${String(nth).padStart(3, "0")}`,
    ...(broader === undefined ? {} : { broader: id<"term">(broader) }),
  });

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  const each = Array.from({ length: MANY }, (_, nth) => nth);
  const regions = each.map((nth) => numbered("region", nth, "region.wide"));
  const parts = each.map((nth) => numbered("part", nth));
  ask = (
    await openApi([sawGraph, adding(aTerm("region.wide", { label: "the wide land" }), ...regions, ...parts)])
  ).ask;
});
const press = (button: HTMLElement) =>
  act(async () => {
    fireEvent.click(button);
  });

describe("pages where there are more terms than one answer of the server has", () => {
  it("[R2] a region shows the first of those within it, and all when asked", async () => {
    await renderPage("/regions/region.wide", ask);
    const heading = await screen.findByRole("heading", { level: 2, name: /^Regions within it/ });
    expect(heading.textContent).toBe(`Regions within it · ${MANY}`);
    const section = within(heading.closest("section") as HTMLElement);
    expect(section.getAllByRole("link")).toHaveLength(60);
    await press(section.getByRole("button", { name: `Show all ${MANY}` }));
    expect(section.getAllByRole("link")).toHaveLength(MANY);
  });

  it("[J40] the steps down the regions lead to each of them", async () => {
    await renderPage("/house/propose?relation=introduced&region=region.wide", ask);
    const steps = await screen.findByRole("group", { name: "Steps down the regions" });
    await press(await within(steps).findByRole("button", { name: `Show all ${MANY}` }));
    await press(within(steps).getByRole("button", { name: "region number 299" }));
    await waitFor(() => expect(steps.querySelector("strong")?.textContent).toBe("region number 299"));
    expect(within(steps).getByRole("button", { name: "the wide land" })).toBeTruthy();
  });

  it("every kind of part is there to be chosen", async () => {
    await renderPage("/evidence/parts?form=form.chest-of-drawers", ask);
    const link = await screen.findByText("part number 299");
    expect(link.getAttribute("href")).toBe("/evidence/parts?form=form.chest-of-drawers&part=part.n299");
    expect(screen.getByText("part number 000")).toBeTruthy();
  });
});
