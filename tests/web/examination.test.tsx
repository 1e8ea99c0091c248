import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { aClaim } from "#tests/support/build-claim.ts";
import { openApi } from "#tests/support/open-api.ts";
import { renderPage } from "#tests/support/render-page.tsx";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const CREATE = `mutation ($piece: PieceInput!) {
  createExamination(piece: $piece) { ... on ExaminationChanged { examination { id version } } }
}`;
const CHANGE = `mutation ($id: ID!, $expectedVersion: Int!, $piece: PieceInput!) {
  changeExamination(id: $id, expectedVersion: $expectedVersion, piece: $piece) { __typename }
}`;
const STORED = `query ($id: ID!) {
  examination(id: $id) {
    version
    piece {
      title
      attribution { date region { id } }
      parts { id label }
      observations { part feature { id } seen sureness note }
    }
  }
}`;

type Api = Awaited<ReturnType<typeof openApi>>;
let ask: Api["ask"];
/** Names of the operations the page sent. */
let sent: string[];

beforeEach(async () => {
  const api = await openApi([
    sawGraph,
    [
      {
        kind: "term",
        after: {
          id: "form.chest-of-drawers",
          kind: "form",
          label: "chest of drawers",
          parts: ["part.drawer"],
        },
      },
      { kind: "term", after: { id: "feature.pins", kind: "feature", label: "fine pins" } },
      {
        kind: "claim",
        after: aClaim({ id: "claim.pins", relation: "common from", subject: "feature.pins", when: "1800" }),
      },
    ] as unknown as Parameters<typeof openApi>[0][number],
  ]);
  ask = api.ask;
  sent = [];
});

const open = async (piece: object = {}) => {
  const { data } = await ask(CREATE, { piece: { ...sawnChest, ...piece } });
  const { id } = data.createExamination.examination as { id: string };
  await renderPage(`/pieces/${id}`, (query, variables) => {
    // The piece is weighed whenever it rests, beside what a person does.
    if (!query.startsWith("query WeighPiece")) sent.push(/(?:query|mutation) (\w+)/.exec(query)?.[1] ?? "?");
    return ask(query, variables);
  });
  await screen.findByRole("region", { name: "The piece" });
  return id;
};
const stored = async (id: string) => (await ask(STORED, { id })).data.examination;
const settled = () => waitFor(() => expect(screen.getByText("stored").getAttribute("role")).toBe("status"));
const press = (name: string | RegExp) =>
  act(async () => void fireEvent.click(screen.getByRole("button", { name })));
const type = (field: HTMLElement, value: string) =>
  act(async () => {
    field.focus();
    fireEvent.change(field, { target: { value } });
  });

describe("the examination page", () => {
  it("[X1] does not say of an empty piece of no stated region that something was not searched", async () => {
    await open({ attribution: { date: "../2026" }, parts: [], observations: [] });
    const conclusion = screen.getByRole("region", { name: "Conclusion" });
    expect(within(conclusion).getByText(/Nothing is recorded yet/)).toBeTruthy();
    expect(conclusion.textContent).toMatch(/Answered from revision \d+ of the evidence/);
    expect(conclusion.textContent).not.toMatch(/cut short/);
  });

  it("[X1] opens with the conclusion, its reasons, the revision and that the piece is invented", async () => {
    await open();
    const conclusion = screen.getByRole("region", { name: "Conclusion" });
    expect(within(conclusion).getByText(/cannot be of 1760 to 1775/)).toBeTruthy();
    expect(
      within(conclusion).getByText("Round saw marks on the drawer bottom: 15 years too late."),
    ).toBeTruthy();
    expect(within(conclusion).getByRole("link", { name: "revision 2" })).toBeTruthy();
    expect(conclusion.textContent).toContain("not a certificate or a valuation");
    expect(screen.getByText("invented for demonstration").closest(".screen-only")).toBeNull();
    expect(screen.getByRole("complementary", { name: "Cautions" }).textContent).toMatch(/conservator/);
  });

  it("[X17] has its conclusions in their order, each rule-out with its chain and sources", async () => {
    await open();
    const conclusions = screen.getByRole("region", { name: "Conclusions" });
    await within(conclusions).findByRole("heading", { name: /^Part by part/ });
    const headings = within(conclusions)
      .getAllByRole("heading", { level: 2 })
      .map((heading) => heading.textContent?.replace(/ ·.*/, "").trim());
    expect(headings).toEqual([
      "What rules it out",
      "What would be unusual",
      "What would have to be true",
      "How many pieces are in it",
      "Part by part",
      "Signs of alteration",
      "What was not searched",
      "What the graph does not know",
      "What is assumed, not cited",
    ]);
    const ruledOut = within(conclusions).getByRole("region", { name: "What rules it out" });
    expect(
      within(ruledOut)
        .getByRole("link", { name: /Saws and their marks.*p\. 12/ })
        .getAttribute("href"),
    ).toBe("/sources/source.saw-book");
  });

  it("says what to do first where nothing is recorded", async () => {
    await open({ parts: [], observations: [], attribution: { date: "../2026" } });
    expect(screen.getByText("Begin with one part.")).toBeTruthy();
    expect(screen.getByText(/State the form above/)).toBeTruthy();
    expect(screen.getByText(/Record what you see first/)).toBeTruthy();
    expect(screen.getByText("date not stated")).toBeTruthy();
    expect(screen.getByRole("textbox", { name: "Date" })).toBeTruthy();
  });

  it("says so where there is no such examination", async () => {
    await renderPage("/pieces/examination.none", ask);
    expect((await screen.findByRole("heading", { level: 1 })).textContent).not.toBe("");
    expect(screen.queryByRole("article")).toBeNull();
  });
});

describe("what is claimed", () => {
  const dateField = async () => {
    await press("Change what is claimed");
    return screen.getByRole<HTMLInputElement>("textbox", { name: "Date" });
  };

  it("[X2] reads the date back while it is typed and stores it on Enter", async () => {
    const id = await open();
    const field = await dateField();
    await type(field, "181X~");
    expect(screen.getByText(/Read as: made 1810–1819, give or take 5 years/)).toBeTruthy();
    expect((await stored(id)).piece.attribution.date).toBe("1760/1775");
    await act(async () => void fireEvent.keyDown(field, { key: "Enter" }));
    await settled();
    expect((await stored(id)).piece.attribution.date).toBe("181X~");
    await waitFor(() => expect(screen.getByText(/^Nothing recorded rules .* out/)).toBeTruthy());
  });

  it("[X2] refuses what cannot be read with its reason, and takes the form offered at a press", async () => {
    const id = await open();
    const field = await dateField();
    await type(field, "1750-1760");
    expect(screen.getByText(/The date "1750-1760" cannot be read/)).toBeTruthy();
    await act(async () => void fireEvent.keyDown(field, { key: "Enter" }));
    expect(sent).not.toContain("ChangeExamination");
    await press("Take 1750/1760");
    await settled();
    expect((await stored(id)).piece.attribution.date).toBe("1750/1760");
    expect(field.value).toBe("1750/1760");
  });

  it("finds a region by typing and stores it when it is chosen", async () => {
    const id = await open();
    await press("Change what is claimed");
    const field = screen.getByRole("combobox", { name: "Region" });
    await type(field, "lond");
    const choice = await screen.findByRole("option", { name: /London/ });
    await act(async () => void fireEvent.click(choice));
    await settled();
    expect((await stored(id)).piece.attribution.region.id).toBe("region.london");
  });
});

describe("recording", () => {
  const found = (how: string) =>
    within(screen.getByRole("radiogroup", { name: "How it was found" })).getByRole<HTMLInputElement>(
      "radio",
      {
        name: how,
      },
    );

  it("[X3] shows a change at once and takes the new report from the one answer", async () => {
    const id = await open();
    await press(/^Drawer bottom/);
    await press(/round saw marks seen/);
    sent.length = 0;
    fireEvent.click(found("looked for, absent"));
    expect(screen.getByText("storing …")).toBeTruthy();
    expect(found("looked for, absent").checked).toBe(true);
    await settled();
    expect(sent).toEqual(["ChangeExamination"]);
    expect((await stored(id)).piece.observations[0].seen).toBe("ABSENT");
    expect(screen.queryByText(/cannot be of 1760 to 1775/)).toBeNull();
    expect(
      screen.getByRole("button", { name: /^no round saw marks:.*looked for and not there/i }),
    ).toBeTruthy();
  });

  it("[X3] sends what was changed meanwhile after the first answer, and loses neither", async () => {
    const id = await open();
    await press(/^Drawer bottom/);
    await press(/round saw marks seen/);
    fireEvent.click(screen.getByRole("radio", { name: "probable" }));
    fireEvent.click(screen.getByRole("radio", { name: "possible" }));
    fireEvent.click(found("could not be seen"));
    await settled();
    const { version, piece } = await stored(id);
    expect(piece.observations[0]).toMatchObject({ seen: "UNSEEN", sureness: "POSSIBLE" });
    expect(version).toBe(3);
  });

  it("[X7] offers the features of the kind of part first, and adds the one chosen as it was found", async () => {
    const id = await open({ observations: [] });
    await press(/^Drawer bottom/);
    await act(async () => void fireEvent.click(screen.getByRole("radio", { name: "could not be seen" })));
    const field = screen.getByRole("combobox", { name: "Add to Drawer bottom" });
    await act(async () => field.focus());
    const offered = () => screen.getAllByRole("option");
    await waitFor(() =>
      expect(offered().map(({ textContent }) => textContent)).toEqual(["round saw marksArcs of one radius."]),
    );
    await act(async () => void fireEvent.click(offered()[0] as HTMLElement));
    await settled();
    expect((await stored(id)).piece.observations).toMatchObject([
      { part: "bottom", feature: { id: "feature.round-saw-marks" }, seen: "UNSEEN", sureness: "SURE" },
    ]);
    const strip = await screen.findByRole("button", { name: /^round saw marks:.*could not be seen/i });
    expect(strip.getAttribute("aria-expanded")).toBe("false");
  });

  it("[X7] says that it looks until the answer is there, and only then that there is nothing", async () => {
    await open();
    const working = ask;
    const held = Promise.withResolvers<void>();
    ask = async (query, variables) => {
      if (query.startsWith("query TermSearch")) await held.promise;
      return working(query, variables);
    };
    await press(/^Drawer bottom/);
    const field = screen.getByRole("combobox", { name: "Add to Drawer bottom" });
    await type(field, "zzzz");
    const said = () => screen.getAllByRole("option").map(({ textContent }) => textContent);
    await waitFor(() => expect(said()).toEqual(["Looking …"]));
    held.resolve();
    await waitFor(() => expect(said()).toEqual([expect.stringMatching(/^Nothing by these words\. /)]));
  });

  it("[X8] removes a part with what was seen on it, and brings both back by undo", async () => {
    const id = await open();
    await press(/^Drawer bottom/);
    await press("Name and kind of Drawer bottom");
    await press("Remove Drawer bottom");
    await settled();
    expect((await stored(id)).piece).toMatchObject({ parts: [{ id: "carcase" }], observations: [] });
    await act(async () => void fireEvent.keyDown(document.body, { key: "z", ctrlKey: true }));
    await waitFor(async () => expect((await stored(id)).piece.parts.length).toBe(2));
    await settled();
    expect((await stored(id)).piece.observations.length).toBe(1);
    expect(screen.getByRole("button", { name: /^Drawer bottom/ })).toBeTruthy();
  });

  it("[X4] leaves the undo keys to a field that is being typed in", async () => {
    await open();
    await press("Rename");
    sent.length = 0;
    const field = screen.getByRole("textbox", { name: "What the piece is called" });
    await act(async () => void fireEvent.keyDown(field, { key: "z", ctrlKey: true }));
    expect(sent).toEqual([]);
  });

  it("renames the piece", async () => {
    const id = await open();
    await press("Rename");
    await type(screen.getByRole("textbox", { name: "What the piece is called" }), "Chest, renamed");
    await press("Keep");
    await settled();
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Chest, renamed");
    expect((await stored(id)).piece.title).toBe("Chest, renamed");
  });

  it("[X6] keeps what could not be sent on the page, says so, and sends it at a press", async () => {
    const id = await open();
    const working = ask;
    // What weighs the piece, whenever it rests, would say the same in its own place.
    ask = (query, variables) =>
      query.startsWith("mutation ChangeExamination")
        ? Promise.reject(new TypeError("Failed to fetch"))
        : working(query, variables);
    await press("Rename");
    await type(screen.getByRole("textbox", { name: "What the piece is called" }), "Not yet stored");
    await press("Keep");
    expect(await screen.findByText(/The server cannot be reached|This page got no answer/)).toBeTruthy();
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Not yet stored");
    ask = working;
    await press("Try again");
    await settled();
    expect((await stored(id)).piece.title).toBe("Not yet stored");
  });
});

describe("[X5] a change made elsewhere meanwhile", () => {
  const changeElsewhere = (id: string) =>
    ask(CHANGE, { id, expectedVersion: 1, piece: { ...sawnChest, title: "Named elsewhere" } });
  const renameHere = async () => {
    await press("Rename");
    await type(screen.getByRole("textbox", { name: "What the piece is called" }), "Named here");
    await press("Keep");
    return screen.findByRole("alertdialog", { name: "Changed elsewhere meanwhile" });
  };

  it("shows both sides, and keeps mine over theirs when told to", async () => {
    const id = await open();
    await changeElsewhere(id);
    const dialog = await renameHere();
    const row = within(dialog).getByRole("row", { name: /^Title/ });
    expect(row.textContent).toBe("TitleChest of the testNamed hereNamed elsewhere");
    expect((await stored(id)).piece.title).toBe("Named elsewhere");
    await press("Keep mine");
    await settled();
    expect((await stored(id)).piece.title).toBe("Named here");
    await press(/^Undo/);
    await waitFor(async () => expect((await stored(id)).piece.title).toBe("Named elsewhere"));
  });

  it("is not decided by Escape", async () => {
    const id = await open();
    await changeElsewhere(id);
    const dialog = await renameHere();
    await act(async () => void fireEvent.keyDown(dialog, { key: "Escape" }));
    expect(screen.getByRole("alertdialog", { name: "Changed elsewhere meanwhile" })).toBeTruthy();
    await press("Keep mine");
    await settled();
    expect((await stored(id)).piece.title).toBe("Named here");
  });

  it("takes theirs when told to, and stores nothing", async () => {
    const id = await open();
    await changeElsewhere(id);
    await renameHere();
    await press("Take theirs");
    await settled();
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Named elsewhere");
    expect((await stored(id)).version).toBe(2);
  });
});

describe("the drawing of the piece", () => {
  const drawers = { form: "form.chest-of-drawers", date: "1760/1775", region: "region.england" };

  it("[X16] chooses the part that a shape stands for", async () => {
    await open({ attribution: drawers });
    await act(async () => void fireEvent.click(screen.getByRole("tab", { name: "Drawer" })));
    const [shape] = screen.getAllByRole("button", {
      name: /^drawer bottom, inside\. Drawer bottom: cannot be/,
    });
    await act(async () => void fireEvent.click(shape as HTMLElement));
    expect(screen.getByRole("button", { name: /^Drawer bottom/, expanded: true })).toBeTruthy();
  });

  it("[X16] offers to record a part that is not recorded yet", async () => {
    const id = await open({ attribution: drawers });
    const [shape] = screen.getAllByRole("button", { name: "bracket feet: not recorded yet" });
    await act(async () => void fireEvent.click(shape as HTMLElement));
    await press("Record it");
    await settled();
    expect((await stored(id)).piece.parts.at(-1)).toEqual({ id: "bracket-feet", label: "bracket feet" });
  });

  it("[X16] leaves a form that has no drawing to the list of parts", async () => {
    await open();
    expect(screen.getByText(/There is no drawing of this form yet/)).toBeTruthy();
    expect(
      within(screen.getByRole("region", { name: "Parts" })).getAllByRole("listitem").length,
    ).toBeGreaterThan(1);
  });
});
