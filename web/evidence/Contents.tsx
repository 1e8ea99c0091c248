import { useSuspenseQuery } from "@apollo/client/react";
import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import styles from "./Contents.module.css";
import { EvidenceCountsDocument, type EvidenceCountsQuery } from "./EvidencePage.graphql.ts";

const kinds = Object.keys(termKindWords) as readonly TermKind[];

/** What there is, by kind, with how much of each. */
export function Contents() {
  const { data } = useSuspenseQuery(EvidenceCountsDocument);
  const count = (kind: TermKind) =>
    data[kind.toLowerCase() as Exclude<keyof EvidenceCountsQuery, "__typename">].totalCount;
  return (
    <>
      <ul className={styles["contents"]}>
        {kinds
          .filter((kind) => count(kind) > 0)
          .map((kind) => (
            <li key={kind}>
              <TextLink to={`/evidence?kind=${kind}`} className={styles["name"] ?? ""}>
                {termKindWords[kind].many}
              </TextLink>
              <span className={styles["what"]}>{termKindWords[kind].what}</span>
              <span className={styles["count"]}>{count(kind)}</span>
            </li>
          ))}
        <li>
          <TextLink to="/evidence?kind=SOURCE" className={styles["name"] ?? ""}>
            sources
          </TextLink>
          <span className={styles["what"]}>where the claims come from</span>
          <span className={styles["count"]}>{data.sources.totalCount}</span>
        </li>
      </ul>
      <p className={styles["claims"]}>
        <TextLink to="/evidence/parts">Browse by part of a piece</TextLink>
      </p>
      <p className={styles["claims"]}>
        {data.claims.totalCount} claims in all.{" "}
        <TextLink to="/house/history">How they came to be as they are</TextLink> ·{" "}
        <TextLink to="/evidence/disagreements">Where they disagree</TextLink>
      </p>
    </>
  );
}
