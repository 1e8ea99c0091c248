import type { Claim } from "../../domain/claim.ts";
import type { Assumptions, Derivation, Finding } from "../../domain/report.ts";
import { complement, sameYears, type YearsJson, yearsFromJson, yearsToJson } from "../../domain/years.ts";
import { yearsOfClaim } from "../claim-years.ts";
import type { ReportReader } from "./report-reader.ts";
import { yearsInWords } from "./years-in-words.ts";

/**
 * "possible 1720 or later", "usual up to 1755". Where the years are no more than what one claim leaves by which there was
 * none for a time, "not found there 1700 to 1799": of the rest it says nothing (W9). `claims` are those that the years
 * rest on.
 */
export function yearsLeftInWords(
  word: "possible" | "usual",
  years: YearsJson,
  claims: readonly Claim[],
  assumptions: Assumptions,
): string {
  const left = yearsFromJson(years);
  const isOnlyLeft = claims.some(
    (claim) =>
      claim.relation === "not found in" &&
      claim.when !== undefined &&
      sameYears(yearsOfClaim(claim, assumptions).outer, left),
  );
  return isOnlyLeft
    ? `not found there ${yearsInWords(yearsToJson(complement(left)))}`
    : `${word} ${yearsInWords(years)}`;
}

/** The same of a finding's years. */
export function yearsOfFinding(
  word: "possible" | "usual",
  { possible, usual, support, derivation }: Finding,
  reader: ReportReader,
): string {
  const ids = new Set([...support.claims, ...(derivation === undefined ? [] : claimsIn(derivation))]);
  const claims = [...ids].flatMap((claim) => reader.claimOf(claim) ?? []);
  const { outer } = word === "possible" ? possible : usual;
  return yearsLeftInWords(word, outer, claims, reader.report.assumptions);
}

function claimsIn(node: Derivation): readonly Finding["support"]["claims"][number][] {
  if (node.kind === "claim") return [node.claim];
  return node.kind === "told" ? [] : node.from.flatMap(claimsIn);
}
