import fc from "fast-check";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import { anyClaims, anyPiece } from "./any-graph.ts";

/** Dates that a piece can be said to be of, with the year it was examined in: usual ones, and the ends of what can be asked. */
const anyTime = fc.constantFrom(
  ["1740", 2026],
  ["1700/1715", 2026],
  ["1500/2000", 2026],
  ["1300/1320", 2026],
  ["2026", 2026],
  ["1400/1420", 1450],
  ["0001", 1],
  ["0005/0010", 12],
  ["1740~/1760", 1761],
  ["9990/9999", 9999],
) satisfies fc.Arbitrary<readonly [string, number]>;

const share = fc.constantFrom(0.001, 0.3, 0.999);
const anyParts = fc
  .tuple(share, share)
  .map(
    ([original, rest]): NonNullable<ChosenOdds["parts"]> => [
      { part: id("p1"), original, later: (1 - original) * rest, reused: (1 - original) * (1 - rest) },
    ],
  );
const anyOdds: fc.Arbitrary<ChosenOdds> = fc.record(
  {
    datePrior: fc.constantFrom("uniform", "as claimed", "production"),
    parts: anyParts,
    wrongClaims: fc.constantFrom(0.1, 1, 10),
    leak: fc.constantFrom(0.0001, 0.005, 0.2),
    madeToDeceive: fc.constantFrom(0.001, 0.5),
  },
  { requiredKeys: [] },
);

/** Pieces of `anyPiece` at the ends of what can be asked: of one year and of five centuries, seen, absent and not to be seen, with odds chosen. */
export const anyHardPiece: fc.Arbitrary<Piece> = fc
  .record({
    piece: anyPiece,
    time: anyTime,
    seen: fc.array(fc.constantFrom("present", "absent", "unseen"), { minLength: 5, maxLength: 5 }),
    odds: fc.option(anyOdds, { nil: undefined }),
    isTogether: fc.boolean(),
  })
  .map(({ piece, time: [date, examined], seen, odds, isTogether }) => ({
    ...piece,
    examined,
    attribution: { ...piece.attribution, date },
    observations: piece.observations.map((made, i) => ({ ...made, seen: seen[i] ?? "present" })),
    together: isTogether ? [[id<"part">("p1"), id<"part">("p2")]] : [],
    ...(odds === undefined ? {} : { odds }),
  }));

export const anyHardQuestion = fc.tuple(anyClaims, anyHardPiece);
