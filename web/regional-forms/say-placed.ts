import { basisWords } from "../shared/words/claim-words.ts";
import { relationWords } from "../shared/words/relation-words.ts";
import { sayYearsBriefly } from "../shared/years/say-claim-years.ts";
import { listInWords } from "./list-in-words.ts";
import type { PlacedClaimFragment } from "./PlacedClaim.graphql.ts";

type Brief = Pick<PlacedClaimFragment, "relation" | "years" | "objects">;

/** What a claim says of its subject in the fewest words: "attested 1738", "typical". What several regions share names them all. */
export const sayBriefly = ({ relation, years, objects }: Brief): string => {
  if (relation === "TYPICAL_OF") return "typical";
  if (relation === "CONFINED_TO")
    return objects.length < 2
      ? "made nowhere else"
      : `made only in ${listInWords(objects.map(({ label }) => label))}`;
  return `${relationWords[relation]} ${sayYearsBriefly(relation, years)}`.trim();
};

/** Where it is so, beside what the reader knows already: "Salem, on chest, drawer front". */
export const sayWhere = ({ region, form, part }: PlacedClaimFragment, known: string): string => {
  const on = [form?.label, part?.label].filter((label) => label !== undefined).join(", ");
  return [region && region.id !== known ? region.label : "", on ? `on ${on}` : ""].filter(Boolean).join(", ");
};

/** The best basis that a claim has, in words. */
export const sayBasis = ({ citations }: Pick<PlacedClaimFragment, "citations">): string => {
  const bases = citations.map(({ basis }) => basis);
  const best = (["PUBLISHED", "COMMON_PRACTICE", "FROM_MEMORY"] as const).find((basis) =>
    bases.includes(basis),
  );
  return best ? basisWords[best] : "";
};
