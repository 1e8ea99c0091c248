import { describe, expect, it } from "vitest";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { pickRuleOuts } from "#server/domain/pick-rule-outs.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { performIfAllowed } from "#web/actions/action.ts";
import { isPressed, sayShortcut } from "#web/actions/shortcut.ts";
import { undoChange } from "#web/actions/undo-change.ts";
import { differences } from "#web/examination/differences.ts";
import {
  addObservation,
  addPart,
  changeAttribution,
  changeObservation,
  joinParts,
  partParts,
  removePart,
  renamePiece,
} from "#web/examination/edit-piece.ts";
import { canUndo, openState, withEdit, withReply } from "#web/examination/examination-state.ts";
import { inTreeOrder } from "#web/examination/in-tree-order.ts";
import { mayLieWithin } from "#web/examination/may-lie-within.ts";
import { problemAt, problemsElsewhere } from "#web/examination/problem-at.ts";
import type { StoredExamination } from "#web/examination/read-answer.ts";

const part = (name: string) => id<"part">(name);
const term = (name: string) => id<"term">(name);

const chest = aPiece({
  parts: ["case", { id: "drawers", within: "case" }, { id: "bottoms", within: "drawers" }],
  observations: [
    { id: "o1", part: "bottoms", feature: "feature.arcs" },
    { id: "o2", part: "drawers", feature: "feature.pins" },
  ],
  together: [["case", "drawers", "bottoms"]],
  separate: [["drawers", "bottoms"]],
});

describe("editing a piece", () => {
  it("never changes the piece it was given", () => {
    const before = JSON.stringify(chest);
    removePart(part("drawers"))(chest);
    addPart("back", undefined)(chest);
    changeObservation(id<"observation">("o1"), { seen: "absent" })(chest);
    expect(JSON.stringify(chest)).toBe(before);
  });

  it("gives each new part an id and a name of its own", () => {
    const twice = addPart("case", term("part.carcase"))(addPart("case", term("part.carcase"))(chest));
    expect(twice.parts.map(({ id: name }) => name)).toEqual([
      "case",
      "drawers",
      "bottoms",
      "case-2",
      "case-3",
    ]);
    expect(twice.parts.map(({ label }) => label)).toEqual(["case", "drawers", "bottoms", "case 2", "case 3"]);
    expect(addPart("Schlüsselloch, außen", undefined)(chest).parts.at(-1)?.id).toBe("schlusselloch-auen");
  });

  it("gives the same feature seen twice on one part two ids", () => {
    const seen = {
      part: part("case"),
      feature: term("feature.arcs"),
      seen: "present",
      sureness: "sure",
    } as const;
    const twice = addObservation(seen)(addObservation(seen)(chest));
    expect(twice.observations.slice(2).map(({ id: name }) => name)).toEqual(["case.arcs", "case.arcs-2"]);
  });

  it("takes a value away rather than storing that it is undefined", () => {
    const stated = changeAttribution({ region: term("region.england") })(chest);
    expect(stated.attribution.region).toBe("region.england");
    expect(Object.keys(changeAttribution({ region: undefined })(stated).attribution)).toEqual(["date"]);
  });

  it("[X8] removes a part with what was seen on it; what lay within it moves up", () => {
    const left = removePart(part("drawers"))(chest);
    expect(left.parts.map(({ id: name, within }) => [name, within])).toEqual([
      ["case", undefined],
      ["bottoms", "case"],
    ]);
    expect(left.observations.map((seen) => seen.id)).toEqual(["o1"]);
    expect(left.together).toEqual([["case", "bottoms"]]);
    expect(left.separate).toEqual([]);
    expect(removePart(part("bottoms"))(left).together).toEqual([]);
  });

  it("says of two parts either that they are of one origin or that they are not", () => {
    const apart = joinParts(part("case"), part("drawers"), "separate")(chest);
    expect(apart.separate).toContainEqual(["case", "drawers"]);
    expect(apart.together).toEqual([["case", "bottoms"]]);
    const joined = joinParts(part("case"), part("drawers"), "together")(apart);
    expect(joined.together).toContainEqual(["case", "drawers"]);
    expect(joined.separate).not.toContainEqual(["case", "drawers"]);
    expect(partParts(part("drawers"), part("bottoms"))(chest).separate).toEqual([]);
  });
});

describe("the tree of parts", () => {
  it("has each part after the one it lies within, and loses none", () => {
    const parts = aPiece({
      parts: [{ id: "nails", within: "back" }, "case", "back", { id: "lost", within: "gone" }],
    }).parts;
    expect(inTreeOrder(parts).map(({ part: each, depth }) => [each.id, depth])).toEqual([
      ["case", 0],
      ["back", 0],
      ["nails", 1],
      ["lost", 0],
    ]);
    const circle = aPiece({
      parts: [
        { id: "a", within: "b" },
        { id: "b", within: "a" },
      ],
    }).parts;
    expect(inTreeOrder(circle).length).toBe(2);
  });

  it("offers no part a place within itself", () => {
    const may = (other: string) => mayLieWithin(chest.parts, part("drawers"), part(other));
    expect([may("case"), may("drawers"), may("bottoms")]).toEqual([true, false, false]);
  });
});

const stored = (piece: Piece, version = 1, canBeUndone = true): StoredExamination =>
  ({ id: "examination.x", version, canUndo: canBeUndone, piece }) as unknown as StoredExamination;
const renamed = { ...chest, title: "Renamed" };
const rename = renamePiece("Renamed");

describe("what is shown and what is stored", () => {
  it("[X3] shows a change at once and takes the stored piece from the reply", () => {
    const edited = withEdit(openState(stored(chest)), rename);
    expect([edited.piece.title, edited.standing.kind]).toEqual(["Renamed", "saving"]);
    const { state, isMore } = withReply(edited, edited.piece, {
      kind: "changed",
      examination: stored(renamed, 2),
    });
    expect([state.stored.version, state.standing.kind, isMore]).toEqual([2, "saved", false]);
  });

  it("[X3] keeps what was changed while a reply was on its way, and says that it has to be sent", () => {
    const first = withEdit(openState(stored(chest)), rename);
    const reply = withReply(withEdit(first, renamePiece("Renamed again")), first.piece, {
      kind: "changed",
      examination: stored(renamed, 2),
    });
    expect([reply.state.piece.title, reply.state.stored.version, reply.isMore]).toEqual([
      "Renamed again",
      2,
      true,
    ]);
  });

  it("[X6] keeps what was refused on the page, and undo takes it back", () => {
    const sent = withEdit(openState(stored(chest, 1, false)), rename);
    const refused = withReply(sent, sent.piece, { kind: "refused", problems: [], current: null }).state;
    expect([refused.piece.title, refused.standing.kind, canUndo(refused)]).toEqual([
      "Renamed",
      "refused",
      true,
    ]);
  });

  it("[X4] does an edit made during an undo again on what the undo brought back", () => {
    const undoing = { ...openState(stored(renamed, 2)), standing: { kind: "saving" } as const };
    const edited = withEdit(undoing, addPart("back", undefined));
    const { state, isMore } = withReply(edited, undoing.piece, {
      kind: "changed",
      examination: stored(chest, 3),
    });
    expect([state.piece.title, state.piece.parts.at(-1)?.label, isMore]).toEqual([chest.title, "back", true]);
  });

  it("[X6] sends a mend that was made while the refusal was on its way", () => {
    const sent = withEdit(openState(stored(chest)), rename);
    const mended = withEdit(sent, renamePiece("Mended"));
    const { state, isMore } = withReply(mended, sent.piece, {
      kind: "refused",
      problems: [],
      current: null,
    });
    expect([state.piece.title, state.standing.kind, isMore]).toEqual(["Mended", "saving", true]);
    const settled = withReply(state, state.piece, {
      kind: "changed",
      examination: stored({ ...chest, title: "Mended" }, 2),
    });
    expect([settled.state.piece.title, settled.isMore]).toEqual(["Mended", false]);
  });

  it("[X5] lists what the two sides say differently, and nothing else", () => {
    const theirs = removePart(part("bottoms"))({ ...chest, title: "Theirs" });
    const labelOf = (name: string) => name.replace(/^[a-z]+\./, "");
    expect(differences(chest, theirs, labelOf)).toEqual([
      { of: "Title", mine: "A piece", theirs: "Theirs" },
      { of: "Part bottoms", mine: "bottoms, within drawers", theirs: null },
      { of: "arcs on bottoms", mine: "seen, sure", theirs: null },
      { of: "Of one origin", mine: "case, drawers, bottoms", theirs: null },
      { of: "Not of one origin", mine: "drawers, bottoms", theirs: null },
      { of: "Of one origin", mine: null, theirs: "case, drawers" },
    ]);
    expect(differences(chest, { ...chest }, labelOf)).toEqual([]);
  });
});

describe("problems", () => {
  const problem = (path: string[]) =>
    ({ code: "UNKNOWN_TERM", message: path.join(), path, instead: null }) as const;

  it("[X6] are found by their path, with or without the argument's name", () => {
    const problems = [problem(["piece", "attribution", "region"]), problem(["parts", "3", "within"])];
    expect(problemAt(problems, "attribution.region")?.path[0]).toBe("piece");
    expect(problemAt(problems, "parts.3.within")).toBeDefined();
    expect(problemAt(problems, "parts.2.within")).toBeUndefined();
    expect(problemsElsewhere(problems, ["attribution.region"]).map(({ path }) => path[0])).toEqual(["parts"]);
  });
});

describe("rule-outs as they are told", () => {
  const ruleOut = (name: string, hardness: string, against: string, findings: string[]) =>
    ({ id: name, hardness, against, findings }) as never;
  const all = [
    ruleOut("nail", "physical", "attribution", ["nail"]),
    ruleOut("nail and style", "practice", "attribution", ["nail", "style"]),
    ruleOut("nail by habit", "practice", "attribution", ["nail"]),
    ruleOut("saw", "practice", "attribution", ["saw"]),
    ruleOut("saw and style", "practice", "attribution", ["saw", "style"]),
    ruleOut("pins and style", "practice", "attribution", ["pins", "style"]),
    ruleOut("top and leaf", "physical", "parts", ["top", "leaf"]),
  ];
  const ids = (list: readonly { id: string }[]) => list.map((one) => one.id);

  it("[X17] tell what says something of its own, and fold what follows from it", () => {
    expect(ids(pickRuleOuts(all, "physical").told)).toEqual(["nail", "top and leaf"]);
    expect(ids(pickRuleOuts(all, "practice").told)).toEqual(["saw", "pins and style"]);
    expect(ids(pickRuleOuts(all, "practice").following)).toEqual([
      "nail and style",
      "nail by habit",
      "saw and style",
    ]);
  });

  it("[X17] leave none out", () => {
    const shown = (["physical", "practice"] as const).flatMap((hardness) => {
      const { told, following } = pickRuleOuts(all, hardness);
      return ids([...told, ...following]);
    });
    expect(shown.toSorted()).toEqual(ids(all).toSorted());
  });
});

describe("the undo action", () => {
  it("[X4] is performed only where there is something to take back", () => {
    let undone = 0;
    const undo = () => {
      undone++;
    };
    expect(performIfAllowed(undoChange, { canUndo: false, undo })).toBe(false);
    expect(performIfAllowed(undoChange, { canUndo: true, undo })).toBe(true);
    expect(undone).toBe(1);
  });

  it("[X4] answers to its keys alone", () => {
    const keys = { key: "z", ctrlKey: true, metaKey: false, shiftKey: false, altKey: false };
    const shortcut = undoChange.shortcut ?? { key: "" };
    expect(isPressed(shortcut, keys)).toBe(true);
    expect(isPressed(shortcut, { ...keys, ctrlKey: false })).toBe(false);
    expect(isPressed(shortcut, { ...keys, shiftKey: true })).toBe(false);
    expect(sayShortcut(shortcut)).toBe("Ctrl+Z");
  });
});
