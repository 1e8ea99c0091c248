import { describe, expect, it } from "vitest";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { mergePieces } from "#server/domain/merge-pieces/merge-pieces.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import {
  addObservation,
  addPart,
  changeAttribution,
  changePart,
  type Edit,
  removePart,
  renamePiece,
} from "#web/examination/edit-piece.ts";
import {
  canUndo,
  openState,
  type Reply,
  withDecision,
  withEdit,
  withReply,
  withTheirs,
} from "#web/examination/examination-state.ts";
import type { StoredExamination } from "#web/examination/read-answer.ts";
import { takeSides } from "#web/examination/take-side.ts";

const part = (name: string) => id<"part">(name);
const chest = aPiece({
  parts: ["case", { id: "drawers", within: "case" }, { id: "bottoms", within: "drawers" }],
  observations: [
    { id: "o1", part: "bottoms", feature: "feature.arcs" },
    { id: "o2", part: "drawers", feature: "feature.pins" },
  ],
});
const stored = (piece: Piece, version = 1): StoredExamination =>
  ({ id: "examination.x", version, canUndo: true, piece }) as unknown as StoredExamination;
const renamed = { ...chest, title: "Renamed" };
const rename = renamePiece("Renamed");

describe("what two people change on one piece, on the page of one of them", () => {
  const meanwhile = (current: StoredExamination): Reply => ({
    ...{ kind: "refused", current },
    problems: [{ code: "CHANGED_MEANWHILE", message: "", path: [], instead: null }],
  });

  it("[X5] tells what both changed from what only one did, and has all that only one did stored", () => {
    const seen = { feature: id<"term">("feature.mark"), seen: "present", sureness: "sure" } as const;
    const mine = withEdit(
      withEdit(openState(stored(chest)), rename),
      addObservation({ ...seen, part: part("case") }),
    );
    const theirs = addPart("back", undefined)({ ...chest, title: "Theirs" });
    const { state, isMore } = withReply(mine, mine.piece, meanwhile(stored(theirs, 7)));
    expect([state.stored.version, state.standing.kind, isMore]).toEqual([7, "saving", true]);
    expect(state.piece).toMatchObject({ title: "Theirs", parts: theirs.parts });
    expect(state.piece.observations.length).toBe(chest.observations.length + 1);
    expect(state.collisions).toEqual([{ base: chest, mine: mine.piece }]);
    expect(canUndo(state)).toBe(false);

    const kept = withReply(state, state.piece, {
      kind: "changed",
      examination: stored(state.piece, 8),
    }).state;
    expect([kept.standing.kind, kept.collisions.length]).toEqual(["saved", 1]);
    expect(withDecision(kept, undefined)).toEqual({ ...kept, collisions: [] });
    const { conflicts } = mergePieces(chest, mine.piece, kept.piece);
    const decided = withDecision(kept, takeSides(conflicts, "mine"));
    expect(decided).toMatchObject({ collisions: [], standing: { kind: "saving" } });
    expect(decided.piece).toEqual({ ...kept.piece, title: "Renamed" });
  });

  it("[X22] shows what somebody else stored, and keeps what could not be stored here beside it", () => {
    const edited = withEdit(openState(stored(chest)), rename);
    const lost = withReply(edited, edited.piece, { kind: "unreachable", says: "" }).state;
    const theirs = addPart("back", undefined)(chest);
    const state = withTheirs(lost, stored(theirs, 5));
    expect(state).toMatchObject({ stored: { version: 5 }, standing: { kind: "unreachable" } });
    expect(state.piece).toEqual({ ...theirs, title: "Renamed" });
    expect(state.collisions).toEqual([]);
  });

  it("[X23] takes what was typed while somebody else stored something as a change of what was there when it was begun", () => {
    const theirs = withTheirs(openState(stored(chest)), stored({ ...chest, title: "Theirs" }, 2));
    const other = withEdit(theirs, changeAttribution({ date: "1780" }), chest);
    expect(other.piece).toMatchObject({ title: "Theirs", attribution: { date: "1780" } });
    expect([other.collisions, other.standing.kind]).toEqual([[], "saving"]);
    const same = withEdit(theirs, rename, chest);
    expect([same.piece.title, same.standing.kind]).toEqual(["Theirs", "saved"]);
    expect(same.collisions).toEqual([{ base: chest, mine: renamed }]);
  });

  it.each<[string, Edit, Edit]>([
    ["the title", renamePiece("Mine"), renamePiece("Theirs")],
    ["a member of what is claimed", changeAttribution({ date: "1700" }), changeAttribution({ date: "1800" })],
    [
      "a member of a part",
      changePart(part("case"), { label: "M" }),
      changePart(part("case"), { label: "T" }),
    ],
    ["a part that one took away", removePart(part("bottoms")), changePart(part("bottoms"), { label: "T" })],
    [
      "a part that the other took away",
      changePart(part("bottoms"), { label: "M" }),
      removePart(part("bottoms")),
    ],
  ])("[X5] makes either side stand: %s", (_, mine, theirs) => {
    const { piece, conflicts } = mergePieces(chest, mine(chest), theirs(chest));
    expect(conflicts.length).toBeGreaterThan(0);
    for (const [side, made] of [
      ["mine", mine(chest)],
      ["theirs", theirs(chest)],
    ] as const) {
      const { title, attribution, parts } = takeSides(conflicts, side)(piece);
      expect({ title, attribution, parts }).toEqual({
        ...{ title: made.title, attribution: made.attribution, parts: made.parts },
      });
    }
  });
});
