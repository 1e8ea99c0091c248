import { type FieldMergeFunction, type FieldPolicy, InMemoryCache } from "@apollo/client";
import { relayStylePagination } from "@apollo/client/utilities";
import { possibleTypes } from "./possible-types.ts";

/** Null, which stands for what is not made yet, is no empty page. */
function orNull(pages: ReturnType<typeof relayStylePagination>): FieldPolicy {
  const { merge, ...policy } = pages as FieldPolicy & { readonly merge: FieldMergeFunction };
  return { ...policy, merge: (known, come, options) => (come === null ? null : merge(known, come, options)) };
}

/**
 * The client's cache. Parts, observations and sentences of a report have ids of their piece only, so they stay
 * inside it; pages of a connection are joined as they arrive.
 */
export const makeCache = (): InMemoryCache =>
  new InMemoryCache({
    possibleTypes,
    typePolicies: {
      Query: {
        fields: {
          revisions: relayStylePagination(),
          terms: relayStylePagination(["kinds", "broader"]),
          claims: relayStylePagination(["relations"]),
          sources: relayStylePagination(),
          history: relayStylePagination(["id"]),
          disagreements: orNull(relayStylePagination(["rule"])),
          examinations: relayStylePagination(),
          proposals: relayStylePagination(["state", "kind", "region", "by", "mine"]),
          proposalsToReview: relayStylePagination(["kind", "region"]),
          disputes: relayStylePagination(["state"]),
          comments: relayStylePagination(["on"]),
        },
      },
      Term: {
        fields: {
          claims: relayStylePagination(),
          namedIn: relayStylePagination(),
          narrower: relayStylePagination(),
        },
      },
      Source: { fields: { claims: relayStylePagination() } },
      Revision: { keyFields: ["number"] },
      Part: { keyFields: false },
      Observation: { keyFields: false },
      AatMatch: { keyFields: false },
      MovedPiece: { keyFields: false },
      ForeseenDisagreement: { keyFields: false },
      FindingInWords: { keyFields: false },
      RuleOutInWords: { keyFields: false },
    },
  });
