import type { Hardness } from "../../domain/claim.ts";
import type { Attribution } from "../../domain/examination.ts";
import type { PartId } from "../../domain/ids.ts";
import type { Years } from "../../domain/years.ts";
import { claimsHeld, type Holding, held, holdingBoth, holdingOf } from "../atoms.ts";
import type { Check, Subject } from "../check.ts";
import type { KnownGraph } from "../known-graph.ts";
import { eitherOf, type Proofs } from "../proofs.ts";

/** Years that one thing seen or claimed leaves at one place, with everything that this rests on. */
export interface Window {
  readonly check: Check;
  readonly part: PartId | undefined;
  readonly years: Years;
  readonly held: Holding;
  readonly hardness: Hardness;
}

/** The windows of all checks at one place of the piece: one for each irredundant proof of each. */
export function windowsAt(
  place: number,
  { checks, graph, piece }: Subject,
): { readonly windows: readonly Window[]; readonly cut: readonly Check[] } {
  const seen = checks.filter((check) => check.seen === "present");
  const proven = seen.map((check) => ({ check, found: proofsAt(place, check) }));
  return {
    windows: proven.flatMap(({ check, found }) =>
      found.proofs.map((proof) => ({
        ...{ check, part: check.part, years: proof.years, hardness: proof.hardness },
        held: heldBy(check, proof.held, piece.attribution, graph),
      })),
    ),
    cut: proven.filter(({ found }) => found.cut).map(({ check }) => check),
  };
}

/** A part with a region of its own is judged there, wherever the piece is from. */
function proofsAt(place: number, { views, feature, elsewhere }: Check): Proofs {
  const here = elsewhere ? views : views.slice(place, place + 1);
  return eitherOf(here.map((view) => view.proofs(feature)));
}

/** A proof with the sighting or the claim it is about, and with the region and form claimed where it is scoped by them (E24). */
export function heldBy(check: Check, proof: Holding, attribution: Attribution, graph: KnownGraph): Holding {
  const own =
    check.observation === undefined
      ? held({ kind: "attr", of: check.claimed ?? "form" })
      : held({ kind: "observation", observation: check.observation });
  const claims = claimsHeld(proof).map(graph.claimOf);
  const byForm = claims.some((claim) => "scope" in claim && claim.scope.form !== undefined);
  const byRegion = claims.some(
    (claim) =>
      claim.relation === "confined to" ||
      claim.relation === "spread to" ||
      ("scope" in claim && claim.scope.region !== undefined),
  );
  return holdingBoth(
    proof,
    holdingOf(
      own,
      ...(byRegion && attribution.region !== undefined && !check.elsewhere
        ? [held({ kind: "attr", of: "region" })]
        : []),
      ...(byForm && attribution.form !== undefined ? [held({ kind: "attr", of: "form" })] : []),
    ),
  );
}
