import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { aClaim } from "#tests/support/build-claim.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const CREATE = `mutation ($piece: PieceInput!) {
  createExamination(piece: $piece) { ... on ExaminationChanged { examination { id version } } }
}`;
const STORED = `query ($id: ID!) {
  examination(id: $id) {
    version
    piece {
      observations { part feature { id } seen }
      odds { wrongClaims madeToDeceive parts { part original later reused } }
    }
  }
}`;

type Api = Awaited<ReturnType<typeof openApi>>;
type Ask = Api["ask"];
let ask: Ask;
/** Stages of each weighing that was asked for, in order; and what a test does to one. */
const STRIPS = /When each thing seen was made/;
let asked: string[][];
/** Whether the strips stood when the first stages were asked for. */
let stoodFirst: boolean | undefined;
let meddle: (stages: readonly string[]) => ReturnType<Ask> | undefined;

beforeEach(async () => {
  const api = await openApi([
    sawGraph,
    [
      {
        kind: "term",
        after: {
          ...{ id: "feature.pins", kind: "feature", label: "fine pins", parts: ["part.drawer-bottom"] },
          looking: { how: "Look at the edge.", move: "drawer out", aids: ["lens"], basis: "common practice" },
        },
      },
      {
        kind: "claim",
        after: aClaim({ id: "claim.pins", relation: "introduced", subject: "feature.pins", when: "1800" }),
      },
    ] as unknown as Parameters<typeof openApi>[0][number],
  ]);
  ask = api.ask;
  asked = [];
  stoodFirst = undefined;
  meddle = () => undefined;
});

const done = () => screen.findByText(/^Weighed under what is assumed/);

const open = async (piece: object = {}) => {
  const { data } = await ask(CREATE, { piece: { ...sawnChest, ...piece } });
  const { id } = data.createExamination.examination as { id: string };
  await renderPage(`/pieces/${id}`, (query, variables) => {
    if (!query.startsWith("query WeighPiece")) return ask(query, variables);
    const stages = variables?.["stages"] as string[];
    stoodFirst ??= screen.queryByRole("region", { name: STRIPS }) !== null;
    asked.push(stages);
    return meddle(stages) ?? ask(query, variables);
  });
  await screen.findByRole("region", { name: STRIPS });
  return id;
};
const stored = async (id: string) => (await ask(STORED, { id })).data.examination;
const press = (name: string | RegExp) =>
  act(async () => void fireEvent.click(screen.getByRole("button", { name })));
const never = () => new Promise<never>(() => undefined);

describe("[Y1] [Y2] the weighing of a piece", () => {
  it("is asked for in steps once the strips stand, and says when it is through", async () => {
    await open();
    await done();
    expect(stoodFirst).toBe(true);
    expect(asked.map((stages) => stages.at(-1))).toEqual(["WEIGHTS", "SENSITIVITY", "RIVALS", "LOOKS"]);
    expect(screen.queryByRole("button", { name: "Stop" })).toBeNull();
  });

  it("can be stopped, names what is missing, and goes on where it was", async () => {
    meddle = (stages) => (stages.includes("RIVALS") ? never() : undefined);
    await open();
    await screen.findByText(/Working out the rival stories … 3 of 4/);
    await press("Stop");
    expect(
      screen.getByText("Stopped. Not worked out: the rival stories; what to look at next."),
    ).toBeTruthy();
    expect(screen.getByRole("region", { name: "Part by part" }).getAttribute("data-old")).toBe("false");
    meddle = () => undefined;
    asked = [];
    await press("Go on");
    await done();
    expect(asked.map(([first]) => first)).toEqual(["RIVALS", "LOOKS"]);
  });

  it("tells a failure with what is missing, and tries again from there", async () => {
    meddle = (stages) =>
      stages.includes("SENSITIVITY") ? Promise.reject(new TypeError("Failed to fetch")) : undefined;
    await open();
    const alert = await screen.findByText(/This page got no answer/);
    expect(alert.getAttribute("role")).toBe("alert");
    expect(alert.textContent).toMatch(
      /Not worked out: how far it depends on what is assumed; the rival stories/,
    );
    meddle = () => undefined;
    await press("Try again");
    await done();
    expect(asked.map((stages) => stages.at(-1))).toEqual([
      ...["WEIGHTS", "SENSITIVITY", "SENSITIVITY", "RIVALS", "LOOKS"],
    ]);
  });

  it("[Y3] marks what it knew as old while a change is weighed, and ends what was under way", async () => {
    await open();
    await done();
    const parts = screen.getByRole("region", { name: "Part by part" });
    meddle = () => never();
    await press(/^Drawer bottom/);
    await press(/round saw marks seen/);
    fireEvent.click(screen.getByRole("radio", { name: "probable" }));
    await waitFor(() => expect(parts.getAttribute("data-old")).toBe("true"));
    expect(parts.textContent).toMatch(/The drawer bottom/);
    meddle = () => undefined;
    fireEvent.click(screen.getByRole("radio", { name: "possible" }));
    await done();
    expect(parts.getAttribute("data-old")).toBe("false");
  });

  it("does not begin anew for another title", async () => {
    await open();
    await done();
    asked = [];
    await press("Rename");
    const field = screen.getByRole("textbox", { name: "What the piece is called" });
    await act(async () => void fireEvent.change(field, { target: { value: "Another name" } }));
    await press("Keep");
    await waitFor(() => expect(screen.getByText("stored")).toBeTruthy());
    await act(() => new Promise((resolve) => setTimeout(resolve, 700)));
    expect(asked).toEqual([]);
  });
});

describe("what it tells", () => {
  it("[Y4] [Y5] tells a story for each choice, and marks the strips it touches", async () => {
    await open();
    await done();
    const mends = screen.getByRole("region", { name: "What would have to be true" });
    const choice = within(mends).getByRole("radiogroup", { name: /^The drawer bottom, one of/ });
    const strip = () => screen.getByRole("button", { name: /^round saw marks:/ }).getAttribute("aria-label");
    await act(
      async () => void fireEvent.click(within(choice).getByRole("button", { name: "2 more that ask more" })),
    );
    fireEvent.click(within(choice).getByRole("radio", { name: /was misread/ }));
    expect(
      within(mends).getByText(/^For 1760 to 1775 to be possible: round saw marks .* misread\.$/),
    ).toBeTruthy();
    expect(strip()).toMatch(/In the story chosen: it was misread\.$/);
    expect(within(mends).getByText("Another story of those below asks less.")).toBeTruthy();
    fireEvent.click(within(choice).getByRole("radio", { name: /^The drawer bottom was made later/ }));
    expect(strip()).toMatch(/In the story chosen: the part was made later\.$/);
    fireEvent.click(within(choice).getByRole("radio", { name: /^A claim is wrong \(circular saw/i }));
    expect(
      within(mends)
        .getByRole("link", { name: /Saws and their marks/ })
        .getAttribute("href"),
    ).toBe("/sources/source.saw-book");
  });

  it("[Y7] [Y8] [Y9] [Y10] says years, states with their range, weights and rivals in words", async () => {
    await open();
    await done();
    const curves = screen.getByRole("region", { name: /^How probable each year is/ });
    expect(curves.textContent).toMatch(/The piece was made .*1760 to 1775/);
    expect(within(curves).getByText(/follow those of the piece: nothing seen tells of them/)).toBeTruthy();
    const parts = screen.getByRole("region", { name: "Part by part" });
    expect(parts.textContent).toMatch(/The drawer bottom .*under other assumptions/);
    const weights = screen.getByRole("region", { name: /^What each thing seen weighs/ });
    expect(weights.textContent).toMatch(/Round saw marks on the drawer bottom.*Together/i);
    const rivals = screen.getByRole("table", { name: "Rival stories, side by side" });
    expect(within(rivals).getAllByRole("columnheader")).toHaveLength(5);
    expect(within(rivals).getByRole("rowheader", { name: "As claimed, with later parts" })).toBeTruthy();
    expect(within(rivals).queryByRole("rowheader", { name: "Made later to look old" })).toBeNull();
  });

  it("[Y13] says how to look, and records the answer only as it was found", async () => {
    const id = await open();
    await done();
    const looks = screen.getByRole("region", { name: "What to look at next" });
    expect(looks.textContent).toMatch(/look for fine pins/);
    expect(looks.textContent).toMatch(/With the drawer out.*lens.*Look at the edge\./);
    await act(
      async () =>
        void fireEvent.click(within(looks).getByRole("button", { name: /^Record the answer.*fine pins/ })),
    );
    const box = screen.getByRole("group", { name: "fine pins: what was found?" });
    expect(within(box).getByRole("button", { name: "Record" }).hasAttribute("disabled")).toBe(true);
    expect(box.contains(document.activeElement)).toBe(true);
    fireEvent.click(within(box).getByRole("radio", { name: "looked for, absent" }));
    await act(async () => void fireEvent.click(within(box).getByRole("button", { name: "Record" })));
    await waitFor(async () =>
      expect((await stored(id)).piece.observations).toContainEqual({
        ...{ part: "bottom", feature: { id: "feature.pins" }, seen: "ABSENT" },
      }),
    );
    expect(screen.queryByRole("group", { name: /what was found/ })).toBeNull();
  });
});

describe("[Y11] [Y12] what is assumed", () => {
  const slider = (name: RegExp | string) => screen.getByRole<HTMLInputElement>("slider", { name });
  const slide = (name: RegExp | string, value: number) =>
    act(async () => void fireEvent.change(slider(name), { target: { value: String(value) } }));

  it("is tried at once, kept only when told to, and can be had back", async () => {
    const id = await open();
    await done();
    const { version } = await stored(id);
    asked = [];
    await slide("How often claims are wrong", 0.5);
    expect(screen.getByText("Tried on, not kept.")).toBeTruthy();
    expect(slider("How often claims are wrong").getAttribute("aria-valuetext")).toBe(
      "3.2 times as often as assumed",
    );
    await waitFor(() => expect(asked.length).toBeGreaterThan(0));
    await done();
    expect((await stored(id)).version).toBe(version);
    await press("Keep with the piece");
    await waitFor(async () => expect((await stored(id)).piece.odds?.wrongClaims).toBe(3.2));
    await waitFor(() => expect(screen.getByText("Kept with the piece.")).toBeTruthy());
    await press(/^Undo/);
    await waitFor(async () => expect((await stored(id)).piece.odds).toBeNull());
  });

  it("moves three shares of a part together, beside what is assumed, and resets them", async () => {
    await open();
    await done();
    await press(/^The drawer bottom/);
    const shares = () =>
      ["of the first making", "later", "from an earlier piece"].map((state) =>
        Number(slider(`The drawer bottom, ${state}`).value),
      );
    expect(shares().reduce((a, b) => a + b)).toBeCloseTo(1, 6);
    await slide("The drawer bottom, later", 0.6);
    expect(shares()[1]).toBe(0.6);
    expect(shares().reduce((a, b) => a + b)).toBeCloseTo(1, 6);
    expect(screen.getAllByText(/assumed: 0\.\d\d/)).toHaveLength(3);
    await press("Reset the drawer bottom to assumed");
    expect(screen.getByText("All as assumed for every piece.")).toBeTruthy();
  });

  it("[Y10] weighs “made later to look old” only when it is asked for, with its prior shown", async () => {
    await open();
    await done();
    await act(
      async () => void fireEvent.click(screen.getByRole("checkbox", { name: /made later to look old/ })),
    );
    expect(slider(/^Prior of “made later to look old”/).getAttribute("aria-valuetext")).toBe("2 in 100");
    await screen.findByRole("rowheader", { name: "Made later to look old" });
  });
});
