import { useQuery } from "@apollo/client/react";
import { useEffect, useMemo } from "react";
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
 * alone, the nearest first; with words, what the words find, in the order of the search.
 */
export function useFeatures(words: string, kind: string | undefined): readonly FeatureChoice[] {
  const { areKin } = useKindsOfPart();
  const { data, fetchMore } = useQuery(FeaturesOfPartDocument);
  const { hasNextPage, endCursor } = data?.terms.pageInfo ?? {};
  useEffect(() => {
    // Page after page, once; the client's cache joins them. Where one fails, what is there is offered, and typing searches.
    if (hasNextPage) fetchMore({ variables: { after: endCursor } }).catch(() => undefined);
  }, [hasNextPage, endCursor, fetchMore]);
  const found = useTermSearch(words, ["FEATURE"]);
  return useMemo(() => {
    const all = data?.terms.edges.map((edge) => edge.node) ?? [];
    /** 2: looked for on this very kind; 1: on one within it or around it. */
    const nearness = (feature: { readonly parts: readonly { readonly id: string }[] }) => {
      if (kind === undefined) return 0;
      if (feature.parts.some((part) => part.id === kind)) return 2;
      return feature.parts.some((part) => areKin(part.id, kind)) ? 1 : 0;
    };
    const candidates =
      words.trim() === "" ? all.filter((each) => kind === undefined || nearness(each) > 0) : found;
    // What the words find keeps its order within the kin of the part: the thing named stands before those that contain it.
    const order =
      words.trim() === "" ? nearness : (each: (typeof candidates)[number]) => Number(nearness(each) > 0);
    const sorted = candidates.toSorted((a, b) => order(b) - order(a));
    return sorted.slice(0, MOST).map((feature) => {
      const beside = firstSentence(feature.note);
      return { id: feature.id, label: feature.label, ...(beside === undefined ? {} : { beside }) };
    });
  }, [data, found, words, kind, areKin]);
}
