import type { OriginCount, Origins } from "../../../domain/weighing/origins.ts";
import { capitalise, listInWords } from "../list-in-words.ts";
import { numberInWords } from "../number-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";

const LISTED = 6;

function countInWords({ atLeast, witnesses }: OriginCount, reader: WeighingReader): string {
  if (atLeast < 2) return "Nothing seen asks for more than one piece.";
  const [first] = witnesses;
  const because = first ? `: no two of ${reader.partsOf(first)} can share an origin` : "";
  return `At least ${numberInWords(atLeast)} separate pieces are in it${because}.`;
}

/** How many pieces are in it at least, and which parts must or cannot be of one. Never "exactly". */
export function originsInWords(
  { possible, usual, moreByFallback }: Origins,
  reader: WeighingReader,
): readonly string[] {
  const pairs = (all: OriginCount["alwaysApart"]): string =>
    listInWords(all.slice(0, LISTED).map((pair) => reader.partsOf(pair).replace(" and ", " with "))) +
    (all.length > LISTED ? `, and ${all.length - LISTED} more pairs` : "");
  return [
    countInWords(possible, reader),
    ...(usual.atLeast > possible.atLeast
      ? [`If habits held as well, at least ${numberInWords(usual.atLeast)}.`]
      : []),
    ...(possible.atLeast > 1 && possible.alwaysTogether.length > 0
      ? [`In every division of so few, together: ${pairs(possible.alwaysTogether)}.`]
      : []),
    ...(possible.alwaysApart.length > 0 ? [`Never together: ${pairs(possible.alwaysApart)}.`] : []),
    ...possible.impossible.map(
      (parts) =>
        `${capitalise(reader.partsOf(parts))} are recorded as of one origin, and nothing allows it: look again at both.`,
    ),
    ...(moreByFallback
      ? ["It would be more if nobody anywhere had things earlier than this graph knows; that is not counted."]
      : []),
    ...(possible.cut ? ["The search was cut short; the number holds all the same."] : []),
  ];
}
