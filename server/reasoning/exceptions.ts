import type { VoidWhen } from "../domain/claim.ts";
import { compareIds } from "../domain/compare.ts";
import type { Observation, Piece, Seen } from "../domain/examination.ts";
import type { ClaimId, ObservationId, PartId } from "../domain/ids.ts";
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
  const observations = [...piece.observations].sort(compareIds);

  /** Seen, a narrower thing meets a condition; looked for and absent, a broader one settles it. */
  const concerned = (exception: VoidWhen): readonly Observation[] =>
    observations.filter(
      ({ feature, seen, part: on }) =>
        (seen === "present"
          ? isWithin(feature, exception.condition, graph.broader)
          : isWithin(exception.condition, feature, graph.broader)) &&
        (near === undefined || exception.anywhere || near.has(on)),
    );

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

  const key = graph.claims
    .flatMap(({ id }) => defeatsOf(id, "absent"))
    .map(({ exception, observation }) => `${exception}=${observation}`)
    .join(" ");
  return { defeatsOf, voidIf, key };
}

const isMet = ({ seen, sureness }: Observation): boolean => seen === "present" && sureness !== "possible";

/** How far a condition is from being known; undefined where it is met, or was looked for and is not there. */
function standingOf(concerned: readonly Observation[]): VoidIf["standing"] | undefined {
  if (concerned.some(isMet)) return undefined;
  if (concerned.some(({ seen }) => seen === "present")) return "merely-possible";
  if (concerned.some(({ seen }) => seen === "unseen")) return "could-not-be-seen";
  return concerned.length > 0 ? undefined : "not-looked-for";
}
