import type { ClaimId } from "../../../domain/ids.ts";
import type { GivenUp, MendOption, Mends } from "../../../domain/weighing/mends.ts";
import type { MendsInWords } from "../../../domain/weighing/weighing-words.ts";
import { assumedTerm } from "../assumption-in-words.ts";
import { claimInWords } from "../claim-in-words.ts";
import { capitalise, decapitalise, listInWords } from "../list-in-words.ts";
import { yearsInWords } from "../years-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";

/** Prices in thousandths of a decade of odds: up to one in three, in thirty, in three hundred. */
function priceInWords(price: number): string {
  if (price < 500) return "easily given up";
  if (price < 1500) return "at some cost";
  if (price < 2500) return "at great cost";
  return "hardly to be given up";
}

function claimSays(claim: ClaimId, reader: WeighingReader): string {
  const found = reader.claimOf(claim);
  const says = found ? claimInWords(found, reader.labelOf) : claim;
  return decapitalise(says.replace(/\.$/, ""));
}

/** One thing given up, to stand in a list. */
function givenUpInWords(given: GivenUp, reader: WeighingReader): string {
  switch (given.kind) {
    case "later":
      return `${reader.partsOf(given.parts)} ${reader.isPlural(given.parts) ? "were" : "was"} made later`;
    case "reused":
      return `${reader.partsOf(given.parts)} ${reader.isPlural(given.parts) ? "come" : "comes"} from an earlier piece`;
    case "altered":
      return `${reader.seenOf(given.observation)} is later work on an old part`;
    case "misread":
      return `${reader.seenOf(given.observation)} was misread`;
    case "claim":
      return `a claim is wrong (${claimSays(given.claim, reader)})`;
    case "rivals":
      return `the sources that disagree are all wrong (${given.claims.map((claim) => claimSays(claim, reader)).join("; ")})`;
    case "assumption": {
      const term = assumedTerm(given.assumption);
      return term
        ? `${reader.labelOf(term)} was known earlier somewhere than this graph knows`
        : `an assumption does not hold (${given.assumption})`;
    }
    case "not-separate":
      return `${reader.partsOf(given.parts)} are of one origin after all`;
  }
}

const claimsIn = (givenUp: readonly GivenUp[]): readonly ClaimId[] =>
  givenUp.flatMap((given) =>
    given.kind === "claim" ? [given.claim] : given.kind === "rivals" ? given.claims : [],
  );

const allInWords = (givenUp: readonly GivenUp[], reader: WeighingReader): string =>
  listInWords(givenUp.map((given) => givenUpInWords(given, reader)));

function optionInWords(
  { givenUp, price }: MendOption,
  reader: WeighingReader,
): MendsInWords["perPart"][number]["options"][number] {
  return {
    says: capitalise(allInWords(givenUp, reader)),
    given: givenUp.map((given) => givenUpInWords(given, reader)),
    price: priceInWords(price),
    claims: claimsIn(givenUp),
  };
}

/** What would have to be true for the claim to stand: the cheapest story, and for each part one of several. */
export function mendsInWords(mends: Mends, reader: WeighingReader): MendsInWords {
  const { level, best, proved, perPart, movedDate } = mends;
  const stands = level === "physical" ? "to be possible" : "to stand with nothing unusual in it";
  const says =
    best === undefined
      ? `No story was found under which ${reader.claimed} could stand.`
      : best.givenUp.length === 0
        ? level === "physical"
          ? `Nothing has to be given up for ${reader.claimed} to be possible.`
          : `Nothing about ${reader.claimed} would be unusual.`
        : `For ${reader.claimed} ${stands}, at the least: ${allInWords(best.givenUp, reader)}.`;
  return {
    ...{ level, says, opening: `For ${reader.claimed} ${stands}` },
    perPart: perPart.map(({ parts, options }) => ({
      parts,
      name: parts.length === 0 ? "what is claimed" : reader.partsOf(parts),
      says: parts.length === 0 ? "What is claimed, one of:" : `${capitalise(reader.partsOf(parts))}, one of:`,
      options: options.map((option) => optionInWords(option, reader)),
    })),
    ...(movedDate && movedDate.mend.givenUp.length < (best?.givenUp.length ?? 1)
      ? { moved: movedInWords(movedDate, reader) }
      : {}),
    proved: proved
      ? "Nothing that asks less was found, and there is none."
      : "The search was cut short: something that asks less may have been missed.",
  };
}

function movedInWords({ mend, years }: NonNullable<Mends["movedDate"]>, reader: WeighingReader): string {
  const when = yearsInWords(years);
  return mend.givenUp.length === 0
    ? `If the date may be another, nothing has to be given up: ${when}.`
    : `If the date may be another (${when}), it is enough that ${allInWords(mend.givenUp, reader)}.`;
}
