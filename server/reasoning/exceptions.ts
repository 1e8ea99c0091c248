import type { VoidWhen } from "../domain/claim.ts";
import { compareIds } from "../domain/compare.ts";
import type { Observation, Piece, Seen } from "../domain/examination.ts";
import type { ClaimId, ObservationId, PartId, TermId } from "../domain/ids.ts";
import { isWithin } from "../domain/region.ts";
import type { VoidIf } from "../domain/report.ts";
import type { KnownGraph } from "./known-graph.ts";
import type { PieceParts } from "./piece-parts.ts";

/** An exception that holds, and the observation that meets its condition. */
export interface Defeat {
  readonly exception: ClaimId;
  readonly observation: ObservationId;
}

/** Which claims say nothing on one part, or on the piece as a whole (E13). */
export interface Exceptions {
  /** All exceptions of a claim that hold, sorted by id; those that excuse an absence alone only where something is absent. */
  readonly defeatsOf: (claim: ClaimId, seen?: Seen) => readonly Defeat[];
  /** Exceptions of a claim that nobody looked for, or nobody could be sure of. */
  readonly voidIf: (claim: ClaimId, seen?: Seen) => readonly VoidIf[];
  /** One text for one state of all exceptions. */
  readonly key: string;
}

/**
 * Decides the exceptions for a part; without one, for findings on the attribution, where any part will do. An exception is itself
 * void where one of its own holds. Cycles are refused when claims are made; here the second visit of one counts as not holding.
 */
export function readExceptions(
  graph: KnownGraph,
  piece: Piece,
  parts: PieceParts,
  part: PartId | undefined,
): Exceptions {
  const near = part === undefined ? undefined : parts.near(part);
  const concerning = concerningIn(graph, piece);
  const concerned = (exception: VoidWhen): readonly Observation[] => {
    const all = concerning(exception.condition);
    if (near === undefined || exception.anywhere || all.length === 0) return all;
    return all.filter(({ part: on }) => near.has(on));
  };

  const excusing = (claim: ClaimId, seen: Seen): readonly VoidWhen[] =>
    graph.exceptionsOf(claim).filter(({ absenceOnly }) => seen === "absent" || absenceOnly !== true);

  const asked = new Set<ClaimId>();
  function defeatsOf(claim: ClaimId, seen: Seen = "present"): readonly Defeat[] {
    if (asked.has(claim)) return [];
    asked.add(claim);
    const defeats = excusing(claim, seen).flatMap((exception) => {
      const meets = concerned(exception).find(isMet);
      return meets === undefined || defeatsOf(exception.id).length > 0
        ? []
        : [{ exception: exception.id, observation: meets.id }];
    });
    asked.delete(claim);
    return defeats;
  }

  const voidIf = (claim: ClaimId, seen: Seen = "present"): readonly VoidIf[] =>
    excusing(claim, seen).flatMap((exception) => {
      if (defeatsOf(exception.id).length > 0) return [];
      const standing = standingOf(concerned(exception));
      return standing === undefined
        ? []
        : [{ claim, exception: exception.id, condition: exception.condition, standing }];
    });

  const key = graph.excepted
    .flatMap((claim) => defeatsOf(claim, "absent"))
    .map(({ exception, observation }) => `${exception}=${observation}`)
    .join(" ");
  return { defeatsOf, voidIf, key };
}

type Concerning = (condition: TermId) => readonly Observation[];
/** By graph and piece, as each of its parts asks the same. */
const concerningKnown = new WeakMap<KnownGraph, { readonly piece: Piece; readonly concerning: Concerning }>();

/**
 * The observations of a piece that concern a condition, by id. Seen, a narrower thing meets a condition; looked for and
 * absent, a broader one settles it.
 */
function concerningIn(graph: KnownGraph, piece: Piece): Concerning {
  const known = concerningKnown.get(graph);
  if (known?.piece === piece) return known.concerning;
  const observations = [...piece.observations].sort(compareIds);
  const found = new Map<TermId, readonly Observation[]>();
  const concerning = (condition: TermId): readonly Observation[] => {
    const before = found.get(condition);
    if (before !== undefined) return before;
    const all = observations.filter(({ feature, seen }) =>
      seen === "present"
        ? isWithin(feature, condition, graph.broader)
        : isWithin(condition, feature, graph.broader),
    );
    found.set(condition, all);
    return all;
  };
  concerningKnown.set(graph, { piece, concerning });
  return concerning;
}

const isMet = ({ seen, sureness }: Observation): boolean => seen === "present" && sureness !== "possible";

/** How far a condition is from being known; undefined where it is met, or was looked for and is not there. */
function standingOf(concerned: readonly Observation[]): VoidIf["standing"] | undefined {
  if (concerned.some(isMet)) return undefined;
  if (concerned.some(({ seen }) => seen === "present")) return "merely-possible";
  if (concerned.some(({ seen }) => seen === "unseen")) return "could-not-be-seen";
  return concerned.length > 0 ? undefined : "not-looked-for";
}
