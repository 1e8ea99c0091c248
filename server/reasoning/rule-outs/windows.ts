import type { Hardness } from "../../domain/claim.ts";
import type { Attribution } from "../../domain/examination.ts";
import type { PartId } from "../../domain/ids.ts";
import { meet, sameYears, type Years, yearsBetween } from "../../domain/years.ts";
import { claimsHeld, compareHoldings, type Holding, held, holdingBoth, holdingOf } from "../atoms.ts";
import type { Check, Subject } from "../check.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Proof } from "../proofs.ts";
import type { View } from "../view.ts";

/** Years that one thing seen or claimed leaves at one place, with everything that this rests on. */
export interface Window {
  readonly check: Check;
  readonly part: PartId | undefined;
  readonly years: Years;
  /** Of these, the years up to the examination. */
  readonly made: Years;
  readonly held: Holding;
  readonly hardness: Hardness;
}

/**
 * What was seen on a part (or on parts that are together) from a region of its own, where its places there differ: windows place by
 * place. One of the places is the true one.
 */
export interface TornPart {
  readonly places: readonly (readonly Window[])[];
}

/** Everything that bounds a piece at one of its places. */
export interface PlacedWindows {
  readonly windows: readonly Window[];
  readonly torn: readonly TornPart[];
  /** Checks with more proofs than were kept. */
  readonly cut: readonly Check[];
}

/** The windows of all checks at one place of the piece: one for each irredundant proof of each. */
export function windowsAt(place: number, subject: Subject): PlacedWindows {
  const seen = subject.checks.filter((check) => check.seen === "present");
  const windowOf = windowReader(subject);
  const windows: Window[] = [];
  const torn = new Map<string, Window[][]>();
  for (const check of seen) {
    const here = viewsAt(place, check).map((view) => view.proofs(check.feature).proofs);
    const [first = []] = here;
    if (here.every((proofs) => areAlike(proofs, first)))
      windows.push(...first.map((proof) => windowOf(check, proof)));
    else {
      const name = tornName(check, subject);
      const places = torn.get(name) ?? here.map(() => []);
      for (const [i, proofs] of here.entries())
        places[i]?.push(...proofs.map((proof) => windowOf(check, proof)));
      torn.set(name, places);
    }
  }
  return {
    windows,
    torn: [...torn.values()].map((places) => ({ places })),
    cut: seen.filter((check) => viewsAt(place, check).some((view) => view.proofs(check.feature).cut)),
  };
}

/** A part with a region of its own is judged there, wherever the piece is from (E15). */
const viewsAt = (place: number, { views, elsewhere }: Check): readonly View[] =>
  elsewhere ? views : views.slice(place, place + 1);

function windowReader({ graph, piece }: Subject): (check: Check, proof: Proof) => Window {
  const until = yearsBetween(Number.NEGATIVE_INFINITY, piece.examined);
  return (check, { years, hardness, held: proof }) => ({
    ...{ check, part: check.part, years, made: meet(years, until), hardness },
    held: heldBy(check, proof, piece.attribution, graph),
  });
}

/** Parts that are together and from one region are from one place of it. */
function tornName({ part }: Check, { piece, parts }: Subject): string {
  const region = piece.parts.find(({ id }) => id === part)?.region;
  return `${part === undefined ? "" : parts.groupOf(part)} ${region ?? ""}`;
}

const areAlike = (a: readonly Proof[], b: readonly Proof[]): boolean =>
  a === b ||
  (a.length === b.length &&
    a.every((proof, i) => {
      const other = b[i] as Proof;
      return sameYears(proof.years, other.years) && compareHoldings(proof.held, other.held) === 0;
    }));

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
