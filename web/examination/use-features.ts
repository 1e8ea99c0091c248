import { useQuery } from "@apollo/client/react";
import { useMemo } from "react";
import { holdsAllWords } from "#web/shared/terms/holds-all-words.ts";
import { useTermSearch } from "#web/shared/terms/use-term-search.ts";
import { FeaturesOfPartDocument, FirstFeaturesDocument } from "./FeaturesOfPart.graphql.ts";
import { useKindsOfPart } from "./use-kinds-of-part.ts";

export interface FeatureChoice {
  readonly id: string;
  readonly label: string;
  /** Why it stands where it does, or what it is. */
  readonly beside?: string;
}

interface Features {
  readonly choices: readonly FeatureChoice[];
  /** True where none of them goes by all the words: they are what comes near. */
  readonly areNear: boolean;
  /** What there is to choose from is not known yet. */
  readonly isLooking: boolean;
}

const MOST = 40;
const firstSentence = (note: string | null): string | undefined => note?.split(/(?<=[.;])\s/)[0];

/**
 * Features to choose from for a part of the given kind: those looked for on that kind first. Without words, these
 * alone, the nearest first; with words, what the words find, in the order of the search.
 */
export function useFeatures(words: string, kind: string | undefined): Features {
  const { areKin } = useKindsOfPart();
  const ofPart = useQuery(FeaturesOfPartDocument, {
    variables: { id: kind ?? "" },
    skip: kind === undefined,
  });
  const first = useQuery(FirstFeaturesDocument, { variables: { first: MOST }, skip: kind !== undefined });
  const { found, isLooking } = useTermSearch(words, ["FEATURE"]);
  const choices = useMemo(() => {
    const offered =
      kind === undefined
        ? (first.data?.terms.edges.map((edge) => edge.node) ?? [])
        : (ofPart.data?.term?.featuresOnPart.flatMap(({ features }) => features) ?? []);
    const standing = offered.filter(({ mergedInto }) => mergedInto === null);
    const isKin = (feature: { readonly parts: readonly { readonly id: string }[] }): boolean =>
      kind !== undefined && feature.parts.some((part) => areKin(part.id, kind));
    // What the words find keeps its order within the kin of the part: the thing named stands before those that contain it.
    const sorted =
      words.trim() === "" ? standing : found.toSorted((a, b) => Number(isKin(b)) - Number(isKin(a)));
    return sorted.slice(0, MOST).map((feature) => {
      const beside = firstSentence(feature.note);
      return { id: feature.id, label: feature.label, ...(beside === undefined ? {} : { beside }) };
    });
  }, [ofPart.data, first.data, found, words, kind, areKin]);
  if (words.trim() === "") return { choices, areNear: false, isLooking: ofPart.loading || first.loading };
  const areNear = !isLooking && found.length > 0 && !found.some((each) => holdsAllWords(each, words));
  return { choices, areNear, isLooking };
}
