import { useQuery } from "@apollo/client/react";
import { useMemo } from "react";
import { FeaturesOfPartDocument } from "./FeaturesOfPart.graphql.ts";
import { useKindsOfPart } from "./use-kinds-of-part.ts";
import { useTermSearch } from "./use-term-search.ts";

export interface FeatureChoice {
  readonly id: string;
  readonly label: string;
  /** Why it stands where it does, or what it is. */
  readonly beside?: string;
}

const MOST = 40;
const firstSentence = (note: string | null): string | undefined => note?.split(/(?<=[.;])\s/)[0];

/**
 * Features to choose from for a part of the given kind: those looked for on that kind first. Without words, these
 * alone; with words, what the words find.
 */
export function useFeatures(words: string, kind: string | undefined): readonly FeatureChoice[] {
  const { areKin } = useKindsOfPart();
  const { data } = useQuery(FeaturesOfPartDocument);
  const found = useTermSearch(words, ["FEATURE"]);
  return useMemo(() => {
    const all = data?.terms.edges.map((edge) => edge.node) ?? [];
    const isLookedFor = (feature: { readonly parts: readonly { readonly id: string }[] }) =>
      kind !== undefined && feature.parts.some((part) => areKin(part.id, kind));
    const candidates =
      words.trim() === "" ? all.filter((each) => kind === undefined || isLookedFor(each)) : found;
    const sorted = candidates.toSorted((a, b) => Number(isLookedFor(b)) - Number(isLookedFor(a)));
    return sorted.slice(0, MOST).map((feature) => {
      const beside = firstSentence(feature.note);
      return { id: feature.id, label: feature.label, ...(beside === undefined ? {} : { beside }) };
    });
  }, [data, found, words, kind, areKin]);
}
