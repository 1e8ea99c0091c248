import { useCallback, useState } from "react";
import type { TermId } from "#server/domain/ids.ts";
import type { CitedClaimFragment } from "#web/strips/CitedClaim.graphql.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import type { StoredExamination } from "./read-answer.ts";

/**
 * A glossary that only grows: names stay known when an answer no longer has them, and the object stays the same, so
 * that rows that did not change are not drawn again.
 */
export function useGlossary(stored: StoredExamination): {
  glossary: Glossary;
  learn: (term: TermId, label: string) => void;
} {
  const [known] = useState(() => ({
    labels: new Map<string, string>(),
    claims: new Map<string, CitedClaimFragment>(),
    read: undefined as StoredExamination | undefined,
  }));
  if (known.read !== stored) {
    known.read = stored;
    for (const [term, label] of stored.labels) known.labels.set(term, label);
    for (const claim of stored.claims) known.claims.set(claim.id, claim);
  }
  const [glossary] = useState<Glossary>(() => ({
    labelOf: (term) => known.labels.get(term) ?? term,
    findClaim: (claim) => known.claims.get(claim),
  }));
  const learn = useCallback(
    (term: TermId, label: string) => {
      known.labels.set(term, label);
    },
    [known],
  );
  return { glossary, learn };
}
