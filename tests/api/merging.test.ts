import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const ANSWER = `{ __typename
  ... on ExaminationChanged { examination { version piece { title observations { id seen note } parts { id } } } }
  ... on Refused { problems { code path } current { version piece { title } } } }`;
const CREATE =
  "mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) { ... on ExaminationChanged { examination { id } } } }";
const CHANGE = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  done: changeExamination(id: $id, expectedVersion: $on, piece: $piece) ${ANSWER} }`;

const [first] = sawnChest.observations;
const seen = (id: string, rest: object = {}) => ({ ...first, id, ...rest });
const piece = (rest: object) => ({ ...sawnChest, ...rest });

async function withChest() {
  const api = await openApi([sawGraph]);
  const { data } = await api.ask(CREATE, { piece: sawnChest });
  const id = data.done.examination.id as string;
  const change = async (on: number, changed: object) => {
    const { data, errors } = await api.ask(CHANGE, { id, on, piece: changed });
    expect(errors).toEqual([]);
    return data.done;
  };
  return { ...api, id, change };
}

describe("[Z2] a change that was made on an earlier version", () => {
  it("is kept beside what others recorded meanwhile", async () => {
    const { change } = await withChest();
    await change(1, piece({ observations: [first, seen("o2")] }));
    await change(2, piece({ observations: [first, seen("o2")], title: "Called otherwise" }));
    const { examination } = await change(
      1,
      piece({ observations: [seen("o1", { note: "on both" }), seen("o3")] }),
    );
    expect(examination.version).toBe(4);
    expect(examination.piece.title).toBe("Called otherwise");
    expect(examination.piece.observations.map(({ id }: { id: string }) => id).sort()).toEqual([
      "o1",
      "o2",
      "o3",
    ]);
    expect(examination.piece.observations.find(({ id }: { id: string }) => id === "o1").note).toBe("on both");
  });

  it("is refused where both changed one thing, with where it is and how it stands, and nothing is written", async () => {
    const { change, store } = await withChest();
    await change(1, piece({ observations: [seen("o1", { seen: "ABSENT" })], title: "Theirs" }));
    const before = await store.newestWrite();
    const refused = await change(1, piece({ observations: [seen("o1", { seen: "UNSEEN" })], title: "Mine" }));
    expect(refused).toEqual({
      __typename: "Refused",
      problems: [
        { code: "CHANGED_MEANWHILE", path: ["observations", "o1", "seen"] },
        { code: "CHANGED_MEANWHILE", path: ["title"] },
      ],
      current: { version: 2, piece: { title: "Theirs" } },
    });
    expect(await store.newestWrite()).toBe(before);
  });

  it("that is sent once more, since its answer was lost, is stored once", async () => {
    const { change, store } = await withChest();
    const mine = piece({ observations: [first, seen("o2")] });
    const answer = await change(1, mine);
    const before = await store.newestWrite();
    expect(await change(1, mine)).toEqual(answer);
    expect(await store.newestWrite()).toBe(before);
  });

  it("is refused where both together contradict themselves", async () => {
    const { change } = await withChest();
    const within = (inner: string, outer: string) =>
      piece({
        parts: sawnChest.parts.map(({ within: _, ...part }) =>
          part.id === inner ? { ...part, within: outer } : part,
        ),
      });
    await change(1, piece({ parts: sawnChest.parts.map(({ within: _, ...part }) => part) }));
    await change(2, within("carcase", "bottom"));
    const refused = await change(2, within("bottom", "carcase"));
    expect(refused).toMatchObject({
      problems: [
        { code: "PART_OF_ITSELF", path: ["parts", "0", "within"] },
        { code: "PART_OF_ITSELF", path: ["parts", "1", "within"] },
      ],
      current: { version: 3 },
    });
  });

  it("of a version that there is not is refused", async () => {
    const { change } = await withChest();
    expect(await change(7, piece({ title: "Mine" }))).toMatchObject({
      problems: [{ code: "CHANGED_MEANWHILE", path: ["expectedVersion"] }],
      current: { version: 1 },
    });
  });

  it("of many at once loses none of what they recorded", async () => {
    const { change, ask, id } = await withChest();
    const many = Array.from({ length: 30 }, (_, n) => `many-${n}`);
    const answers = await Promise.all(
      many.map((name) => change(1, piece({ observations: [first, seen(name)] }))),
    );
    expect(new Set(answers.map(({ __typename }) => __typename))).toEqual(new Set(["ExaminationChanged"]));
    const { data } = await ask(
      "query ($id: ID!) { examination(id: $id) { version piece { observations { id } } } }",
      { id },
    );
    const kept = data.examination.piece.observations.map((each: { id: string }) => each.id);
    expect(kept.sort()).toEqual(["o1", ...many].sort());
    expect(data.examination.version).toBe(31);
  });
});
