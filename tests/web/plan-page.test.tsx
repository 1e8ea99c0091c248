import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sheetGraph } from "#tests/support/sheet-graph.ts";

let ask: Awaited<ReturnType<typeof openApi>>["ask"];
beforeEach(async () => {
  ask = (await openApi([sheetGraph])).ask;
});

const BUREAU = "/plan?form=form.bureau&region=region.home&date=1760/1770";
const itemOf = async (name: string) => {
  const link = await screen.findByRole("link", { name });
  return link.closest("li") as HTMLElement;
};

const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id version } } } }`;
const READ = `query ($id: ID!) { examination(id: $id) { version piece {
  title invented note examined attribution { date region { id } form { id } style { id } maker { id } }
  parts { id label kind { id } within region { id } } together separate
  observations { id part feature { id } seen sureness note }
  odds { datePrior parts { part original later reused } wrongClaims leak madeToDeceive } } } }`;

const PIECE = {
  ...{ title: "Bureau in the hall", invented: true, note: "A note.", examined: 2026 },
  attribution: { date: "1760/1770", region: "region.home", form: "form.bureau" },
  parts: [
    { id: "carcase", label: "Carcase", kind: "part.carcase" },
    { id: "back", label: "Back boards", kind: "part.back", within: "carcase", region: "region.colony" },
    { id: "upper", label: "Upper drawer", kind: "part.drawer" },
    { id: "lower", label: "Lower drawer", kind: "part.drawer" },
  ],
  observations: [
    {
      id: "o1",
      part: "upper",
      feature: "feature.worn-edge",
      seen: "PRESENT",
      sureness: "PROBABLE",
      note: "by the lock",
    },
  ],
  together: [["upper", "lower"]],
  separate: [["back", "upper"]],
  odds: {
    datePrior: "AS_CLAIMED",
    parts: [{ part: "back", original: 0.5, later: 0.3, reused: 0.2 }],
    leak: 0.01,
  },
};
const create = async (piece: object = PIECE): Promise<string> =>
  (await ask(CREATE, { piece })).data.createExamination.examination.id;
const stored = async (id: string) => (await ask(READ, { id })).data.examination;

describe("the page of a plan", () => {
  it("[N15] asks for form and date where the address says neither, and reads a date as it is typed", async () => {
    await renderPage("/plan", ask);
    expect((await screen.findByRole("heading", { level: 1 })).textContent).toBe("Plan a look");
    const button = screen.getByRole("button", { name: "Plan the look" }) as HTMLButtonElement;
    expect(button.disabled).toBe(true);
    fireEvent.change(screen.getByLabelText("Date claimed"), { target: { value: "c. 1770" } });
    expect(screen.getByRole("button", { name: "Take 1770~" })).toBeTruthy();
    const places = within(screen.getByRole("navigation", { name: "Places" }));
    expect(places.getByRole("link", { name: "Pieces" }).getAttribute("aria-current")).toBe("page");
  });

  it("[N12] [N13] [N15] goes round the piece, each item with what its answers would do and boxes to tick", async () => {
    await renderPage(BUREAU, ask);
    expect((await screen.findByRole("heading", { level: 1 })).textContent).toBe("Plan of the look: bureau");
    expect(screen.getByText(/^Claimed: bureau, Home, .*1760.*1770/)).toBeTruthy();
    const arcs = await itemOf("saw arcs");
    expect(arcs.textContent).toMatch(/Seenrules 1760 to 1770 out for the part/);
    expect(arcs.textContent).toContain("Possible 1800 or later. 30 years too late for the claimed date.");
    for (const box of ["seen", "not there", "not visible"]) expect(within(arcs).getByText(box)).toBeTruthy();
    const headings = screen.getAllByRole("heading", { level: 2 }).map(({ textContent }) => textContent);
    const round = ["As it stands", "Drawers out, doors open", "From behind", "From underneath"];
    expect(headings).toEqual(round.filter((title) => headings.includes(title)));
    expect(headings.length).toBeGreaterThan(1);
    expect(screen.getByRole("region", { name: "Cautions" }).textContent).toMatch(/Old finishes/);
  });

  it("[N15] says what is refused, and lets it be asked anew", async () => {
    await renderPage("/plan?form=form.bureaux&date=1760", ask);
    expect((await screen.findByRole("heading", { level: 1 })).textContent).toBe("No plan for what is asked");
    expect(screen.getByText(/form\.bureaux/)).toBeTruthy();
    expect(screen.getByRole("form", { name: "What is claimed" })).toBeTruthy();
  });

  it("[N15] is reached from the pieces", async () => {
    await renderPage("/", ask);
    expect((await screen.findByRole("link", { name: "Plan a look" })).getAttribute("href")).toBe("/plan");
  });

  it("[N15] is reached from the sheet of a form, with what it asks", async () => {
    await renderPage("/sheets/form.bureau?region=region.home&date=1760/1770", ask);
    const link = await screen.findByRole("link", { name: "Only what would tell most" });
    expect(link.getAttribute("href")).toBe("/plan?form=form.bureau&region=region.home&date=1760%2F1770");
  });
});

describe("a plan that is filled in", () => {
  it("[N16] is begun with the parts of the form, and opens on the new piece", async () => {
    await renderPage(BUREAU, ask);
    const begin = await screen.findByRole("button", { name: "Begin an examination with this plan" });
    await act(async () => fireEvent.click(begin));
    await waitFor(() => expect(window.location.search).toMatch(/^\?piece=examination\./));
    const piece = (await stored(new URLSearchParams(window.location.search).get("piece") ?? "")).piece;
    expect(piece.attribution).toMatchObject({ date: "1760/1770", form: { id: "form.bureau" } });
    expect(piece.parts.map(({ kind }: { kind: { id: string } }) => kind.id)).toEqual([
      ...["part.carcase", "part.back", "part.drawer", "part.foot"],
    ]);
  });

  it("[N16] shows what is recorded, and records on the very part, leaving all else of the piece as it was", async () => {
    const id = await create();
    const before = await stored(id);
    await renderPage(`/plan?piece=${id}`, ask);
    const worn = await itemOf("worn edge");
    const upper = within(worn).getByRole("radiogroup", { name: "Upper drawer: worn edge" });
    expect((within(upper).getByRole("radio", { name: "seen" }) as HTMLInputElement).checked).toBe(true);
    const lower = within(worn).getByRole("radiogroup", { name: "Lower drawer: worn edge" });
    await act(async () => fireEvent.click(within(lower).getByRole("radio", { name: "not there" })));
    await waitFor(() =>
      expect((within(lower).getByRole("radio", { name: "not there" }) as HTMLInputElement).checked).toBe(
        true,
      ),
    );
    const after = await stored(id);
    expect(after.version).toBe(before.version + 1);
    expect(after.piece).toEqual({
      ...before.piece,
      observations: [
        ...before.piece.observations,
        {
          ...{ id: "lower.worn-edge", part: "lower", feature: { id: "feature.worn-edge" } },
          ...{ seen: "ABSENT", sureness: "SURE", note: null },
        },
      ],
    });
  });

  it("[N16] changes an answer without losing what was noted beside it, and takes one back", async () => {
    const id = await create();
    await renderPage(`/plan?piece=${id}`, ask);
    const worn = await itemOf("worn edge");
    const upper = within(worn).getByRole("radiogroup", { name: "Upper drawer: worn edge" });
    await act(async () => fireEvent.click(within(upper).getByRole("radio", { name: "not visible" })));
    await waitFor(async () =>
      expect((await stored(id)).piece.observations).toMatchObject([
        { id: "o1", seen: "UNSEEN", sureness: "PROBABLE", note: "by the lock" },
      ]),
    );
    const takeBack = within(worn).getByRole<HTMLButtonElement>("button", { name: /^Take back/ });
    // What was said before is stored, and the page does not know yet.
    await waitFor(() => expect(takeBack.disabled).toBe(false));
    await act(async () => fireEvent.click(takeBack));
    await waitFor(async () => expect((await stored(id)).piece.observations).toEqual([]));
  });

  it("[N16] keeps the focus where it was answered while the answer is being stored", async () => {
    const id = await create();
    const { promise: held, resolve: letGo } = Promise.withResolvers<void>();
    await renderPage(`/plan?piece=${id}`, async (query, variables) => {
      if (query.startsWith("mutation")) await held;
      return ask(query, variables);
    });
    const lower = within(await itemOf("worn edge")).getByRole("radiogroup", {
      name: "Lower drawer: worn edge",
    });
    const radio = within(lower).getByRole("radio", { name: "seen" });
    radio.focus();
    fireEvent.click(radio);
    await waitFor(() => expect(lower.getAttribute("aria-readonly")).toBe("true"));
    expect(document.activeElement).toBe(radio);
    letGo();
    await waitFor(() => expect(lower.getAttribute("aria-readonly")).toBeNull());
    expect(document.activeElement).toBe(radio);
    expect((await stored(id)).piece.observations).toContainEqual(
      expect.objectContaining({ part: "lower", seen: "PRESENT" }),
    );
  });

  it("[N16] says so if somebody took the part away meanwhile, and shows the piece as it is", async () => {
    const id = await create();
    await renderPage(`/plan?piece=${id}`, ask);
    const worn = await itemOf("worn edge");
    await ask(
      `mutation ($id: ID!, $piece: PieceInput!) { changeExamination(id: $id, expectedVersion: 1, piece: $piece) { __typename } }`,
      { id, piece: { ...PIECE, parts: PIECE.parts.slice(0, 3), observations: [], together: [] } },
    );
    const lower = within(worn).getByRole("radiogroup", { name: "Lower drawer: worn edge" });
    await act(async () => fireEvent.click(within(lower).getByRole("radio", { name: "seen" })));
    expect((await screen.findByRole("alert")).textContent).toMatch(/^Somebody changed the piece meanwhile/);
    expect((await stored(id)).piece.observations).toEqual([]);
    expect(within(worn).queryByRole("button", { name: /^Take back/ })).toBeNull();
  });

  it("[N16] says what is missing on a piece without a form", async () => {
    const bare = await create({ ...PIECE, attribution: { date: "1760/1770" } });
    await renderPage(`/plan?piece=${bare}`, ask);
    expect((await screen.findByRole("heading", { level: 1 })).textContent).toBe(
      "No form is claimed of this piece",
    );
  });

  it("[N16] says so where the piece has no part of the kind", async () => {
    const id = await create({ ...PIECE, parts: PIECE.parts.slice(2), separate: [], odds: null });
    await renderPage(`/plan?piece=${id}`, ask);
    expect((await itemOf("saw arcs")).textContent).toContain(
      "The piece has no part recorded of this kind (back)",
    );
  });
});
