import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const CHANGED = `
  fragment Changed on ChangeExaminationResult {
    __typename
    ... on ExaminationChanged { examination { id version changedAt deleted canUndo piece { title observations { id } } } }
    ... on Refused { problems { code message path instead } current { id version piece { title } } }
  }`;
const CREATE = `${CHANGED} mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) { ...Changed } }`;
const CHANGE = `${CHANGED} mutation ($id: ID!, $expectedVersion: Int!, $piece: PieceInput!) {
  done: changeExamination(id: $id, expectedVersion: $expectedVersion, piece: $piece) { ...Changed }
}`;
const UNDO = `${CHANGED} mutation ($id: ID!, $expectedVersion: Int!) {
  done: undoExamination(id: $id, expectedVersion: $expectedVersion) { ...Changed }
}`;
const DELETE = `${CHANGED} mutation ($id: ID!, $expectedVersion: Int!) {
  done: deleteExamination(id: $id, expectedVersion: $expectedVersion) { ...Changed }
}`;
const LIST = "{ examinations { totalCount edges { node { id version } } } }";

/** An API with one examination in it, and its id. */
async function withChest() {
  const api = await openApi([sawGraph]);
  const { data } = await api.ask(CREATE, { piece: sawnChest });
  return { ...api, id: data.done.examination.id as string };
}

const titled = (title: string) => ({ ...sawnChest, title });

describe("examinations", () => {
  it("are created under an id that can be told by eye", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(CREATE, { piece: titled("Commode «à l’anglaise», ca. 1760!") });
    expect(errors).toEqual([]);
    expect(data.done).toEqual({
      __typename: "ExaminationChanged",
      examination: {
        id: "examination.commode-a-l-anglaise-ca-1760-s1",
        version: 1,
        changedAt: "2026-02-02T00:00:00Z",
        deleted: false,
        canUndo: false,
        piece: { title: "Commode «à l’anglaise», ca. 1760!", observations: [{ id: "o1" }] },
      },
    });
  });

  it("have an id of letters and digits under any title", async () => {
    const { ask } = await openApi([sawGraph]);
    for (const title of ["箪笥", "—", "x".repeat(200)]) {
      const { data } = await ask(CREATE, { piece: titled(title) });
      expect(data.done.examination.id).toMatch(/^examination\.(x{60}-)?s\d$/);
    }
  });

  it.each(["\u0000 null", "half a pair \ud800", "e\u0301 and é", "<script>", "'; --", "\u202e turned"])(
    "keep odd text as it was written: %j",
    async (title) => {
      const { ask } = await openApi([sawGraph]);
      const { data: made } = await ask(CREATE, { piece: { ...titled(title), note: title } });
      const { id, piece } = made.done.examination;
      expect(piece.title).toBe(title);
      const { data } = await ask("query ($id: ID!) { examination(id: $id) { piece { note } } }", { id });
      expect(data.examination.piece.note).toBe(title);
    },
  );

  it("show everything that was recorded, with terms as nodes", async () => {
    const { ask, id } = await withChest();
    const { data, errors } = await ask(
      `query ($id: ID!) { examination(id: $id) { piece {
        title invented note examined together separate
        attribution { date region { label } form { label } style { label } maker { label } }
        parts { id label kind { label } within region { label } }
        observations { id part feature { label } seen sureness note }
      } } }`,
      { id },
    );
    expect(errors).toEqual([]);
    expect(data.examination.piece).toEqual({
      ...{
        title: "Chest of the test",
        invented: true,
        note: null,
        examined: 2026,
        together: [],
        separate: [],
      },
      attribution: {
        ...{ date: "1760/1775", region: { label: "England" }, form: { label: "chest" } },
        ...{ style: null, maker: null },
      },
      parts: [
        { id: "carcase", label: "Carcase", kind: null, within: null, region: null },
        {
          id: "bottom",
          label: "Drawer bottom",
          kind: { label: "drawer bottom" },
          within: "carcase",
          region: null,
        },
      ],
      observations: [
        {
          ...{ id: "o1", part: "bottom", feature: { label: "round saw marks" } },
          ...{ seen: "PRESENT", sureness: "SURE", note: null },
        },
      ],
    });
  });

  it("are changed, and the change is taken back", async () => {
    const { ask, id } = await withChest();
    const { data: changed } = await ask(CHANGE, { id, expectedVersion: 1, piece: titled("Renamed") });
    expect(changed.done.examination).toMatchObject({
      version: 2,
      canUndo: true,
      piece: { title: "Renamed" },
    });
    const { data: undone } = await ask(UNDO, { id, expectedVersion: 2 });
    expect(undone.done.examination).toMatchObject({
      version: 3,
      canUndo: false,
      piece: { title: "Chest of the test" },
    });
    const { data: nothing } = await ask(UNDO, { id, expectedVersion: 3 });
    expect(nothing.done).toMatchObject({ __typename: "Refused", problems: [{ code: "NOTHING_TO_UNDO" }] });
  });

  it("are taken out of the list, and come back with an undo", async () => {
    const { ask, id } = await withChest();
    const { data: deleted } = await ask(DELETE, { id, expectedVersion: 1 });
    expect(deleted.done.examination).toMatchObject({ deleted: true, version: 2, canUndo: true });
    expect((await ask(LIST)).data.examinations).toEqual({ totalCount: 0, edges: [] });
    const { data: back } = await ask(UNDO, { id, expectedVersion: 2 });
    expect(back.done.examination).toMatchObject({ deleted: false, version: 3 });
    expect((await ask(LIST)).data.examinations.edges).toEqual([{ node: { id, version: 3 } }]);
  });

  it("[A6] the second of two editors is refused, and shown how it stands", async () => {
    const { ask, id } = await withChest();
    await ask(CHANGE, { id, expectedVersion: 1, piece: titled("First") });
    for (const [mutation, place, rest] of [
      [CHANGE, "title", { piece: titled("Second") }],
      [UNDO, "expectedVersion", {}],
      [DELETE, "expectedVersion", {}],
    ] as const) {
      const { data, errors } = await ask(mutation, { id, expectedVersion: 1, ...rest });
      expect(errors).toEqual([]);
      expect(data.done).toMatchObject({
        __typename: "Refused",
        problems: [{ code: "CHANGED_MEANWHILE", path: [place] }],
        current: { id, version: 2, piece: { title: "First" } },
      });
    }
    expect((await ask(LIST)).data.examinations.edges).toEqual([{ node: { id, version: 2 } }]);
  });

  it("[A6] of two changes at the same time one is made and one refused", async () => {
    const { ask, id } = await withChest();
    const answers = await Promise.all(
      ["One", "Other"].map((title) => ask(CHANGE, { id, expectedVersion: 1, piece: titled(title) })),
    );
    expect(answers.map(({ data }) => data.done.__typename).sort()).toEqual(["ExaminationChanged", "Refused"]);
    expect((await ask(LIST)).data.examinations.edges).toEqual([{ node: { id, version: 2 } }]);
  });

  it("that there are not are refused by name", async () => {
    const { ask } = await openApi([sawGraph]);
    const variables = { id: "examination.no-such", expectedVersion: 1 };
    for (const [mutation, rest] of [
      [CHANGE, { piece: sawnChest }],
      [UNDO, {}],
      [DELETE, {}],
    ] as const) {
      const { data } = await ask(mutation, { ...variables, ...rest });
      expect(data.done).toMatchObject({ problems: [{ code: "UNKNOWN_EXAMINATION" }], current: null });
    }
    const { data } = await ask('{ examination(id: "examination.no-such") { id } }');
    expect(data).toEqual({ examination: null });
  });

  it("show a term that was withdrawn since by its id", async () => {
    const { ask, id, store } = await withChest();
    const form = (await store.terms(["form.chest" as never])).get("form.chest" as never);
    if (!form) throw new Error("The graph of the test has no chest");
    await store.commit({
      ...{ by: "test", at: "2026-03-03T00:00:00Z", message: "withdraw" },
      change: [{ kind: "term", before: form }],
    });
    const { data, errors } = await ask(
      `query ($id: ID!) { examination(id: $id) {
        piece { attribution { form { id kind label } } }
        examined { ... on Refused { problems { code } } }
      } }`,
      { id },
    );
    expect(errors).toEqual([]);
    expect(data.examination).toEqual({
      piece: { attribution: { form: { id: "form.chest", kind: "FORM", label: "form.chest" } } },
      examined: { problems: [{ code: "UNKNOWN_TERM" }] },
    });
  });
});
