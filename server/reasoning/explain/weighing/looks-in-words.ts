import type { Look, Looks } from "../../../domain/weighing/looks.ts";
import type { WeighingWords } from "../../../domain/weighing/weighing-words.ts";
import { capitalise, listInWords } from "../list-in-words.ts";
import { numberInWords } from "../number-in-words.ts";
import { probabilityInWords } from "./probability-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";

/** What an answer does to the claimed years, both ways. */
function stands({ ifSeen, ifAbsent }: Look, { claimed }: WeighingReader): string {
  const [there, not] = [probabilityInWords(ifSeen), probabilityInWords(ifAbsent)];
  return there === not
    ? `the probability of ${claimed} is ${there} either way`
    : `the probability of ${claimed} is ${there} if it is there, ${not} if not`;
}

function because(look: Look, reader: WeighingReader): string {
  const { wouldVoid, bits, bitsOfState } = look;
  if (wouldVoid.length > 0) {
    const things = new Set(wouldVoid.flatMap(({ findings: of }) => of)).size;
    const explained =
      things === 1
        ? "one thing that speaks against the claim is explained"
        : `${numberInWords(things)} things that speak against the claim are explained`;
    return `If it is there, ${explained}; ${stands(look, reader)}.`;
  }
  if (bitsOfState > bits * 2)
    return `It tells whether the part is of the first making; ${stands(look, reader)}.`;
  return `${capitalise(stands(look, reader))}.`;
}

/** What to look at next, and what each answer would do. */
export const looksInWords = ({ next }: Looks, reader: WeighingReader): NonNullable<WeighingWords["looks"]> =>
  next.map((look) => {
    const also = look.alsoOn.length > 0 ? `, and also ${reader.partsOf(look.alsoOn)}` : "";
    return {
      part: look.part,
      feature: look.feature,
      says: `${capitalise(reader.partsOf([look.part]))}${also}: look for ${reader.termOf(look.feature)}.`,
      because: because(look, reader),
    };
  });

/** How many looks these were chosen from, and what became of the others. */
export function chosenInWords({ next, considered, leftOut, cut }: Looks): string {
  const { answered, notOfPiece, silent, alike, less } = leftOut;
  const others = listCounts([
    [silent, "would tell nothing"],
    [alike, "repeat a question or crowd a part"],
    [less, "would tell less"],
  ]);
  const unweighed = listCounts([
    [answered, "answered by what was recorded"],
    [notOfPiece, "of other pieces"],
  ]);
  return [
    next.length === 0
      ? `None of ${considered} looks would tell anything more.`
      : `${next.length} of ${considered} looks${others === "" ? "" : `; of the others, ${others}`}.`,
    ...(unweighed === "" ? [] : [`Not weighed: ${unweighed}.`]),
    ...(cut ? ["There were more; those that take most trouble were not weighed."] : []),
  ].join(" ");
}

const listCounts = (counts: readonly (readonly [number, string])[]): string =>
  listInWords(counts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`));
