import { locatorBeside } from "#server/domain/locator-beside.ts";
import { TextLink } from "../ui/TextLink.tsx";
import { basisWords } from "../words/claim-words.ts";
import type { CitationLineFragment } from "./CitationLine.graphql.ts";
import styles from "./CitationLine.module.css";

interface Props {
  citation: CitationLineFragment;
  /** Leaves out the note, where the line stands in a list of steps. */
  isShort?: boolean;
}

/** One citation: the source with its locator, and always its basis. */
export const CitationLine = ({ citation, isShort = false }: Props) => (
  <span className={styles["citation"]}>
    {citation.source ? (
      <cite>
        <TextLink to={`/sources/${citation.source.id}`}>
          {[
            citation.source.text.replace(/\.$/, ""),
            locatorBeside(citation.source.text, citation.locator ?? ""),
          ]
            .filter(Boolean)
            .join(", ")}
        </TextLink>
      </cite>
    ) : null}{" "}
    <span className={styles["basis"]}>{basisWords[citation.basis]}</span>
    {citation.note && !isShort ? <span className={styles["note"]}>{citation.note}</span> : null}
  </span>
);
