import { describe, expect, it } from "vitest";
import type { DumpRecord } from "#server/domain/dump.ts";
import type { Store } from "#server/ports/store.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const REFUSED = "__typename ... on Refused { problems { code message path instead } }";
const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) { ${REFUSED} } }`;
const CHANGE = `mutation ($id: ID!, $piece: PieceInput!) {
  done: changeExamination(id: $id, expectedVersion: 1, piece: $piece) { ${REFUSED} }
}`;
const EXAMINE = `query ($piece: PieceInput!) { done: examine(piece: $piece) { ${REFUSED} } }`;

const part = (id: string, rest = {}) => ({ id, label: id, ...rest });
const seen = (rest: object) => ({ ...sawnChest.observations[0], ...rest });
const { attribution } = sawnChest;

/** What is wrong with each piece: the code, where, and what it might have meant. */
const UNFIT: readonly [string, object, { code: string; path: string[]; instead?: string }][] = [
  [
    "an unreadable date",
    { attribution: { ...attribution, date: "175" } },
    { code: "UNREADABLE_DATING", path: ["attribution", "date"], instead: "175X" },
  ],
  [
    "an unknown region",
    { attribution: { ...attribution, region: "region.engalnd" } },
    { code: "UNKNOWN_TERM", path: ["attribution", "region"], instead: "region.england" },
  ],
  [
    "an unknown feature",
    { observations: [seen({ feature: "feature.round-saw-mark" })] },
    { code: "UNKNOWN_TERM", path: ["observations", "0", "feature"], instead: "feature.round-saw-marks" },
  ],
  [
    "a term of another kind",
    { attribution: { ...attribution, form: "region.england" } },
    { code: "WRONG_KIND_OF_TERM", path: ["attribution", "form"] },
  ],
  [
    "a part of itself",
    { parts: [part("carcase", { within: "bottom" }), part("bottom", { within: "carcase" })] },
    { code: "PART_OF_ITSELF", path: ["parts", "0", "within"] },
  ],
  [
    "a part of a missing part",
    { parts: [part("bottom", { within: "drawer" })] },
    { code: "UNKNOWN_PART", path: ["parts", "0", "within"] },
  ],
  [
    "an observation on a missing part",
    { observations: [seen({ part: "lid" })] },
    { code: "UNKNOWN_PART", path: ["observations", "0", "part"] },
  ],
  [
    "two parts of one id",
    { parts: [part("carcase"), part("bottom"), part("bottom")] },
    { code: "DUPLICATE_ID", path: ["parts", "2", "id"] },
  ],
  [
    "two parts both together and separate",
    { together: [["carcase", "bottom"]], separate: [["carcase", "bottom"]] },
    { code: "TOGETHER_AND_SEPARATE", path: ["separate", "0"] },
  ],
  [
    "an id with a blank in it",
    { parts: [part("carcase"), part("bottom"), part("a b")] },
    { code: "WRONG_FORMAT", path: ["parts", "2", "id"] },
  ],
  ["an empty title", { title: "" }, { code: "WRONG_FORMAT", path: ["title"] }],
  ["too long a note", { note: "x".repeat(4001) }, { code: "WRONG_FORMAT", path: ["note"] }],
  ["a year beyond all", { examined: 12_026 }, { code: "WRONG_FORMAT", path: ["examined"] }],
  ["a group of one", { together: [["carcase"]] }, { code: "WRONG_FORMAT", path: ["together", "0"] }],
];

/** All that a store holds. */
async function everythingIn(store: Store): Promise<readonly DumpRecord[]> {
  const records: DumpRecord[] = [];
  for await (const record of store.dump()) records.push(record);
  return records;
}

describe("a piece with", () => {
  it.each(UNFIT)(
    "[A5] %s is refused with a code, a place and a sentence; nothing is kept",
    async (_, rest, told) => {
      const { ask, store } = await openApi([sawGraph]);
      const piece = { ...sawnChest, ...rest };
      const { data: made } = await ask(
        "mutation ($piece: PieceInput!) { createExamination(piece: $piece) { ... on ExaminationChanged { examination { id } } } }",
        { piece: sawnChest },
      );
      const id = made.createExamination.examination.id;
      const before = await everythingIn(store);
      for (const [document, variables] of [
        [EXAMINE, { piece }],
        [CREATE, { piece }],
        [CHANGE, { id, piece }],
      ] as const) {
        const { data, errors } = await ask(document, variables);
        expect(errors).toEqual([]);
        expect(data.done.__typename).toBe("Refused");
        expect(data.done.problems).toContainEqual({
          code: told.code,
          message: expect.stringMatching(/^["A-Z].{20,}[.?]$/s),
          path: told.path,
          instead: told.instead ?? null,
        });
      }
      expect(await everythingIn(store)).toEqual(before);
    },
  );
});
