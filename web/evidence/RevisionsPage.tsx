import { useSuspenseQuery } from "@apollo/client/react";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { Kicker } from "./Kicker.tsx";
import { RevisionsPageDocument } from "./RevisionsPage.graphql.ts";
import styles from "./RevisionsPage.module.css";
import reading from "./reading.module.css";

const REVISIONS_AT_ONCE = 50;

/** The states the evidence has been in, newest first, each chained to the one before. */
export function RevisionsPage() {
  const { data, fetchMore } = useSuspenseQuery(RevisionsPageDocument, {
    variables: { first: REVISIONS_AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const { edges, totalCount } = data.revisions;
  return (
    <article>
      <header className={reading["head"]}>
        <Kicker steps={[{ to: "/evidence", name: "evidence" }]} />
        <PageHeading title="Revisions">Revisions of the evidence</PageHeading>
        <p className={reading["note"]}>
          Nothing is overwritten: each change makes a new revision, and every answer names the one it was
          given on. Each carries a hash of its content and of the revision before it, so that a change made
          behind its back shows.
        </p>
      </header>
      {totalCount === 0 ? (
        <p className={reading["empty"]}>There is no evidence yet. Restore a dump to begin with one.</p>
      ) : null}
      <ol className={styles["chain"]} reversed start={edges[0]?.node.number}>
        {edges.map(({ node }) => (
          <li key={node.number} className={styles["revision"]}>
            <span className={styles["number"]}>{node.number}</span>
            <div>
              <p className={styles["message"]}>{node.message}</p>
              <p className={styles["by"]}>
                <time dateTime={node.at}>{sayDay(node.at)}</time> · by {node.by} ·{" "}
                {node.edits === 1 ? "1 edit" : `${node.edits} edits`} ·{" "}
                <code title={node.hash}>
                  <span className="visually-hidden">hash begins </span>
                  {node.hash.slice(0, 10)}
                </code>
              </p>
            </div>
          </li>
        ))}
      </ol>
      <ShowMore
        list={data.revisions}
        onMore={(after) => fetchMore({ variables: { after } })}
        label="Show older"
      />
    </article>
  );
}
