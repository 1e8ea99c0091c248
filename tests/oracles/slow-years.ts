import type { Claim, Dated, NotFoundIn, Requires, Scope } from "#server/domain/claim.ts";
import type { TermId } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import type { Term } from "#server/domain/term.ts";

/**
 * The years in which a term can have been made, by definition and by trying: a set of years is an array of booleans over
 * FIRST..LAST, whose two ends stand for all years before and after. All terms start with all years and lose what some
 * claim forbids until nothing changes, which needs no memo and no special case for cycles. Rules E1-E12 of docs/spec.
 */
export const FIRST = 1660;
export const LAST = 1800;
export const GRID: readonly number[] = Array.from({ length: LAST - FIRST + 1 }, (_, index) => FIRST + index);

export interface SlowContext {
  readonly claims: readonly Claim[];
  readonly terms: ReadonlyMap<TermId, Term>;
  readonly region?: TermId | undefined;
  readonly form?: TermId | undefined;
  readonly part?: TermId | undefined;
  readonly reading: "outer" | "inner";
  readonly hardness: "physical" | "practice";
  readonly withFallback: boolean;
}

/** The term and all its broader terms. */
export function upFrom(term: TermId | undefined, terms: ReadonlyMap<TermId, Term>): TermId[] {
  return term === undefined ? [] : [term, ...upFrom(terms.get(term)?.broader, terms)];
}

const DIMENSIONS = ["region", "form", "part"] as const;
const scopeOf = (claim: Claim): Scope => ("scope" in claim ? claim.scope : {});
const applies = (claim: Claim, at: SlowContext): boolean =>
  DIMENSIONS.every(
    (d) => scopeOf(claim)[d] === undefined || upFrom(at[d], at.terms).includes(scopeOf(claim)[d] as TermId),
  );

const isNarrower = (a: TermId | undefined, b: TermId | undefined, at: SlowContext): boolean =>
  b === undefined ? a !== undefined : a !== undefined && a !== b && upFrom(a, at.terms).includes(b);
function overrides(a: Claim, b: Claim, at: SlowContext): boolean {
  const dims = DIMENSIONS.map((d) => [scopeOf(a)[d], scopeOf(b)[d]] as const);
  return (
    dims.every(([x, y]) => x === y || isNarrower(x, y, at)) && dims.some(([x, y]) => isNarrower(x, y, at))
  );
}

/** First year of the subject that a claim of existence asserts, and the last year its date allows, under the reading. */
function ends(claim: Dated | NotFoundIn, reading: SlowContext["reading"]): [number, number] {
  const period =
    claim.relation === "current" || claim.relation === "active" || claim.relation === "not found in";
  const dating = readDating(claim.when ?? "../..", period ? "period" : "event");
  if (isProblem(dating)) throw new Error(dating.message);
  const { begin, end, padBegin, padEnd } = dating;
  return reading === "outer"
    ? [begin[0] - padBegin, end[1] + padEnd]
    : [begin[1] + padBegin, end[0] - padEnd];
}

/** Begin and end that a dated claim allows under the reading. */
export function window(claim: Dated | NotFoundIn, reading: SlowContext["reading"]): [number, number] {
  const [from, until] = ends(claim, reading);
  if (claim.relation === "introduced" || claim.relation === "common from") return [from, Infinity];
  if (claim.relation === "discontinued" || claim.relation === "common until") return [-Infinity, until];
  return [from, until];
}
const within = (year: number, [from, until]: readonly [number, number]): boolean =>
  from <= year && year <= until;
const flip = (reading: SlowContext["reading"]) => (reading === "outer" ? "inner" : "outer");

const BOUNDING = ["introduced", "common from", "discontinued", "common until", "current", "active"];
const EXISTENCE = ["introduced", "attested", "common from", "current", "active"];
const isDated = (claim: Claim): claim is Dated => BOUNDING.includes(claim.relation);

function earliestAnywhere(term: TermId, at: SlowContext): number {
  const own = at.claims.filter((claim) => "subject" in claim && claim.subject === term);
  const floors = own.filter((claim) => claim.relation === "introduced" && claim.hardness === "physical");
  const covered = own.some(
    (claim) =>
      (claim.relation === "introduced" || claim.relation === "active") &&
      claim.hardness === "physical" &&
      applies(claim, at),
  );
  if (!at.withFallback || floors.length === 0 || covered) return -Infinity;
  const begins = own.filter((claim): claim is Dated => EXISTENCE.includes(claim.relation));
  const gone = own.filter(
    (claim): claim is Dated => claim.relation === "common until" || claim.relation === "discontinued",
  );
  const earliest = Math.min(...begins.map((claim) => ends(claim, "outer")[0]));
  if (gone.some((claim) => ends(claim, "outer")[0] < earliest)) return -Infinity;
  return Math.min(...begins.map((claim) => ends(claim, at.reading)[0]));
}

/** Whether each year of the grid passes the term's own claims of one hardness. */
function ownYears(term: TermId, hardness: SlowContext["hardness"], at: SlowContext): boolean[] {
  const mine = at.claims.filter(
    (claim) =>
      "subject" in claim &&
      claim.subject === term &&
      "hardness" in claim &&
      claim.hardness === hardness &&
      applies(claim, at),
  );
  const dated = mine
    .filter(isDated)
    .filter((c) => !mine.some((other) => other.relation === c.relation && overrides(other, c, at)));
  const groups = Map.groupBy(dated, (claim) =>
    JSON.stringify([claim.relation, DIMENSIONS.map((d) => claim.scope[d] ?? null)]),
  );
  const floor = hardness === "physical" ? earliestAnywhere(term, at) : -Infinity;
  return GRID.map((year) => {
    const passes = [...groups.values()].every((rivals) => {
      const allowed = rivals.map((claim) => within(year, window(claim, at.reading)));
      return at.reading === "outer" ? allowed.some(Boolean) : allowed.every(Boolean);
    });
    const regional = mine.every((claim) => {
      if (claim.relation === "confined to")
        return claim.regions.some((region) => upFrom(at.region, at.terms).includes(region));
      if (claim.relation === "not found in")
        return claim.when !== undefined && !within(year, window(claim, flip(at.reading)));
      return true;
    });
    return passes && regional && year >= floor;
  });
}

/** Years of every term at once, possible (physical claims alone) or usual (practice claims too). */
export function slowYears(at: SlowContext): Map<TermId, boolean[]> {
  const kinds = at.hardness === "physical" ? (["physical"] as const) : (["physical", "practice"] as const);
  const own = new Map(
    [...at.terms.keys()].map((term) => {
      const sets = kinds.map((kind) => ownYears(term, kind, at));
      return [term, GRID.map((_, i) => sets.every((set) => set[i]))];
    }),
  );
  const lists = at.claims.filter(
    (claim): claim is Requires =>
      claim.relation === "requires" &&
      claim.closed &&
      (kinds as readonly string[]).includes(claim.hardness) &&
      applies(claim, at),
  );
  const nearest = lists.filter(
    (list) =>
      !lists.some(
        (other) =>
          other.subject === list.subject && other.hardness === list.hardness && overrides(other, list, at),
      ),
  );
  const years = new Map([...own].map(([term]) => [term, GRID.map(() => true)]));
  for (let changed = true; changed; ) {
    changed = false;
    for (const [term, now] of years) {
      const next = GRID.map((_, i) => {
        const made = nearest
          .filter((list) => list.subject === term)
          .every((list) => list.ways.some((way) => way.every((needed) => years.get(needed)?.[i] ?? true)));
        return (own.get(term)?.[i] ?? true) && made;
      });
      if (next.some((can, i) => can !== now[i])) {
        years.set(term, next);
        changed = true;
      }
    }
  }
  return years;
}
