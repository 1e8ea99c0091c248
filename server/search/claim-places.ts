import { type Claim, EVENT_RELATIONS, PERIOD_RELATIONS } from "../domain/claim.ts";
import type { TermId } from "../domain/ids.ts";
import { isProblem } from "../domain/problem.ts";
import { readDating } from "../domain/read-dating.ts";
import { roleOfRelation } from "../domain/role-of-relation.ts";
import type { Span } from "../domain/years.ts";

/** Where and when accepted claims speak of their subjects. */
export interface ClaimPlaces {
  put(claim: Claim): void;
  /** Takes out a claim that was put in. */
  drop(claim: Claim): void;
  /**
   * Tests subjects: whether one claim about them is of these regions and can mean one of these years, as far as either
   * is asked for.
   */
  test(regions: ReadonlySet<TermId> | undefined, years: Span | undefined): (subject: TermId) => boolean;
}

/** Numbers for one claim: its regions, by number of their list, and its first and last year; turned round without a date. */
const A_CLAIM = 3;
const UNDATED: Span = [1, 0];

/** Few numbers a claim, so that a million of them take some tens of megabytes. */
export function claimPlaces(): ClaimPlaces {
  const lists: (readonly TermId[])[] = [];
  const numbers = new Map<string, number>();
  const bySubject = new Map<TermId, number[]>();

  const numberOf = (regions: readonly TermId[]): number => {
    const key = regions.join(" ");
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, lists.length);
    return lists.push(regions) - 1;
  };
  const read = (claim: Claim): readonly [TermId, number, Span] | undefined => {
    if (claim.status !== "accepted" || claim.relation === "void when") return undefined;
    return [claim.subject, numberOf(regionsOf(claim)), outerYears(claim) ?? UNDATED];
  };

  return {
    put: (claim) => {
      const place = read(claim);
      if (place === undefined) return;
      const [subject, regions, years] = place;
      const known = bySubject.get(subject);
      if (known) known.push(regions, ...years);
      else bySubject.set(subject, [regions, ...years]);
    },
    drop: (claim) => {
      const place = read(claim);
      if (place === undefined) return;
      const [subject, regions, [from, to]] = place;
      const known = bySubject.get(subject) ?? [];
      for (let at = 0; at < known.length; at += A_CLAIM)
        if (known[at] === regions && known[at + 1] === from && known[at + 2] === to) {
          known.splice(at, A_CLAIM);
          return;
        }
    },
    test: (regions, years) => {
      const areAsked = lists.map(
        (list) => regions === undefined || list.some((region) => regions.has(region)),
      );
      const [from, to] = years ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
      // Of years turned round there are none, be they asked for or claimed.
      const isNever = years !== undefined && from > to;
      return (subject) => {
        const known = isNever ? undefined : bySubject.get(subject);
        if (known === undefined) return false;
        for (let at = 0; at < known.length; at += A_CLAIM) {
          if (!areAsked[known[at] as number]) continue;
          if (years === undefined) return true;
          const first = known[at + 1] as number;
          const last = known[at + 2] as number;
          if (first <= last && first <= to && from <= last) return true;
        }
        return false;
      };
    },
  };
}

function regionsOf(claim: Claim): readonly TermId[] {
  if (claim.relation === "spread to") return [claim.from, claim.to];
  const scoped = "scope" in claim && claim.scope.region ? [claim.scope.region] : [];
  return claim.relation === "confined to" ? [...scoped, ...claim.regions] : scoped;
}

const DATED: readonly string[] = [...EVENT_RELATIONS, ...PERIOD_RELATIONS];

/** Of a dated claim: from the first year its date can mean to the last, pads left out. */
function outerYears(claim: Claim): Span | undefined {
  if (!DATED.includes(claim.relation) || !("when" in claim) || claim.when === undefined) return undefined;
  const dating = readDating(claim.when, roleOfRelation(claim.relation));
  return isProblem(dating) ? undefined : [dating.begin[0], dating.end[1]];
}
