import { useSuspenseQuery } from "@apollo/client/react";
import { FollowButton } from "../shared/chronicle/FollowButton.tsx";
import { ClaimLine } from "../shared/claims/ClaimLine.tsx";
import { useReadOn } from "../shared/navigation/reading-revision.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { readingWords } from "../shared/words/claim-words.ts";
import { witnessWords } from "../shared/words/witness-words.ts";
import { Contribute } from "./Contribute.tsx";
import { Absent } from "./history/Absent.tsx";
import { History } from "./history/History.tsx";
import { Kicker } from "./Kicker.tsx";
import styles from "./reading.module.css";
import { SourceItem } from "./SourceItem.tsx";
import { SourcePageDocument } from "./SourcePage.graphql.ts";

const CLAIMS_AT_ONCE = 50;

/** One source: how to cite it, how far it was read, and every claim that rests on it. */
export function SourcePage({ id }: { id: string }) {
  const { data, fetchMore } = useSuspenseQuery(SourcePageDocument, {
    variables: { id, first: CLAIMS_AT_ONCE, ...useReadOn() },
  });
  if (!data.source) return <Absent id={id} />;
  const { source } = data;
  const { edges, totalCount } = source.claims;
  const locators = (citations: (typeof edges)[number]["node"]["citations"]) =>
    citations.flatMap((citation) =>
      citation.source?.id === id && citation.locator ? [citation.locator] : [],
    );
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <Kicker steps={[{ to: "/evidence?kind=SOURCE", name: "sources" }, { name: source.kind }]} />
        <PageHeading title={source.title ?? source.text}>{source.title ?? source.text}</PageHeading>
        <p className={styles["note"]}>{source.text}</p>
        {source.url ? (
          <p>
            <TextLink to={source.url}>{source.url}</TextLink>
          </p>
        ) : null}
        {source.note ? <p className={styles["also"]}>{source.note}</p> : null}
        <Contribute of={source.id} />
        <FollowButton about={source.id} name={source.title ?? source.text} />
      </header>
      <div className={styles["main"]}>
        <section className={styles["section"]}>
          <h2>
            Claims that cite it <span>· {totalCount}</span>
          </h2>
          <ul className={styles["list"]}>
            {edges.map(({ node }) => (
              <li key={node.id}>
                <ClaimLine claim={node} withoutCitations />
                <p className={styles["beside"]}>{locators(node.citations).join("; ")}</p>
              </li>
            ))}
          </ul>
          {totalCount === 0 ? (
            <p className={styles["empty"]}>No claim rests on it at this revision.</p>
          ) : null}
          <ShowMore
            list={source.claims}
            onMore={(after) => fetchMore({ variables: { after } })}
            label="Show more claims"
          />
        </section>
        <SourceItem id={source.id} text={source.text} csl={source.csl} />
        <History of={source.id} />
      </div>
      <dl className={styles["margin"]}>
        <div>
          <dt>Kind</dt>
          <dd>
            {source.kind}
            {witnessWords[source.kind] === undefined ? null : <small>{witnessWords[source.kind]}</small>}
          </dd>
        </div>
        <div>
          <dt>How far it was read</dt>
          <dd>{readingWords[source.reading] ?? source.reading}</dd>
        </div>
        <div>
          <dt>Id</dt>
          <dd>
            <code>{source.id}</code>
          </dd>
        </div>
      </dl>
    </article>
  );
}
