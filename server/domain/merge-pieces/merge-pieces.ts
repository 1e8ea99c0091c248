import type { Part, Piece } from "../examination.ts";
import { mergeGroups, mergeLists } from "./merge-lists.ts";
import { type Conflict, mergeMembers, mergeValue } from "./merge-value.ts";

/** A piece with the changes of two people, and what they changed in different ways, where theirs stands for the moment. */
export interface MergedPiece {
  readonly piece: Piece;
  readonly conflicts: readonly Conflict[];
}

/**
 * Brings two changes of one piece together, observation by observation: `mine` and `theirs` were both made on `base`. What only
 * one changed is as that one left it. What both changed otherwise is a conflict, as is a part that one took away while the other
 * put something on it. Who calls checks the piece as any other.
 */
export function mergePieces(base: Piece, mine: Piece, theirs: Piece): MergedPiece {
  const conflicts: Conflict[] = [];
  const tell = (conflict: Conflict): void => void conflicts.push(conflict);
  const of = <Name extends keyof Piece>(name: Name) => ({
    base: base[name],
    mine: mine[name],
    theirs: theirs[name],
  });
  const plain = <Name extends keyof Piece>(name: Name): Pick<Piece, Name> => {
    const value = mergeValue<Piece[Name]>(of(name), [name], tell);
    return (value === undefined ? {} : { [name]: value }) as Pick<Piece, Name>;
  };
  const observations = mergeLists(of("observations"), ["observations"], tell);
  const piece: Piece = {
    ...plain("title"),
    ...plain("invented"),
    ...plain("note"),
    ...plain("examined"),
    attribution: mergeMembers(of("attribution"), ["attribution"], tell),
    parts: mergeLists(of("parts"), ["parts"], tell),
    observations,
    together: mergeGroups(of("together")),
    separate: mergeGroups(of("separate")),
    ...plain("odds"),
  };
  const places = conflicts.flatMap(placesIn);
  return { piece: withMissingParts(piece, places, [base, mine, theirs], tell), conflicts };
}

/** The parts that something is on, or lies within, by either side of a conflict: whichever is to stand, its part has to be there. */
const placesIn = ({ path, mine, theirs }: Conflict): readonly string[] =>
  path[2] === "part" || path[2] === "within"
    ? [mine, theirs].filter((place) => typeof place === "string")
    : [];

/** Puts back parts that something is still on, or may be, and tells of each. */
function withMissingParts(
  piece: Piece,
  places: readonly string[],
  readings: readonly [Piece, Piece, Piece],
  tell: (conflict: Conflict) => void,
): Piece {
  const there = new Set<string>(piece.parts.map(({ id }) => id));
  const needed = [
    ...places,
    ...piece.observations.map(({ part }) => part),
    ...piece.parts.flatMap(({ within }) => within ?? []),
    ...piece.together.flat(),
    ...piece.separate.flat(),
  ];
  const missing = [...new Set<string>(needed)].filter((id) => !there.has(id));
  if (missing.length === 0) return piece;
  const back = missing.flatMap((id): readonly Part[] => {
    const [base, mine, theirs] = readings.map(({ parts }) => parts.find((part) => part.id === id));
    tell({
      path: ["parts", id],
      ...(base ? { base } : {}),
      ...(mine ? { mine } : {}),
      ...(theirs ? { theirs } : {}),
    });
    return (theirs ?? mine ?? base) ? [(theirs ?? mine ?? base) as Part] : [];
  });
  if (back.length === 0) return piece;
  return withMissingParts({ ...piece, parts: [...piece.parts, ...back] }, places, readings, tell);
}
