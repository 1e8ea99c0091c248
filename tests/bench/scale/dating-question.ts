import type { Claim } from "#server/domain/claim.ts";
import type { Datings, DatingsAsk } from "#server/domain/datings.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { Span } from "#server/domain/years.ts";
import { boundOfClaim } from "#server/reasoning/bound-of-claim.ts";

/** The full question as the program asks it, always of a region. */
export interface DatingQuestion extends DatingsAsk {
  readonly region: TermId;
}

/** Ids are numbers here: those at the end of made-up ids. */
export interface DatingPath {
  readonly feature: number;
  readonly via: readonly number[];
  readonly dated: number;
  /** The claimed years are impossible if the dated claim holds. */
  readonly isOut: boolean;
}
/** One for each feature, by its number. */
export interface DatingFinding {
  readonly feature: number;
  readonly paths: readonly DatingPath[];
  readonly label: "contradictory" | "consistent" | "silent";
}

export const numberOf = (id: string): number => Number(id.slice(id.lastIndexOf("-") + 1));

/** Infinite years in whole numbers. */
export const NEVER_BEFORE = -9999;
export const NEVER_AFTER = 9999;

/** The findings, of paths in any order. */
export function findingsOf(
  { features }: DatingQuestion,
  paths: readonly DatingPath[],
): readonly DatingFinding[] {
  const byFeature = new Map<number, DatingPath[]>(features.map((feature) => [numberOf(feature), []]));
  for (const path of paths) byFeature.get(path.feature)?.push(path);
  return [...byFeature].map(([feature, own]) => ({
    ...{ feature, paths: own },
    label: own.length === 0 ? "silent" : own.some(({ isOut }) => isOut) ? "contradictory" : "consistent",
  }));
}

/** One text for equal answers. */
export const answerText = (findings: readonly DatingFinding[]): string =>
  findings
    .toSorted((a, b) => a.feature - b.feature)
    .map(({ feature, paths, label }) => {
      const lines = paths.map(
        ({ via, dated, isOut }) => `${[...via, dated].join(" ")}${isOut ? " out" : ""}`,
      );
      return `${feature} ${label}\n${lines.sort().join("\n")}`;
    })
    .join("\n");

/** The years that a claim leaves, from the first to the last of them; none of a claim that bounds nothing. */
export function boundOf(claim: Claim): Span | undefined {
  const bound = boundOfClaim(claim);
  return bound && [Math.max(NEVER_BEFORE, bound[0]), Math.min(NEVER_AFTER, bound[1])];
}

/** The answer of the program in the numbers of the databases. */
export const inNumbers = ({ features }: Datings): readonly DatingFinding[] =>
  features.map(({ feature, label, paths }) => ({
    ...{ feature: numberOf(feature), label },
    paths: paths.map(({ via, dated, isOut }) => ({
      ...{ feature: numberOf(feature), via: via.map(numberOf), dated: numberOf(dated), isOut },
    })),
  }));
