import type { Hardness, Relation } from "../apollo/schema-types.graphql.ts";
import { type ClaimYears, claimSpans } from "./claim-spans.ts";
import type { YearsSign } from "./YearsLegend.tsx";

interface Drawn {
  readonly relation: Relation;
  readonly hardness: Hardness | null;
  readonly years: ClaimYears | null;
}

/** The marks that a drawing of these claims has. */
export function signsIn(claims: readonly Drawn[]): ReadonlySet<YearsSign> {
  const signs = new Set<YearsSign>();
  for (const { relation, years, hardness } of claims) {
    const spans = claimSpans(relation, years);
    if (spans?.kind === "record") signs.add("recorded once");
    if (spans?.kind === "exclude") signs.add("not found");
    if (spans?.kind !== "hold") continue;
    signs.add("every reading of the date");
    if (spans.pale[0] !== spans.solid?.[0] || spans.pale[1] !== spans.solid?.[1]) signs.add("some reading");
    if (spans.pale.includes(null)) signs.add("goes on");
    if (hardness === "PRACTICE") signs.add("habit or fashion");
  }
  return signs;
}
