import { id } from "../../domain/ids.ts";
import { MOVES, type Move } from "../../domain/looking.ts";
import type { Report } from "../../domain/report.ts";
import type { Term } from "../../domain/term.ts";
import type { Look, Looks } from "../../domain/weighing/looks.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import { significant } from "../../domain/weighing/significant.ts";
import { readSubject, type Subject } from "../check.ts";
import { weighModel } from "../dates/posterior.ts";
import { modelReader } from "../dates/read-model.ts";
import { shareWithin } from "../dates/share-within.ts";
import { inOneGo } from "../in-one-go.ts";
import { bitsOf } from "./bits-of.ts";
import { type Candidate, candidatesOf } from "./candidates.ts";
import { chooseLooks, LEAST_BITS } from "./choose-looks.ts";
import { exceptionsUnseen } from "./exceptions-unseen.ts";
import type { Looked } from "./foreseer.ts";
import { kinIn } from "./kin-in.ts";
import { weighLooks } from "./weigh-looks.ts";

/** Candidates weighed; of more, those that take least trouble. */
const MOST = 1200;
/** Exceptions that are tried on the piece, one by one. */
const MOST_TRIED = 6;

/** What the looks are chosen from: features with what they are looked for on, and how. */
export interface LookFor {
  readonly features: readonly Term[];
  /** What the report on the piece says is void if something is found. */
  readonly report: Pick<Report, "findings">;
}

/**
 * What to look at next (docs/spec/15-looks.md): exceptions that would take findings away first, then what is expected to tell most of
 * whether the claimed years hold, and of the states of the parts, for the trouble it takes. Whether an answer would speak for the
 * claim makes no difference. The subject is of a graph that knows the features too. O(candidates x cases x years) at most.
 */
export function readLooks(subject: Subject, { features, report }: LookFor, odds: AssumedOdds): Looks {
  const exceptions = exceptionsUnseen(subject, report);
  const { open, answered, notOfPiece } = candidatesOf(subject, features);
  const moves = new Map(features.map(({ id: feature, looking }) => [feature, looking?.move]));
  const moveOf = ({ feature }: Candidate): Move => moves.get(feature) ?? "nothing";
  const wanted = [
    ...exceptions,
    ...open
      .filter((one) => !exceptions.some((exception) => isSame(exception, one)))
      .sort((a, b) => MOVES.indexOf(moveOf(a)) - MOVES.indexOf(moveOf(b))),
  ];
  const weighed = inOneGo(weighLooks(subject, wanted.slice(0, MOST), odds));
  let silent = 0;
  const looks = weighed.flatMap(({ candidate, looked }, i): readonly Look[] => {
    const wouldVoid = exceptions.find((exception) => isSame(exception, candidate))?.wouldVoid ?? [];
    const look = lookFrom(candidate, looked, { move: moveOf(candidate), wouldVoid }, odds);
    if (wouldVoid.length > 0)
      return [i < MOST_TRIED ? { ...look, ifSeen: claimedWith(subject, candidate, odds) } : look];
    if (looked.tells && Math.max(look.bits, look.bitsOfState) >= LEAST_BITS) return [look];
    silent++;
    return [];
  });
  const { next, alike, less } = chooseLooks(looks, kinIn(subject.graph), odds.effort);
  return {
    next,
    considered: weighed.length,
    leftOut: { answered, notOfPiece, silent, alike, less },
    cut: wanted.length > MOST,
  };
}

const isSame = (a: Candidate, b: Candidate): boolean => a.part === b.part && a.feature === b.feature;

/** A look at a candidate, by what is foreseen of it. */
export function lookFrom(
  candidate: Candidate,
  { before, withSeen }: Looked,
  { move, wouldVoid }: Pick<Look, "move" | "wouldVoid">,
  odds: AssumedOdds,
): Look {
  const access = odds.access[move];
  const { bits, bitsOfState } = bitsOf(before, withSeen, access);
  const { claimed } = before;
  const { seen, claimed: both } = withSeen;
  return {
    ...{ part: candidate.part, feature: candidate.feature },
    bits: significant(bits),
    bitsOfState: significant(bitsOfState),
    pSeen: significant(access * seen),
    pUnseen: significant(1 - access),
    ...{ move, alsoOn: [], wouldVoid },
    ifSeen: significant(seen > 0 ? both / seen : claimed),
    ifAbsent: significant(seen < 1 ? Math.max(0, claimed - both) / (1 - seen) : claimed),
  };
}

/** Probability of the claimed years when the thing is recorded, and with it everything that it takes away. */
function claimedWith(subject: Subject, { part, feature }: Candidate, odds: AssumedOdds): number {
  const { piece, graph, assumptions } = subject;
  const made = { id: id<"observation">("look"), part, feature, seen: "present", sureness: "sure" } as const;
  const found = readSubject({ ...piece, observations: [...piece.observations, made] }, graph, assumptions);
  const { years, model } = weighModel(modelReader(found, odds)());
  return significant(shareWithin(years, model.from, found.claimed));
}
