import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph } from "#tests/support/saw-graph.ts";
import { seedChange } from "#tests/support/seed-examiner.ts";
import { LESSONS } from "#web/learn/lessons.ts";

let seed: Change;
beforeAll(async () => {
  seed = await seedChange();
});
beforeEach(() => localStorage.clear());
afterEach(() => vi.restoreAllMocks());

const askOf = async (change: Change) => (await openApi([change])).ask;
const open = async (id: string, change = seed) => renderPage(`/learn/${id}`, await askOf(change));
const radio = (name: string | RegExp) => screen.getByRole("radio", { name });

/** Makes a choice and asks for the answer. */
async function choose(name: string | RegExp): Promise<HTMLElement> {
  await act(async () => fireEvent.click(radio(name)));
  await act(async () => fireEvent.click(screen.getByRole("button", { name: "See what the evidence says" })));
  return screen.findByRole("region", { name: "What the evidence says" });
}

describe("the list of lessons", () => {
  it("offers every lesson under its subject, and the page on how a finding is made", async () => {
    await renderPage("/learn", await askOf(seed));
    const link = await screen.findByRole("link", { name: "How a finding is made" });
    expect(link.getAttribute("href")).toBe("/method");
    for (const { title, id, subject } of LESSONS) {
      const lesson = screen.getByRole("link", { name: title });
      expect(lesson.getAttribute("href")).toBe(`/learn/${id}`);
      expect(
        within(lesson.closest("section") as HTMLElement).getByRole("heading", { name: subject }),
      ).toBeTruthy();
    }
    expect(screen.getByRole("link", { name: "Learn" }).getAttribute("aria-current")).toBe("page");
  });

  it("[L8] marks what was gone through in this browser, no more than that, and forgets it when asked", async () => {
    await open("grain-of-the-bottom");
    await screen.findByRole("heading", { level: 1 });
    expect(localStorage.length).toBe(0);
    await choose(/^It rules it out/);
    expect(Object.values({ ...localStorage })).toEqual(['["grain-of-the-bottom"]']);
    await act(async () => fireEvent.click(screen.getByRole("link", { name: "Learn", current: "page" })));
    const row = (await screen.findByRole("link", { name: "Which way the bottom runs" })).closest("li");
    expect(row?.textContent).toContain("gone through");
    expect(screen.getAllByText("gone through").length).toBe(1);
    await act(async () =>
      fireEvent.click(screen.getByRole("button", { name: "Forget what I went through" })),
    );
    expect(screen.queryByText("gone through")).toBeNull();
    expect(localStorage.length).toBe(0);
  });

  it("[L8] works where the browser keeps nothing", async () => {
    vi.spyOn(Storage.prototype, "getItem").mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    await open("grain-of-the-bottom");
    const answer = await choose(/^It makes it unusual/);
    expect(await within(answer).findByText("So it says.")).toBeTruthy();
  });
});

describe("a lesson", () => {
  it("[L7] tells nothing before it is asked, and asks for a choice first", async () => {
    await open("arcs-on-the-back");
    await screen.findByRole("radiogroup", { name: "What do the arcs do to the claim?" });
    expect(screen.getAllByRole("radio").length).toBe(3);
    expect(
      (screen.getByRole("button", { name: "See what the evidence says" }) as HTMLButtonElement).disabled,
    ).toBe(true);
    await act(async () => fireEvent.click(radio(/^They rule it out/)));
    await act(async () => fireEvent.click(radio(/^They make it unusual/)));
    expect(screen.queryByRole("region", { name: "What the evidence says" })).toBeNull();
    expect(document.body.textContent).not.toContain("out of its time");
  });

  it("[L7] says otherwise to a choice that the evidence does not bear out, with why, chain and sources", async () => {
    await open("kerfs-on-a-curve");
    const answer = await choose(/^For wear under the feet/);
    expect(await within(answer).findByText("It says otherwise.")).toBeTruthy();
    expect(answer.textContent).toContain("It does not say what cut the curve.");
    expect(answer.textContent).toContain("A bow saw cuts curves by hand");
    expect(within(answer).getByRole("button", { name: /^And the other choices/ })).toBeTruthy();
    const strip = within(answer).getAllByRole("button", {
      name: /^band-saw mark with a recurring deeper line:/,
    })[0];
    expect(strip?.getAttribute("aria-expanded")).toBe("true");
    const chain = strip?.closest("li") as HTMLElement;
    expect(
      within(chain)
        .getByRole("link", { name: /can only come of band saw/ })
        .getAttribute("href"),
    ).toBe("/claims/claim.M11");
    expect(chain.querySelectorAll("a[href^='/sources/']").length).toBeGreaterThan(0);
  });

  it("[L7] [L10] agrees where the evidence does, and gives the answer the focus", async () => {
    await open("kerfs-on-a-curve");
    const answer = await choose(/^For the mark of a bow saw/);
    expect(await within(answer).findByText("So it says.")).toBeTruthy();
    expect(document.activeElement).toBe(
      within(answer).getByRole("heading", { name: "What the evidence says" }),
    );
    expect(within(answer).getByRole("heading", { name: "To keep" })).toBeTruthy();
    expect(
      within(answer).getByRole("link", { name: "See the whole piece examined" }).getAttribute("href"),
    ).toBe("/pieces/examination.millrace-chest");
  });

  it("[L2] [L7] is turned afterwards, and what follows is told", async () => {
    await open("all-hand-work");
    const answer = await choose(/^It does not decide/);
    const nails = await within(answer).findByRole("radio", { name: /wire nails in the back/ });
    const turns = nails.closest("[data-turning]") as HTMLElement;
    const told = () => turns.querySelector("[aria-live='polite']")?.textContent;
    await waitFor(() => expect(told()).toMatch(/^The evidence does not discriminate/));
    await act(async () => fireEvent.click(nails));
    await waitFor(() => expect(told()).toMatch(/^The back boards cannot be of 1690 to 1710/));
    expect(within(turns).getByRole("button", { name: /^wire nail .* years too late/ })).toBeTruthy();
  });

  it("[L6] judges nobody where the evidence is other than the lesson was written on", async () => {
    await open("grain-of-the-bottom", await seedChange(["claim.C10"]));
    const answer = await choose(/^It makes it unusual/);
    expect(await within(answer).findByText(/is not what the lesson was written on/)).toBeTruthy();
    expect(within(answer).queryByText(/^(So it says|It says otherwise)/)).toBeNull();
    expect(within(answer).getAllByText(/says nothing of the date: /).length).toBeGreaterThan(0);
  });

  it("[L4] says what a store lacks, and stands all the same", async () => {
    await open("tip-of-a-screw", sawGraph);
    const answer = await choose(/^Whether the hole is older/);
    expect(await within(answer).findByText(/^This cannot be shown here/)).toBeTruthy();
    expect(answer.textContent).toContain("There is no term feature.gimlet-point-screw");
    expect(screen.getByRole("heading", { level: 1, name: "The tip of a screw" })).toBeTruthy();
  });

  it("is said not to be there under an address without one", async () => {
    await open("no-such-lesson");
    expect(await screen.findByRole("heading", { level: 1, name: "There is no such lesson" })).toBeTruthy();
  });
});
