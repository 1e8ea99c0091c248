import { isBlank, isId, wrong } from "./draft.ts";
import { isProblem, type Problem } from "./problem.ts";
import { readDating } from "./read-dating.ts";
import { SOURCE_KINDS, type Source } from "./source.ts";

const READINGS = ["read", "opening", "secondary", "known"];

/** What is wrong with a source by itself. */
export function checkSource(source: Source): readonly Problem[] {
  const { id, kind, csl, reading, piece } = source;
  return [
    ...(isId(id) ? [] : [wrong("The id of a source", "letters, digits, dot, hyphen, underscore", ["id"])]),
    ...(SOURCE_KINDS.includes(kind)
      ? []
      : [wrong("The kind of a source", `one of ${SOURCE_KINDS.join(", ")}`, ["kind"])]),
    ...(READINGS.includes(reading)
      ? []
      : [wrong("The reading of a source", `one of ${READINGS.join(", ")}`, ["reading"])]),
    ...(isBlank(csl?.title) ? [wrong("The title of a source", "a text", ["csl", "title"])] : []),
    ...(piece !== undefined && kind !== "documented piece"
      ? [wrong("The piece of a source", "left out unless its kind is documented piece", ["piece"])]
      : []),
    ...(piece === undefined ? [] : checkMade(piece.made)),
  ];
}

function checkMade(made: string): readonly Problem[] {
  const dating = readDating(made, "event");
  return isProblem(dating) ? [{ ...dating, path: ["piece", "made"] }] : [];
}
