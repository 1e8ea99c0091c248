import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Assumptions, Finding, Report } from "#server/domain/report.ts";
import type { Term } from "#server/domain/term.ts";
import { examine } from "#server/reasoning/examine.ts";
import { aClaim, type ClaimSketch } from "./build-claim.ts";
import { aTree, neighbourhoodOf } from "./build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "./build-piece.ts";

/** Regions for small questions: world > north > (town, farm), world > south. */
export const NORTH_AND_SOUTH: readonly Term[] = aTree("region", {
  world: { north: { town: {}, farm: {} }, south: {} },
});

/** Examines a sketched piece on sketched claims. */
export const examineSketch = (
  claims: readonly ClaimSketch[],
  piece: PieceSketch,
  terms: readonly Term[] = NORTH_AND_SOUTH,
  assumptions: Assumptions = ASSUMED,
): Report => examine(aPiece(piece), neighbourhoodOf(terms, claims.map(aClaim)), assumptions);

/** The finding of one feature, seen on one part of a piece. */
export function findSketch(
  claims: readonly ClaimSketch[],
  { feature = "F", ...piece }: PieceSketch & { readonly feature?: string } = {},
  terms: readonly Term[] = NORTH_AND_SOUTH,
): Finding {
  const part = typeof piece.parts?.[0] === "object" ? piece.parts[0].id : (piece.parts?.[0] ?? "top");
  const observations = [{ id: "o", part, feature }, ...(piece.observations ?? [])];
  const found = examineSketch(claims, { ...piece, observations }, terms).findings.find(
    ({ id }) => id === "o",
  );
  if (found === undefined) throw new Error("the observation has no finding");
  return found;
}
