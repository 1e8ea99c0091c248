import type { Hardness } from "../domain/claim.ts";
import type { Finding, SilenceReason, YearSets } from "../domain/report.ts";
import {
  ALL_YEARS,
  isAllYears,
  isEmpty,
  isWithin,
  join,
  meet,
  NO_YEARS,
  type Span,
  type Years,
  yearsApart,
  yearsToJson,
} from "../domain/years.ts";
import { type Holding, NOTHING_HELD, supportOf } from "./atoms.ts";
import type { Check, Subject } from "./check.ts";
import type { Allowed } from "./claim-years.ts";
import { derive } from "./derive.ts";
import type { KnownGraph } from "./known-graph.ts";
import { openOnlyBy } from "./open-only-by.ts";
import { pathsOf } from "./paths.ts";
import { claimsSetAside } from "./set-aside.ts";
import { causesOfSilence, type Silence } from "./silence.ts";
import { findSupport } from "./support.ts";
import type { Sets } from "./view.ts";
import { waysBlocks } from "./ways.ts";

/** A finding with what later stages need of it besides. */
export interface Found {
  readonly check: Check;
  readonly finding: Finding;
  /** Over all places. */
  readonly sets: Sets;
  readonly silences: readonly Silence[];
}

const ALL: Allowed = { outer: ALL_YEARS, inner: ALL_YEARS };

/** Holds one check against the graph and the claimed years (E14 to E21). */
export function find(check: Check, { graph, claimed, assumptions }: Subject): Found {
  const told = tell(check, claimed);
  if (told === undefined) return notSeen(check);
  const { sets, verdict, silences } = told;
  const [held, level] = supportFor(check, verdict, sets, claimed);
  const support = supportOf(held);
  const derivation = derive(check, held, level, graph);
  const reasons = [...new Set(silences.map(({ reason }) => reason))];
  const finding: Finding = {
    ...headOf(check),
    ...verdict,
    ...(verdict.label === "silent" || !isDoubtful(support.claims, graph) ? {} : { doubtful: true }),
    ...(reasons[0] === undefined ? {} : { reason: reasons[0] }),
    reasons,
    possible: toJson(sets.possible),
    usual: toJson(sets.usual),
    openOnlyBy: verdict.label === "consistent" ? openOnlyBy(check, claimed) : [],
    support,
    ...(derivation === undefined ? {} : { derivation }),
    ways: waysBlocks(check, claimed),
    ...pathsOf({ check, claimed, graph, first: support.claims, atMost: assumptions.pathsListed }),
    setAside: claimsSetAside(check, support.claims),
    voidIf: support.claims.flatMap((claim) => check.exceptions.voidIf(claim)),
  };
  return { check, finding, sets, silences };
}

/** What a check comes to, without what it rests on; nothing for what was not seen. */
export function tell(check: Check, claimed: Span) {
  if (check.seen !== "present") return undefined;
  const sets = setsOverPlaces(check);
  const verdict = verdictOn(sets, claimed);
  return { sets, verdict, silences: verdict.label === "silent" ? causesOfSilence(check) : [] };
}

/** Outer sets are the union over places, inner sets the intersection. */
export function setsOverPlaces({ views, feature }: Check): Sets {
  const all = views.map((view) => view.sets(feature));
  const over = (of: (sets: Sets) => Allowed): Allowed => ({
    outer: all.map((sets) => of(sets).outer).reduce(join, NO_YEARS),
    inner: all.map((sets) => of(sets).inner).reduce(meet, ALL_YEARS),
  });
  return { possible: over((sets) => sets.possible), usual: over((sets) => sets.usual) };
}

type Verdict = Pick<Finding, "label" | "hardness" | "direction" | "gapYears" | "certain" | "marginal">;

export function verdictOn({ possible, usual }: Sets, claimed: Span): Verdict {
  const misses = (years: Years): boolean => isEmpty(meet(years, [claimed]));
  if (isAllYears(usual.outer)) return { label: "silent" };
  if (misses(possible.outer)) return contradiction("physical", possible.outer, claimed);
  if (misses(usual.outer)) return contradiction("practice", usual.outer, claimed);
  return { label: "consistent", certain: isWithin([claimed], usual.inner), marginal: misses(usual.inner) };
}

function contradiction(hardness: Hardness, years: Years, claimed: Span): Verdict {
  const gapYears = yearsApart(years, [claimed]);
  return {
    ...{ label: "contradictory", hardness, direction: directionOf(years, claimed) },
    ...(gapYears === undefined ? {} : { gapYears }),
  };
}

function directionOf(years: Years, [first, last]: Span): NonNullable<Finding["direction"]> {
  if (isEmpty(years)) return "nowhere";
  if (years.every((span) => span[0] > last)) return "late";
  return years.every((span) => span[1] < first) ? "early" : "gap";
}

function supportFor(check: Check, verdict: Verdict, { usual }: Sets, claimed: Span): [Holding, Hardness] {
  if (verdict.label === "silent") return [NOTHING_HELD, "practice"];
  const level = verdict.hardness ?? "practice";
  const goal = verdict.label === "contradictory" ? { miss: [claimed] } : { give: usual.outer };
  return [findSupport(check, level, goal), level];
}

const isDoubtful = (claims: readonly Parameters<KnownGraph["claimOf"]>[0][], graph: KnownGraph): boolean =>
  claims.map(graph.claimOf).some((claim) => "when" in claim && graph.yearsOf(claim).doubtful);

const headOf = ({ id, observation, part, feature, seen, sureness }: Check) => ({
  id,
  ...(observation === undefined ? {} : { observation }),
  ...(part === undefined ? {} : { part }),
  ...{ feature, seen, sureness },
});

const toJson = ({ outer, inner }: Allowed): YearSets => ({
  outer: yearsToJson(outer),
  inner: yearsToJson(inner),
});

export const reasonUnseen = ({ seen }: Check): SilenceReason =>
  seen === "absent" ? "looked-for-absent" : "could-not-be-seen";

/** What was looked for and is not there, or could not be seen, does not date (E17). */
function notSeen(check: Check): Found {
  const reason = reasonUnseen(check);
  const finding: Finding = {
    ...headOf(check),
    ...{ label: "silent", reason, reasons: [reason], possible: toJson(ALL), usual: toJson(ALL) },
    ...{ openOnlyBy: [], support: { claims: [], assumptions: [] }, ways: [] },
    ...{ pathCount: 0, paths: [], setAside: [], voidIf: [] },
  };
  return { check, finding, sets: { possible: ALL, usual: ALL }, silences: [] };
}
