import { compareText, firstDifference } from "../../domain/compare.ts";
import type { Piece } from "../../domain/examination.ts";
import { id, type TermId } from "../../domain/ids.ts";
import type { Move } from "../../domain/looking.ts";
import type { Report } from "../../domain/report.ts";
import type { Term } from "../../domain/term.ts";
import type { Look, Looks } from "../../domain/weighing/looks.ts";
import type { AssumedOdds, StateOdds } from "../../domain/weighing/odds.ts";
import { significant } from "../../domain/weighing/significant.ts";
import { type Check, readSubject, type Subject } from "../check.ts";
import { type Placing, placingOf } from "../dates/placing.ts";
import { type Posterior, statesOf, weighModel } from "../dates/posterior.ts";
import { modelReader } from "../dates/read-model.ts";
import { curveIsRight } from "../dates/right-odds.ts";
import { seenOdds } from "../dates/seen-odds.ts";
import { shareWithin } from "../dates/share-within.ts";
import { signFactors } from "../dates/sign-factors.ts";
import { type Candidate, candidatesOf } from "./candidates.ts";
import { type Foreseen, type Foresight, foresee } from "./foresee.ts";
import { expectedBits } from "./information.ts";

/** Looks told; the rest is counted. */
const TOLD = 40;
/** Candidates weighed; the first by part and feature. */
const MOST = 1200;
/** Bits under which a look tells nothing. */
const LEAST_BITS = 1e-4;
const NO_STATE: StateOdds = { original: 1, later: 1, reused: 1, reworked: 1 };

/** What the looks are chosen from: features with what they are looked for on, and how. */
export interface LookFor {
  readonly piece: Piece;
  readonly features: readonly Term[];
  /** What the report on the piece says is void if something is found. */
  readonly report: Pick<Report, "findings">;
}

/**
 * What to look at next: exceptions that would take findings away first, then what is expected to tell most of whether the claimed
 * years hold, for the trouble it takes; whether an answer would speak for them makes no difference. The subject is of a graph
 * that knows the features too. O(candidates x cases x years).
 */
export function readLooks(subject: Subject, { piece, features, report }: LookFor, odds: AssumedOdds): Looks {
  const all = candidatesOf(subject, features);
  const exceptions = exceptionsIn(report, subject);
  const wanted = [
    ...exceptions.filter(
      (one) => !all.some(({ part, feature }) => part === one.part && feature === one.feature),
    ),
    ...all,
  ].slice(0, MOST);
  const wide = withUnseen(piece, wanted, subject);
  const placing = placingOf(wide, odds);
  const posterior = weighModel(modelReader(wide, odds, placing)());
  const moves = new Map(features.map(({ id: feature, looking }) => [feature, looking?.move]));
  const checks = new Map(wide.checks.map((check) => [check.id, check]));
  const looks = wanted.flatMap((candidate, i): readonly Look[] => {
    const check = checks.get(nameOf(i));
    const move = moves.get(candidate.feature) ?? "nothing";
    const wouldVoid = exceptions.find(
      ({ part, feature }) => part === candidate.part && feature === candidate.feature,
    );
    return check === undefined
      ? []
      : lookAt(
          check,
          { candidate, move, wouldVoid: wouldVoid?.wouldVoid ?? [] },
          { wide, placing, posterior, odds },
        );
  });
  looks.sort((a, b) =>
    firstDifference(
      b.wouldVoid.length - a.wouldVoid.length,
      b.bits / odds.effort[b.move] - a.bits / odds.effort[a.move],
      compareText(a.part, b.part),
      compareText(a.feature, b.feature),
    ),
  );
  return { next: looks.slice(0, TOLD), considered: wanted.length, cut: all.length > MOST };
}

interface Excused extends Candidate {
  readonly wouldVoid: Look["wouldVoid"];
}

/** Exceptions nobody looked for, on the part of the finding they would void. */
function exceptionsIn({ findings }: LookFor["report"], { piece }: Subject): readonly Excused[] {
  const found = new Map<
    string,
    { part: Candidate["part"]; feature: TermId; voids: Map<string, Set<string>> }
  >();
  for (const { id: finding, part, label, voidIf } of findings)
    for (const { claim, condition, standing } of label === "contradictory" ? voidIf : []) {
      const on = part ?? piece.parts[0]?.id;
      if (on === undefined || standing !== "not-looked-for") continue;
      const key = `${on} ${condition}`;
      const one = found.get(key) ?? { part: on, feature: condition, voids: new Map() };
      one.voids.set(claim, (one.voids.get(claim) ?? new Set()).add(finding));
      found.set(key, one);
    }
  return [...found.values()].map(({ part, feature, voids }) => ({
    ...{ part, feature },
    wouldVoid: [...voids].map(([claim, of]) => ({ claim: id<"claim">(claim), findings: [...of].sort() })),
  }));
}

const nameOf = (i: number): string => `look.${i}`;

/** The subject with every candidate recorded as one that could not be seen: so each has its place in the graph, and says nothing. */
function withUnseen(piece: Piece, wanted: readonly Candidate[], { graph, assumptions }: Subject): Subject {
  const unseen = wanted.map(({ part, feature }, i) => ({
    ...{ id: id<"observation">(nameOf(i)), part, feature },
    ...{ seen: "unseen" as const, sureness: "sure" as const },
  }));
  return readSubject({ ...piece, observations: [...piece.observations, ...unseen] }, graph, assumptions);
}

interface Weighed {
  readonly wide: Subject;
  readonly placing: Placing;
  readonly posterior: Posterior;
  readonly odds: AssumedOdds;
}

function lookAt(
  check: Check,
  { candidate, move, wouldVoid }: { candidate: Candidate; move: Move; wouldVoid: Look["wouldVoid"] },
  { wide, placing, posterior, odds }: Weighed,
): readonly Look[] {
  const group = (posterior.model.cases[0]?.groups ?? []).findIndex(({ parts }) =>
    parts.includes(candidate.part),
  );
  const sign = signFactors([{ ...check, seen: "present" }], wide.graph, odds)[0];
  const told = tellsOfYears(check, placing) || sign !== undefined;
  if (!told && wouldVoid.length === 0) return [];
  const access = odds.access[move];
  const base = told
    ? foresee(posterior, group, (c) =>
        foreseenIn(c, check, sign?.byState, { wide, placing, posterior, odds }),
      )
    : undefined;
  const bits = base ? bitsOnClaim(posterior, base, wide.claimed, access) : 0;
  const states = statesOf(posterior, group);
  const bitsOfState = base ? expectedBits(Object.values(states), Object.values(base.seenByState), access) : 0;
  if (bits < LEAST_BITS && bitsOfState < LEAST_BITS && wouldVoid.length === 0) return [];
  const { from } = posterior.model;
  const claimed = shareWithin(posterior.years, from, wide.claimed);
  const claimedSeen = base ? shareWithin(base.seenByYear, from, wide.claimed) : 0;
  const seen = base?.seen ?? 0;
  return [
    {
      ...candidate,
      ...{ bits: significant(bits), bitsOfState: significant(bitsOfState) },
      ...{ pSeen: significant(access * seen), pUnseen: significant(1 - access), move, wouldVoid },
      ifSeen: significant(seen > 0 ? claimedSeen / seen : claimed),
      ifAbsent: significant(seen < 1 ? Math.max(0, claimed - claimedSeen) / (1 - seen) : claimed),
    },
  ];
}

/** Whether the graph dates the feature anywhere the piece can be from. */
const tellsOfYears = (check: Check, { placedAt }: Placing): boolean =>
  check.views.some((_, place) => {
    const { byYear } = placedAt(check, place).currency(check.feature);
    return byYear.some((value) => value !== byYear[0]);
  });

function foreseenIn(
  c: number,
  check: Check,
  byState: StateOdds | undefined,
  { wide, placing, posterior, odds }: Weighed,
): Foreseen {
  const { place, given } = posterior.model.cases[c] as (typeof posterior.model.cases)[number];
  const { currency } = placing.placedAt(check, Math.max(0, wide.places.indexOf(place)));
  const found = currency(check.feature);
  const right = curveIsRight(found, wide.graph, odds, given);
  const seen = { seen: "present" as const, sureness: "sure" as const };
  // A sign is as common as its states have it; only other features are as common as their curve.
  const full = { ...odds, prevalence: byState ? 1 : odds.prevalence };
  return {
    byYear: seenOdds(found.byYear, right, seen, full).map((value) => value * odds.detect),
    byState: byState ?? NO_STATE,
  };
}

function bitsOnClaim(
  posterior: Posterior,
  { seen, seenByYear }: Foresight,
  claimed: Subject["claimed"],
  access: number,
): number {
  const { from } = posterior.model;
  const before = shareWithin(posterior.years, from, claimed);
  const both = shareWithin(seenByYear, from, claimed);
  return expectedBits([before, 1 - before], [both, seen - both], access);
}
