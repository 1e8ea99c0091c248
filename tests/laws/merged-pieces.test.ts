import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPiece } from "#server/domain/check-piece.ts";
import type { Observation, Part, Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { mergePieces } from "#server/domain/merge-pieces/merge-pieces.ts";
import { aPiece } from "#tests/support/build-piece.ts";

const part = (name: string, label = name): Part => ({ id: id(name), label });
const seen = (name: string, on: string, how: Observation["seen"], note?: string): Observation => ({
  ...{ id: id(name), part: id(on), feature: id("feature.mark"), seen: how, sureness: "sure" },
  ...(note === undefined ? {} : { note }),
});

/** A change of a piece as somebody makes it; it leaves a sound piece sound. */
type Step = (piece: Piece) => Piece;
const names = fc.constantFrom("a", "b", "c", "d");
const anyStep: fc.Arbitrary<Step> = fc.oneof(
  names.map(
    (name): Step =>
      (piece) => ({ ...piece, title: `title ${name}` }),
  ),
  fc.constantFrom("1760", "1780/1790").map(
    (date): Step =>
      (piece) => ({ ...piece, attribution: { ...piece.attribution, date } }),
  ),
  fc.tuple(names, names).map(
    ([name, label]): Step =>
      (piece) => ({
        ...piece,
        parts: [...piece.parts.filter((each) => each.id !== name), part(name, label)],
      }),
  ),
  names.map(
    (name): Step =>
      (piece) => ({
        ...piece,
        parts: piece.parts.filter((each) => each.id !== name),
        observations: piece.observations.filter((each) => each.part !== name),
        together: piece.together.filter((group) => !group.includes(id(name))),
      }),
  ),
  fc
    .tuple(
      fc.constantFrom("o1", "o2", "o3"),
      names,
      fc.constantFrom<Observation["seen"]>("present", "absent"),
      fc.option(names),
    )
    .map(
      ([name, on, how, note]): Step =>
        (piece) =>
          piece.parts.some((each) => each.id === on)
            ? {
                ...piece,
                observations: [
                  ...piece.observations.filter((each) => each.id !== name),
                  seen(name, on, how, note ?? undefined),
                ],
              }
            : piece,
    ),
  fc.tuple(names, names).map(
    ([one, two]): Step =>
      (piece) =>
        one !== two &&
        [one, two].every((name) => piece.parts.some((each) => each.id === name)) &&
        piece.together.length === 0
          ? { ...piece, together: [[id(one), id(two)]] }
          : piece,
  ),
);
const begun: Piece = {
  ...aPiece(),
  parts: [part("a"), part("b")],
  observations: [seen("o1", "a", "present")],
  together: [],
  separate: [],
};
const anySteps = fc.array(anyStep, { maxLength: 5 });
const after = (piece: Piece, steps: readonly Step[]): Piece =>
  steps.reduce((each, step) => step(each), piece);
const anyThree = fc.tuple(anySteps, anySteps, anySteps).map(([first, own, other]) => {
  const base = after(begun, first);
  return { base, mine: after(base, own), theirs: after(base, other) };
});
/** The same piece whatever the order of its lists. */
const plain = (piece: Piece) => ({
  ...piece,
  ...{ parts: new Set(piece.parts), observations: new Set(piece.observations) },
  ...{
    together: new Set(piece.together.map((group) => [...group].sort())),
    separate: new Set(piece.separate),
  },
});

describe("[Z1] two changes of one piece brought together", () => {
  it("are the one that there is, where the other changed nothing", () => {
    fc.assert(
      fc.property(anyThree, ({ base, mine }) => {
        expect(mergePieces(base, mine, base)).toEqual({ piece: mine, conflicts: [] });
        expect(plain(mergePieces(base, base, mine).piece)).toEqual(plain(mine));
        expect(mergePieces(base, mine, mine)).toEqual({ piece: mine, conflicts: [] });
      }),
      { numRuns: 500 },
    );
  });

  it("say the same whoever was first, and conflict in the same places", () => {
    fc.assert(
      fc.property(anyThree, ({ base, mine, theirs }) => {
        const one = mergePieces(base, mine, theirs);
        const other = mergePieces(base, theirs, mine);
        const places = ({ conflicts }: typeof one) => conflicts.map(({ path }) => path.join(" ")).sort();
        expect(places(one)).toEqual(places(other));
        if (one.conflicts.length === 0) expect(plain(one.piece)).toEqual(plain(other.piece));
      }),
      { numRuns: 500 },
    );
  });

  it("lose nothing that only one of them did, and stay a sound piece", () => {
    fc.assert(
      fc.property(anyThree, ({ base, mine, theirs }) => {
        const { piece, conflicts } = mergePieces(base, mine, theirs);
        const find = (from: Piece, name: string) => from.observations.find((each) => each.id === name);
        for (const name of ["o1", "o2", "o3"]) {
          const [was, own, other] = [find(base, name), find(mine, name), find(theirs, name)];
          if (conflicts.some(({ path }) => path[1] === name)) continue;
          if (JSON.stringify(was) === JSON.stringify(other)) expect(find(piece, name)).toEqual(own);
          if (JSON.stringify(was) === JSON.stringify(own)) expect(find(piece, name)).toEqual(other);
        }
        const twice = piece.together.flat().length !== new Set(piece.together.flat()).size;
        if (!twice)
          expect(checkPiece(piece, (name) => ({ id: name, kind: "feature", label: "mark" }))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it("keep both changes of one observation where they are of different members, and show a real conflict", () => {
    const base = { ...begun };
    const mine = { ...begun, observations: [seen("o1", "a", "present", "on both ends")] };
    const theirs = { ...begun, observations: [seen("o1", "a", "absent")] };
    expect(mergePieces(base, mine, theirs)).toEqual({
      piece: { ...begun, observations: [seen("o1", "a", "absent", "on both ends")] },
      conflicts: [],
    });
    const other = { ...begun, observations: [seen("o1", "a", "unseen")] };
    expect(mergePieces(base, other, theirs).conflicts).toEqual([
      { path: ["observations", "o1", "seen"], base: "present", mine: "unseen", theirs: "absent" },
    ]);
  });

  it("put a part back that one side of a conflict needs, whoever was first", () => {
    const base = { ...begun, parts: [part("a"), part("b"), part("c")] };
    const mine = { ...base, observations: [seen("o1", "b", "present")] };
    const theirs = { ...base, parts: [part("a"), part("c")], observations: [seen("o1", "c", "present")] };
    for (const { piece, conflicts } of [mergePieces(base, mine, theirs), mergePieces(base, theirs, mine)]) {
      expect(piece.parts.map((each) => each.id).sort()).toEqual(["a", "b", "c"]);
      expect(conflicts.map(({ path }) => path.join(" "))).toEqual(["observations o1 part", "parts b"]);
    }
  });

  it("put a part back that one took away and the other looked at, and say so", () => {
    const mine = { ...begun, parts: [part("a")] };
    const theirs = { ...begun, observations: [...begun.observations, seen("o2", "b", "present")] };
    const { piece, conflicts } = mergePieces(begun, mine, theirs);
    expect(piece.parts.map((each) => each.id)).toEqual(["a", "b"]);
    expect(conflicts).toEqual([{ path: ["parts", "b"], base: part("b"), theirs: part("b") }]);
  });
});
