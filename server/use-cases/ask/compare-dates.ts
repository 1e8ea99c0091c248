import type { Claim, Dated, Relation } from "../../domain/claim.ts";
import { readDating } from "../../domain/dating.ts";
import type { TermId } from "../../domain/ids.ts";
import { isProblem } from "../../domain/problem.ts";
import { roleOfRelation } from "../../domain/role-of-relation.ts";
import type { Span, Year } from "../../domain/years.ts";

/** Relations that tell of one turn in the life of a thing: its beginning, its becoming common, its end. */
const TURNS: readonly (readonly Relation[])[] = [
  ["introduced", "attested", "current"],
  ["common from"],
  ["common until", "discontinued"],
];
const END = 2;

/** A dated claim of a place beside one on the same subject elsewhere. */
export interface DatesBeside {
  readonly subject: TermId;
  readonly here: Dated;
  readonly there: Dated;
  /** Fewest and most years that `here` is later, by every reading of both dates; null where nothing bounds it. */
  readonly lag: readonly [Year | null, Year | null];
}

interface Turn {
  readonly claim: Dated;
  readonly years: Span;
}

/**
 * For each subject, form, kind of part and turn: the first date of `here` (the last, of an end) beside that of the first
 * of `places` that has one. Each of `places` is the claims of one place, the nearest first. Two dates of one relation are
 * taken before two of different ones. The longest lag comes first.
 */
export function compareDates(
  here: readonly Claim[],
  places: readonly (readonly Claim[])[],
): readonly DatesBeside[] {
  const ours = turnsByKey(here);
  const theirs = places.map(turnsByKey);
  const found: DatesBeside[] = [];
  for (const [key, turns] of ours) {
    const others = theirs.map((place) => place.get(key)).find((place) => place !== undefined);
    if (others === undefined) continue;
    const isEnd = key.startsWith(`${END} `);
    const shared = turns.filter(({ claim }) =>
      others.some((other) => other.claim.relation === claim.relation),
    );
    const mine = pick(shared.length > 0 ? shared : turns, isEnd);
    const same = others.filter(({ claim }) => claim.relation === mine.claim.relation);
    const other = pick(same.length > 0 ? same : others, isEnd);
    found.push({
      subject: mine.claim.subject,
      here: mine.claim,
      there: other.claim,
      lag: [finite(mine.years[0] - other.years[1]), finite(mine.years[1] - other.years[0])],
    });
  }
  return found.sort((a, b) => middle(b.lag) - middle(a.lag));
}

const finite = (years: number): Year | null => (Number.isFinite(years) ? years : null);
const middle = ([least, most]: DatesBeside["lag"]): number =>
  ((least ?? most ?? 0) + (most ?? least ?? 0)) / 2;

function turnsByKey(claims: readonly Claim[]): ReadonlyMap<string, readonly Turn[]> {
  const turns = new Map<string, Turn[]>();
  for (const claim of claims) {
    const turn = TURNS.findIndex((relations) => relations.includes(claim.relation));
    if (turn < 0 || !("when" in claim) || claim.relation === "not found in") continue;
    const years = yearsOf(claim);
    if (years === undefined) continue;
    const key = `${turn} ${claim.subject} ${claim.scope.form ?? "*"} ${claim.scope.part ?? "*"}`;
    turns.set(key, [...(turns.get(key) ?? []), { claim, years }]);
  }
  return turns;
}

/** When the thing began, or for an end was last there; pads are counted in. */
function yearsOf(claim: Dated): Span | undefined {
  const dating = readDating(claim.when, roleOfRelation(claim.relation));
  if (isProblem(dating)) return undefined;
  const [first, last] = dating.begin;
  if (!Number.isFinite(first) && !Number.isFinite(last)) return undefined;
  return [first - dating.padBegin, last + dating.padBegin];
}

function pick(turns: readonly Turn[], isEnd: boolean): Turn {
  const sorted = turns.toSorted((a, b) => (isEnd ? b.years[1] - a.years[1] : a.years[0] - b.years[0]));
  return sorted[0] as Turn;
}
