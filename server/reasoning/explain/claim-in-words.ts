import type { Claim, Dated, Scope } from "../../domain/claim.ts";
import { datingInWords } from "../../domain/dating-in-words.ts";
import type { TermId } from "../../domain/ids.ts";
import type { PartState } from "../../domain/part-state.ts";
import { isProblem } from "../../domain/problem.ts";
import { readDating } from "../../domain/read-dating.ts";
import { capitalise, listInWords } from "./list-in-words.ts";

export type LabelOf = (term: TermId) => string;

/** States of a part as what the part would be. */
export const STATE_IN_WORDS: Readonly<Record<PartState, string>> = {
  original: "an original part",
  later: "a later part",
  reused: "a part taken from another piece",
  reworked: "an original part worked over since",
};

/** " in New England, on chests of drawers, on a drawer bottom"; empty without a scope. */
function scopeInWords(scope: Scope, labelOf: LabelOf): string {
  const places = [
    scope.region === undefined ? "" : ` in ${labelOf(scope.region)}`,
    scope.form === undefined ? "" : `, form: ${labelOf(scope.form)}`,
    scope.part === undefined ? "" : `, part: ${labelOf(scope.part)}`,
  ];
  return places.join("");
}

/** A date of a claim in words; as it is written where it cannot be read. */
export function whenInWords(when: string, role: "event" | "period"): string {
  const dating = readDating(when, role);
  return isProblem(dating) ? when : datingInWords(dating);
}

/** Claims are handed out again and again and never change: the date of one is put into words once. */
const whens = new WeakMap<Dated, string>();

function whenOf(claim: Dated): string {
  const known = whens.get(claim);
  if (known !== undefined) return known;
  const role = claim.relation === "current" || claim.relation === "active" ? "period" : "event";
  const when = whenInWords(claim.when, role);
  whens.set(claim, when);
  return when;
}

function datedInWords(claim: Dated, labelOf: LabelOf): string {
  const what = capitalise(labelOf(claim.subject));
  const where = scopeInWords(claim.scope, labelOf);
  const when = whenOf(claim);
  switch (claim.relation) {
    case "introduced":
      return `${what}: introduced${where}, ${when}.`;
    case "attested":
      return `${what}: on record${where}, ${when}.`;
    case "common from":
      return `${what}: in common use${where} from ${when}.`;
    case "common until":
      return `${what}: in common use${where} until ${when}.`;
    case "discontinued":
      return `${what}: last made${where} ${when}.`;
    case "current":
      return `${what}: in use${where}, ${when}.`;
    case "active":
      return `${what}: at work${where}, ${when}.`;
  }
}

const wayInWords = (way: readonly TermId[], labelOf: LabelOf): string =>
  listInWords(way.map(labelOf), "together with");

/** One claim as one sentence. Its basis, strength and citations are shown beside it, not in it. */
export function claimInWords(claim: Claim, labelOf: LabelOf): string {
  switch (claim.relation) {
    case "requires": {
      const ways = listInWords(
        claim.ways.map((way) => wayInWords(way, labelOf)),
        "or",
      );
      const what = capitalise(labelOf(claim.subject)) + scopeInWords(claim.scope, labelOf);
      return claim.closed
        ? `${what}: can only come of ${ways}.`
        : `${what}: comes of ${ways}, or of other ways not listed.`;
    }
    case "typical of":
      return `${capitalise(labelOf(claim.subject))}${scopeInWords(claim.scope, labelOf)}: usual for ${labelOf(claim.object)}.`;
    case "confined to":
      return `${capitalise(labelOf(claim.subject))}${scopeInWords(claim.scope, labelOf)}: made only in ${listInWords(claim.regions.map(labelOf), "or")}.`;
    case "not found in": {
      const years = claim.when === undefined ? "" : `, ${whenInWords(claim.when, "period")}`;
      return `${capitalise(labelOf(claim.subject))}: not found${scopeInWords(claim.scope, labelOf)}${years}.`;
    }
    case "spread to": {
      const [least, most] = claim.years;
      const years = least === most ? `${least}` : `${least} to ${most}`;
      return `${capitalise(labelOf(claim.subject))}: took ${years} years to pass from ${labelOf(claim.from)} to ${labelOf(claim.to)}.`;
    }
    case "indicates": {
      const states = listInWords(
        claim.states.map((state) => STATE_IN_WORDS[state]),
        "or",
      );
      return `${capitalise(labelOf(claim.subject))}${scopeInWords(claim.scope, labelOf)}: speaks for ${states}.`;
    }
    case "void when":
      return `Says nothing where there is ${labelOf(claim.condition)}${claim.anywhere ? " anywhere on the piece" : " on the same part"}.`;
    default:
      return datedInWords(claim, labelOf);
  }
}
