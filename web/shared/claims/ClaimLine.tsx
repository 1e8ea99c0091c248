import { TextLink } from "../ui/TextLink.tsx";
import { sayStrength, statusWords } from "../words/claim-words.ts";
import { CitationLine } from "./CitationLine.tsx";
import type { ClaimLineFragment } from "./ClaimLine.graphql.ts";
import styles from "./ClaimLine.module.css";
import { DisputedMark } from "./DisputedMark.tsx";

interface Props {
  claim: ClaimLineFragment;
  /** Leaves out the citations, on the page of their source. */
  withoutCitations?: boolean;
}

/** One claim in a list: its sentence, how far it can be leaned on, and where it comes from. */
export const ClaimLine = ({ claim, withoutCitations = false }: Props) => (
  <div className={styles["claim"]}>
    <p className={claim.status === "ACCEPTED" ? undefined : styles["doubted"]}>
      <TextLink to={`/claims/${claim.id}`} className={styles["says"] ?? ""}>
        {claim.says}
      </TextLink>{" "}
      <span className={styles["weight"]}>{sayStrength(claim)}</span> <DisputedMark claim={claim} />
    </p>
    {claim.status === "ACCEPTED" ? null : <p className={styles["status"]}>{statusWords[claim.status]}</p>}
    {withoutCitations ? null : (
      <ul className={styles["citations"]}>
        {claim.citations.map((citation) => (
          <li key={`${citation.source?.id} ${citation.locator} ${citation.basis}`}>
            <CitationLine citation={citation} isShort />
          </li>
        ))}
      </ul>
    )}
  </div>
);
