import { useCallback, useState } from "react";
import type { ClaimId, SourceId, TermId } from "#server/domain/ids.ts";
import type { CitedClaimFragment } from "#web/strips/CitedClaim.graphql.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import type { StoredExamination } from "./read-answer.ts";

/** The names of terms, claims and sources that this page was given. */
export interface PageGlossary extends Glossary {
  /** The source as a line of text; undefined where no claim of the answer cites it. */
  readonly sourceText: (source: SourceId) => string | undefined;
  /** Whether somebody doubts a claim openly. */
  readonly isDisputed: (claim: ClaimId) => boolean;
}

/**
 * A glossary that only grows: names stay known when an answer no longer has them, and the object stays the same, so
 * that rows that did not change are not drawn again.
 */
export function useGlossary(stored: StoredExamination): {
  glossary: PageGlossary;
  learn: (term: TermId, label: string) => void;
} {
  const [known] = useState(() => ({
    labels: new Map<string, string>(),
    claims: new Map<string, CitedClaimFragment>(),
    sources: new Map<string, string>(),
    read: undefined as StoredExamination | undefined,
  }));
  if (known.read !== stored) {
    known.read = stored;
    for (const [term, label] of stored.labels) known.labels.set(term, label);
    for (const claim of stored.claims) {
      known.claims.set(claim.id, claim);
      for (const { source } of claim.citations) if (source) known.sources.set(source.id, source.text);
    }
  }
  const [glossary] = useState<PageGlossary>(() => ({
    labelOf: (term) => known.labels.get(term) ?? term,
    findClaim: (claim) => known.claims.get(claim),
    sourceText: (source) => known.sources.get(source),
    isDisputed: (claim) => (known.claims.get(claim)?.openDisputes ?? 0) > 0,
  }));
  const learn = useCallback(
    (term: TermId, label: string) => {
      known.labels.set(term, label);
    },
    [known],
  );
  return { glossary, learn };
}
