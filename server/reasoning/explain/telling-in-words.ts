import { ASSUMED } from "../../domain/assumptions.ts";
import { type Claim, type Indicates, STRENGTHS, type Strength, type TypicalOf } from "../../domain/claim.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { spokenOf } from "../../domain/part-state.ts";
import type { Span, Years, YearsJson } from "../../domain/years.ts";
import { isAllYears, sameYears, yearsApart, yearsFromJson } from "../../domain/years.ts";
import type { Telling } from "../sheet/telling.ts";
import { claimInWords, type LabelOf } from "./claim-in-words.ts";
import { capitalise, listInWords } from "./list-in-words.ts";
import { HOW_STRONGLY } from "./sign-in-words.ts";
import { speaksOfStates } from "./states-in-words.ts";
import { yearsLeftInWords } from "./years-left-in-words.ts";

/** What the words of a field sheet are made from. */
export interface SheetReader {
  readonly labelOf: LabelOf;
  readonly isPlace: (term: TermId) => boolean;
  readonly claimOf: (claim: ClaimId) => Claim | undefined;
  /** The claimed years; undefined where no date is claimed. */
  readonly claimed: Span | undefined;
}

/** What of a telling its words are made from. */
type Told = Pick<Telling, "possible" | "usual" | "isAssumed" | "claims">;

/** What it would mean to see a feature: its years, what that is beside the claimed date, the state of the part. */
export function tellingInWords(telling: Told, reader: SheetReader): string {
  const claims = telling.claims.flatMap((claim) => reader.claimOf(claim) ?? []);
  const sentences = [
    ...yearsToldInWords(telling, claims),
    ...besideClaimed(telling, reader),
    ...signInWords(claims.filter((claim) => claim.relation === "indicates")),
  ];
  const typical = claims.filter((claim) => claim.relation === "typical of");
  const told =
    sentences.length > 0
      ? sentences
      : claims
          .filter(({ relation }) => relation !== "typical of")
          .map((claim) => withoutSubject(claim, reader.labelOf));
  return [...told, ...typicalInWords(typical, reader)].join(" ");
}

/** "Typical of Philadelphia: points there, rules nothing out."; places and what else it is typical of each by themselves. */
function typicalInWords(claims: readonly TypicalOf[], { labelOf, isPlace }: SheetReader): readonly string[] {
  const say = (some: readonly TypicalOf[], where: string): readonly string[] => {
    const objects = [...new Set(some.map(({ object }) => labelOf(object)))];
    return objects.length === 0
      ? []
      : [`Typical of ${listInWords(objects, "and")}: points ${where}, rules nothing out.`];
  };
  const [places, others] = [true, false].map((is) => claims.filter(({ object }) => isPlace(object) === is));
  return [...say(places ?? [], "there"), ...say(others ?? [], "to it")];
}

function yearsToldInWords({ possible, usual, isAssumed }: Told, claims: readonly Claim[]): readonly string[] {
  const [can, does] = [yearsFromJson(possible), yearsFromJson(usual)];
  const known = isAssumed ? ", as far as known" : "";
  const isNarrower = !isAllYears(does) && !sameYears(can, does);
  if (isAllYears(can)) return isNarrower ? [`${capitalise(usualInWords(usual, claims))}.`] : [];
  const habit = isNarrower ? `; ${usualInWords(usual, claims)}` : "";
  return can.length === 0
    ? ["Not of this place at any time."]
    : [`${capitalise(yearsLeftInWords("possible", possible, claims, ASSUMED))}${known}${habit}.`];
}

const usualInWords = (usual: YearsJson, claims: readonly Claim[]): string =>
  usual.length === 0 ? "not usual here at any time" : yearsLeftInWords("usual", usual, claims, ASSUMED);

/** How far it lies from the claimed date; nothing where it agrees or no date is claimed. */
function besideClaimed({ possible, usual }: Told, { claimed }: SheetReader): readonly string[] {
  if (claimed === undefined) return [];
  const hard = missBy(yearsFromJson(possible), claimed);
  if (hard !== undefined) return [`${capitalise(hard)} for the claimed date.`];
  const soft = missBy(yearsFromJson(usual), claimed);
  return soft === undefined ? [] : [`Unusual at the claimed date, ${soft}.`];
}

/** "15 years too late"; undefined where the years meet, or there are none. */
function missBy(years: Years, [first, last]: Span): string | undefined {
  const apart = yearsApart(years, [[first, last]]);
  if (apart === undefined || apart === 0) return undefined;
  const count = apart === 1 ? "1 year" : `${apart} years`;
  if (years.every((span) => span[0] > last)) return `${count} too late`;
  return years.every((span) => span[1] < first)
    ? `${count} too early`
    : `in a gap, ${count} from the nearest`;
}

/** The strongest of the signs. One that speaks for an original part speaks against it where it is missing. */
function signInWords(signs: readonly Indicates[]): readonly string[] {
  const [sign] = [...signs].sort((a, b) => rank(a.strength) - rank(b.strength));
  if (sign === undefined) return [];
  const strongly = HOW_STRONGLY[sign.strength];
  const says = `Speaks ${strongly === "" ? "" : `${strongly} `}${speaksOfStates("for", sign.states)}`;
  if (!sign.states.includes("original")) return [`${says}.`];
  const turned = spokenOf("for", sign.states).speaks === "for" ? "against it" : "for one";
  return [`${says}; looked for and not there, ${turned}.`];
}

const rank = (strength: Strength): number => STRENGTHS.indexOf(strength);

/** The claim's sentence without its subject, which stands above it. */
function withoutSubject(claim: Claim, labelOf: LabelOf): string {
  const says = claimInWords(claim, labelOf);
  const subject = "subject" in claim ? `${capitalise(labelOf(claim.subject))}: ` : "";
  return capitalise(says.startsWith(subject) ? says.slice(subject.length) : says);
}
