import type { StepInWords } from "#server/domain/report-words.ts";
import { CitationLine } from "#web/shared/claims/CitationLine.tsx";
import { DisputedMark } from "#web/shared/claims/DisputedMark.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { sayStrength } from "#web/shared/words/claim-words.ts";
import type { Glossary } from "./glossary.ts";
import styles from "./Steps.module.css";

/** The deepest that steps are set in; deeper ones stay there. */
const DEEPEST = 4;

interface Props {
  steps: readonly StepInWords[];
  glossary: Glossary;
}

/** A chain of evidence, step by step: what follows first, what it rests on below it, each claim with its strength and citations. */
export const Steps = ({ steps, glossary }: Props) => (
  <ol className={styles["steps"]}>
    {steps.map((step, i) => {
      const claim = step.claim === undefined ? undefined : glossary.findClaim(step.claim);
      return (
        <li
          // biome-ignore lint/suspicious/noArrayIndexKey: a step has no name but its place in the chain.
          key={i}
          className={step.assumed ? styles["assumed"] : undefined}
          data-depth={Math.min(step.depth, DEEPEST)}
        >
          {step.claim === undefined ? (
            step.says
          ) : (
            <TextLink to={`/claims/${step.claim}`} className={styles["claim"] ?? ""}>
              {step.says}
            </TextLink>
          )}
          {claim ? <span className={styles["strength"]}> {sayStrength(claim)}</span> : null}{" "}
          <DisputedMark claim={claim} />
          {claim?.citations.map((citation) => (
            <span
              key={`${citation.source?.id} ${citation.locator} ${citation.basis}`}
              className={styles["citation"]}
            >
              {" "}
              <CitationLine citation={citation} isShort />
            </span>
          ))}
        </li>
      );
    })}
  </ol>
);
