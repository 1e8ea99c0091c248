import type { Look, Looks } from "../../../domain/weighing/looks.ts";
import type { WeighingWords } from "../../../domain/weighing/weighing-words.ts";
import { capitalise } from "../list-in-words.ts";
import { numberInWords } from "../number-in-words.ts";
import { probabilityInWords } from "./probability-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";

function because({ wouldVoid, bits, bitsOfState, ifSeen, ifAbsent }: Look, reader: WeighingReader): string {
  if (wouldVoid.length > 0) {
    const findings = new Set(wouldVoid.flatMap(({ findings: of }) => of)).size;
    return `If it is there, ${findings === 1 ? "one contradiction falls" : `${numberInWords(findings)} contradictions fall`}.`;
  }
  if (bitsOfState > bits * 2)
    return `It would tell most of whether the part is of the first making; ${reader.claimed} then ${probabilityInWords(ifSeen)} if it is there, ${probabilityInWords(ifAbsent)} if not.`;
  return `${capitalise(reader.claimed)} would stand at ${probabilityInWords(ifSeen)} if it is there, ${probabilityInWords(ifAbsent)} if not.`;
}

/** What to look at next, and what each answer would do. */
export const looksInWords = ({ next }: Looks, reader: WeighingReader): NonNullable<WeighingWords["looks"]> =>
  next.map((look) => ({
    part: look.part,
    feature: look.feature,
    says: `${capitalise(reader.partsOf([look.part]))}: look for ${reader.termOf(look.feature)}.`,
    because: because(look, reader),
  }));
