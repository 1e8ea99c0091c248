import type { DisagreementRule } from "./rule.ts";

/** [Q7] A region whose own claims name no more than one published source; what is common practice or from memory is no source. */
export const oneSource: DisagreementRule = {
  id: "one-source",
  find: ({ byRegion }) =>
    [...byRegion].flatMap(([region, claims]) => {
      const sources = new Set(
        claims.flatMap(({ citations }) =>
          citations.flatMap((citation) => (citation.basis === "published" ? [citation.source] : [])),
        ),
      );
      const [source] = sources;
      if (source === undefined || sources.size > 1) return [];
      return [
        {
          id: `one-source:${region}`,
          ...{ rule: "one-source" as const, term: region, region, source },
          claims: claims.map(({ id }) => id),
        },
      ];
    }),
};
