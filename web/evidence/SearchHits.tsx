import { useSuspenseQuery } from "@apollo/client/react";
import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import { EvidenceSearchDocument } from "./EvidencePage.graphql.ts";
import reading from "./reading.module.css";
import styles from "./SearchHits.module.css";

interface Props {
  words: string;
  kind: TermKind | undefined;
}

/** The terms that fit some words, best first. */
export function SearchHits({ words, kind }: Props) {
  const { data } = useSuspenseQuery(EvidenceSearchDocument, {
    variables: { words, kinds: kind ? [kind] : null, first: MOST_HITS },
  });
  const hits = data.search;
  return (
    <section aria-label="Found">
      <p role="status" className={styles["count"]}>
        {hits.length === 0
          ? `Nothing is called “${words}”${kind ? ` among the ${termKindWords[kind].many}` : ""}. Try fewer letters, another word for it, or every kind.`
          : `${sayCount(hits.length)} for “${words}”`}
      </p>
      <ul className={`${reading["list"]} ${styles["hits"]}`}>
        {hits.map(({ term }) => (
          <li key={term.id}>
            <p>
              <TextLink to={`/terms/${term.id}`} className={styles["label"] ?? ""}>
                {term.label}
              </TextLink>{" "}
              <span className={styles["beside"]}>
                {termKindWords[term.kind].one}
                {term.otherLabels.length > 0 ? `, also called ${term.otherLabels.join(", ")}` : ""}
              </span>
            </p>
            {term.note ? <p className={styles["note"]}>{firstSentence(term.note)}</p> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

const MOST_HITS = 40;

const sayCount = (hits: number) => {
  if (hits === 1) return "1 term";
  return hits < MOST_HITS ? `${hits} terms` : `The best ${hits} terms`;
};

const firstSentence = (note: string) => /^.*?[.:;](?=\s|$)/.exec(note)?.[0].replace(/[:;]$/, ".") ?? note;
