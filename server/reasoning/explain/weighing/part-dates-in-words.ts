import type { PartState } from "../../../domain/part-state.ts";
import type { Credible, Dates, PartDates, YearOdds } from "../../../domain/weighing/dates.ts";
import { likeliestState, tellsOfState } from "../../../domain/weighing/likely-state.ts";
import type { WeighingWords } from "../../../domain/weighing/weighing-words.ts";
import { capitalise } from "../list-in-words.ts";
import { yearsInWords } from "../years-in-words.ts";
import { likelyInWords, probabilityInWords, rangeInWords } from "./probability-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";

const WHAT: Readonly<Record<PartState, string>> = {
  original: "of the first making",
  later: "later than the piece",
  reused: "from an earlier piece",
  reworked: "of the first making, worked over since",
};

/** Years wider than this say nothing that a person would call a date. */
const WIDEST = 150;
/** Years this narrow are told to the year; wider ones by fives. */
const NARROW = 25;

/** Each group of parts: its likeliest state with the range under other assumptions, and its years. */
export function partDatesInWords(
  dates: readonly PartDates[],
  reader: WeighingReader,
): NonNullable<WeighingWords["parts"]> {
  return dates.map((part) => {
    const { parts, odds, prior } = part;
    const verb = reader.isPlural(parts) ? "are" : "is";
    const state = likeliestState(odds);
    const isPriorAlone = !tellsOfState(odds, prior);
    const subject = capitalise(reader.partsOf(parts));
    const says = isPriorAlone
      ? `${subject}: nothing seen tells; ${probabilityInWords(odds.original)} of the first making is what is assumed of such a part.`
      : `${subject} ${verb} ${likelyInWords(odds[state])} ${WHAT[state]}: ${probabilityInWords(odds[state])}${rangeOf(part, state, reader)}.`;
    const brief = `${stateInBrief(part)}${isPriorAlone ? "" : rangeOf(part, state, reader)}`;
    const when = whenInWords(part, isPriorAlone);
    return { parts, name: subject, brief, tells: !isPriorAlone, says, when };
  });
}

/** What a part most probably is, with its probability; or that nothing seen tells. */
export function stateInBrief({ odds, prior }: Pick<PartDates, "odds" | "prior">): string {
  const state = likeliestState(odds);
  return tellsOfState(odds, prior)
    ? `${likelyInWords(odds[state])} ${WHAT[state]}: ${probabilityInWords(odds[state])}`
    : `nothing seen tells; ${probabilityInWords(odds.original)} of the first making is assumed`;
}

function rangeOf({ parts }: PartDates, state: PartState, { weighing }: WeighingReader): string {
  const outcomes = weighing.sensitivity?.varied.flatMap(
    ({ parts: all }) => all.find(({ part }) => part === parts[0])?.odds[state] ?? [],
  );
  if (outcomes === undefined || outcomes.length === 0) return "";
  const range: readonly [number, number] = [Math.min(...outcomes), Math.max(...outcomes)];
  return `, ${rangeInWords(range)} under other assumptions`;
}

function whenInWords({ made, worked, odds }: PartDates, isPriorAlone: boolean): string {
  if (isPriorAlone) return "Its years follow those of the piece.";
  const when = `Made ${credibleInWords(made)}.`;
  return worked && odds.reworked > 0.2 ? `${when} Worked over ${credibleInWords(worked)}.` : when;
}

/** When the piece as a whole was made, and how the claimed years do. */
export function wholeInWords({ whole, claimed }: Dates, reader: WeighingReader): string {
  const about = probabilityInWords(claimed.posterior);
  const likeliest = isUndetermined(whole) ? "" : `, likeliest ${whole.mode}`;
  return `The piece was made ${credibleInWords(whole)}${likeliest}. ${capitalise(reader.claimed)}: ${about}, before anything was seen ${probabilityInWords(claimed.prior)}.`;
}

const widthOf = ({ credible }: Pick<YearOdds, "credible">): number =>
  credible.years.reduce((sum, [a, b]) => sum + Number(b) - Number(a) + 1, 0);

const isUndetermined = (odds: Pick<YearOdds, "credible">): boolean => widthOf(odds) > WIDEST;

/** The years that hold 95 %, or that they are undetermined. */
export function credibleInWords({ credible }: Pick<YearOdds, "credible">): string {
  const first = credible.years[0]?.[0];
  const last = credible.years.at(-1)?.[1];
  if (typeof first !== "number" || typeof last !== "number") return "at no year the model knows";
  const width = widthOf({ credible });
  if (width > WIDEST) return `between ${first} and ${last}: undetermined`;
  return yearsInWords(width > NARROW ? byFives(credible.years) : credible.years);
}

const byFives = (years: Credible["years"]): Credible["years"] =>
  years.map(([a, b]) => [Math.floor(Number(a) / 5) * 5, Math.ceil(Number(b) / 5) * 5]);
