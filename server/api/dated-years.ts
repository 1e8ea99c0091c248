import type { Dated, NotFoundIn } from "../domain/claim.ts";
import { readDating } from "../domain/dating.ts";
import { isProblem } from "../domain/problem.ts";
import { roleOfRelation } from "../domain/role-of-relation.ts";
import type { Span, Year } from "../domain/years.ts";

/** Years a dated claim can mean; null where nothing bounds an end. */
export interface DatedYears {
  readonly begin: readonly (Year | null)[];
  readonly end: readonly (Year | null)[];
  readonly padBegin: Year;
  readonly padEnd: Year;
  readonly doubtful: boolean;
}

const ends = (span: Span) => span.map((year) => (Number.isFinite(year) ? year : null));

/** Reads the date of a claim in the role that its relation gives it; undated claims have none. */
export function datedYears(claim: Dated | NotFoundIn): DatedYears | undefined {
  if (claim.when === undefined) return undefined;
  const dating = readDating(claim.when, roleOfRelation(claim.relation));
  if (isProblem(dating)) return undefined;
  return {
    begin: ends(dating.begin),
    end: ends(dating.end),
    padBegin: dating.padBegin,
    padEnd: dating.padEnd,
    doubtful: dating.doubtful,
  };
}
