import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { regionGraph } from "#tests/support/region-graph.ts";
import { renderPage } from "#tests/support/render-page.tsx";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeAll(async () => {
  ask = (await openApi([regionGraph])).ask;
});

const sectionNamed = async (name: RegExp) =>
  (await screen.findByRole("heading", { level: 2, name })).closest("section") as HTMLElement;

afterEach(() => {
  vi.useRealTimers();
});

describe("the pages of regions", () => {
  it.each([
    ["/regions", "Regions", "Regions", "Massachusetts"],
    ["/regions/region.boston", "Region", "Boston", "Massachusetts"],
    ["/regions/compare?of=region.boston", "Regions side by side", "Regions side by side", "Boston"],
  ])(
    "[R11] %s says how far the claims are counted while they are, and goes on by itself",
    async (...page) => {
      const [path, before, after, link] = page;
      vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
      let isMade = false;
      await renderPage(path, async (query, variables) => {
        const answer = await ask(query, variables);
        if (isMade || !query.includes("regionsMade")) return answer;
        const given = Object.keys(answer.data).map((field) => [field, field === "regionsMade" ? 30 : null]);
        return { ...answer, data: Object.fromEntries(given) };
      });
      const made = await screen.findByRole("progressbar", { name: "Counted so far" });
      expect(made.getAttribute("value")).toBe("30");
      expect(screen.getByText("30 %")).toBeTruthy();
      expect(screen.getByText(/still being counted/).closest("[role=status]")).toBeTruthy();
      expect(screen.getByRole("heading", { level: 1, name: before })).toBeTruthy();
      isMade = true;
      await act(() => vi.advanceTimersByTimeAsync(4_000));
      await screen.findByRole("heading", { level: 1, name: after });
      await screen.findByRole("link", { name: link });
      expect(screen.queryByRole("progressbar")).toBeNull();
    },
  );
});

describe("a region with more claims than are laid out at once", () => {
  /** As the API answers of such a region. */
  const outlined: typeof ask = async (query, variables) => {
    const answer = await ask(query, variables);
    const outline = (profile: object) => ({
      ...profile,
      ...{ isOutline: true, found: [], notFound: [], besideWider: [], besideCentre: [], sources: [] },
    });
    const { regionProfile, regionProfiles } = answer.data ?? {};
    return {
      ...answer,
      data: {
        ...answer.data,
        ...(regionProfile && { regionProfile: outline(regionProfile) }),
        ...(regionProfiles && { regionProfiles: regionProfiles.map(outline) }),
      },
    };
  };

  it("[R12] sends to the regions within it, and denies nothing", async () => {
    await renderPage("/regions/region.massachusetts", outlined);
    expect(await screen.findByText(/more than one page can lay out/)).toBeTruthy();
    expect(screen.getByRole("link", { name: "Boston" }).getAttribute("href")).toBe("/regions/region.boston");
    expect(screen.queryByText(/Nothing is said|No wood|No form|No shop|no lag can be told/)).toBeNull();
  });

  it("[R12] is named where it stands beside another", async () => {
    await renderPage("/regions/compare?of=region.boston,region.britain", outlined);
    expect(await screen.findByText(/^More is claimed on Boston and Britain than can be laid/)).toBeTruthy();
  });
});

describe("the page of all regions", () => {
  it("[R1] shows each in the tree with its claims counted", async () => {
    await renderPage("/regions", ask);
    const link = await screen.findByRole("link", { name: "Massachusetts" });
    expect(link.getAttribute("href")).toBe("/regions/region.massachusetts");
    expect(link.parentElement?.textContent).toContain("1, in all 6");
    expect(screen.getByRole("link", { name: "Paris" }).parentElement?.textContent).toBe("Paris 1");
    const places = within(screen.getByRole("navigation", { name: "Places" }));
    expect(places.getByRole("link", { name: "Regions" }).getAttribute("aria-current")).toBe("page");
  });

  it("says so where there are none", async () => {
    await renderPage("/regions", (await openApi([])).ask);
    expect(await screen.findByText(/^No regions yet/)).toBeTruthy();
  });
});

describe("the page of a region", () => {
  it("[R2] shows what was there in groups, each claim with its basis", async () => {
    await renderPage("/regions/region.boston", ask);
    expect(await screen.findByText("A port.")).toBeTruthy();
    const practices = await sectionNamed(/^Practices and features/);
    expect(within(practices).getByRole("link", { name: "plain style" })).toBeTruthy();
    expect(
      within(practices).getByRole("link", { name: "current 1730–1760" }).closest("p")?.textContent,
    ).toContain("published");
    expect(
      within(await sectionNamed(/^Woods/)).getByRole("link", { name: "pine in hidden parts" }),
    ).toBeTruthy();
    expect(
      within(await sectionNamed(/^Shops/)).getByRole("link", { name: "shop at the wharf" }),
    ).toBeTruthy();
    expect((await sectionNamed(/^Forms made/)).textContent).toContain("No form is recorded");
    expect((await sectionNamed(/^Not made here/)).textContent).toContain("made only in Salem");
  });

  it("[R6] says the lag in words beside the drawing", async () => {
    await renderPage("/regions/region.boston", ask);
    expect((await sectionNamed(/^Beside London/)).textContent).toContain("25–35 years later");
    expect((await sectionNamed(/^Beside its wider region/)).textContent).toContain("10 years later");
  });

  it("[R7] lists its sources and its blind spots", async () => {
    await renderPage("/regions/region.boston", ask);
    const sources = await sectionNamed(/^Sources it is known from/);
    expect(within(sources).getByText("2 claims")).toBeTruthy();
    expect(sources.textContent).toContain("1 claim rests on common practice or memory alone");
    const blind = await sectionNamed(/^Blind spots/);
    expect(blind.textContent).toContain("No claim on forms, which Massachusetts has.");
    expect(blind.textContent).toContain("no claim is on practices, which Massachusetts has.");
    expect(blind.textContent).toContain("Known from one published source only");
  });

  it("[R3] says of silence that it is no evidence of absence", async () => {
    await renderPage("/regions/region.london", ask);
    expect((await sectionNamed(/^Not made here/)).textContent).toContain("Silence is no evidence of absence");
    expect((await sectionNamed(/^Blind spots/)).textContent).toContain("Nothing at all is known");
  });

  it("[P5] says so when there is no such region", async () => {
    await renderPage("/regions/region.atlantis", ask);
    expect(await screen.findByRole("heading", { level: 1, name: "There is no such region" })).toBeTruthy();
  });
});

describe("regions side by side", () => {
  it("[R9] show what they share and what each has alone", async () => {
    await renderPage("/regions/compare?of=region.boston,region.britain,region.salem", ask);
    const shared = await sectionNamed(/^What they share/);
    expect(within(shared).getByRole("link", { name: "plain style" })).toBeTruthy();
    expect(shared.textContent).toContain("Britain: current about 1700–1730");
    const differ = await sectionNamed(/^Where they differ/);
    expect(within(differ).getByRole("link", { name: "stacked blocks" })).toBeTruthy();
    expect(within(differ).queryByRole("link", { name: "plain style" })).toBeNull();
    expect(screen.getByRole("link", { name: "Take Britain away" }).getAttribute("href")).toBe(
      "/regions/compare?of=region.boston,region.salem",
    );
    expect(screen.queryByRole("combobox", { name: "Add a region" })).toBeNull();
  });

  it("[R9] ask for a second region, and name one that there is not", async () => {
    await renderPage("/regions/compare?of=region.boston,region.atlantis", ask);
    expect(await screen.findByText(/^Choose one more region/)).toBeTruthy();
    expect(screen.getByText(/region\.atlantis/)).toBeTruthy();
    expect(screen.getByRole("combobox", { name: "Add a region" })).toBeTruthy();
  });
});

describe("the page by part of a piece", () => {
  it("[R10] leads from a shape of the drawing to the features looked for on that part", async () => {
    await renderPage("/evidence/parts", ask);
    await screen.findByText(/^No part is chosen yet/);
    await act(async () => {
      fireEvent.click(screen.getByRole("button", { name: "top drawer front" }));
    });
    await screen.findByText(/There is no kind of part with the id part\.drawer-front/);
    expect(window.location.search).toContain("part=part.drawer-front");
  });

  it("[R10] opens the side of the form on which the part in the address is drawn", async () => {
    await renderPage("/evidence/parts?part=part.drawer-bottom", ask);
    await screen.findByRole("region", { name: "Looked for on: drawer bottom" });
    expect(screen.getByRole("tab", { name: "Drawer" }).getAttribute("aria-selected")).toBe("true");
  });

  it("[R10] lists the features with a link each, those of wider kinds folded", async () => {
    await renderPage("/evidence/parts?part=part.drawer-bottom", ask);
    const here = await screen.findByRole("region", { name: "Looked for on: drawer bottom" });
    expect(within(here).getByRole("link", { name: "carved shell" }).getAttribute("href")).toBe(
      "/terms/feature.shell",
    );
    const wider = within(here).getByRole("button", { name: "On: drawer · 1" });
    expect(wider.getAttribute("aria-expanded")).toBe("false");
  });
});
