import { useSuspenseQuery } from "@apollo/client/react";
import { Suspense } from "react";
import { Link } from "wouter";
import { Differences } from "../../shared/history/Differences.tsx";
import { addressAsOf } from "../../shared/navigation/asked-revision.ts";
import { useReadingRevision } from "../../shared/navigation/reading-revision.ts";
import { ShowMore } from "../../shared/ui/ShowMore.tsx";
import { Waiting } from "../../shared/ui/Waiting.tsx";
import { sayDay } from "../../shared/words/say-day.ts";
import reading from "../reading.module.css";
import { HistoryDocument, type PastEditFragment } from "./History.graphql.ts";
import styles from "./History.module.css";
import { pageOf } from "./page-of.ts";

const EDITS_AT_ONCE = 10;

interface Props {
  /** Id of a term, claim or source. */
  of: string;
}

/** What became of a term, claim or source: every revision that edited it, newest first, by whom, why, and what differs. */
export const History = ({ of }: Props) => (
  <section className={reading["section"]} aria-labelledby="history-heading">
    <Suspense
      fallback={
        <>
          <h2 id="history-heading">History</h2>
          <Waiting what="the history" />
        </>
      }
    >
      <Edits of={of} />
    </Suspense>
  </section>
);

function Edits({ of }: Props) {
  const { data, fetchMore } = useSuspenseQuery(HistoryDocument, {
    variables: { id: of, first: EDITS_AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const { edges, totalCount } = data.history;
  return (
    <>
      <h2 id="history-heading">
        History{" "}
        <span>
          · {totalCount === 1 ? "not changed since it was added" : `edited at ${totalCount} revisions`}
        </span>
      </h2>
      <ol className={styles["entries"]}>
        {edges.map(({ node }) => (
          <Edit key={node.revision.number} of={of} past={node} />
        ))}
      </ol>
      <ShowMore
        list={data.history}
        onMore={(after) => fetchMore({ variables: { after } })}
        label="Show older"
      />
    </>
  );
}

/** What an edit did, in a few words: "Changed: date, strength". */
function saysDone({ does, differences }: PastEditFragment["edit"]): string {
  if (does === "ADDED") return "Added";
  if (does === "WITHDRAWN") return "Withdrawn";
  const whats = [...new Set(differences.map(({ what }) => what))];
  return whats.length === 0 ? "Put in another order, else the same" : `Changed: ${whats.join(", ")}`;
}

function Edit({ of, past: { revision, edit } }: { of: string; past: PastEditFragment }) {
  const read = useReadingRevision();
  // What stood after the edit; of a withdrawn thing, what stood before.
  const then = edit.does === "WITHDRAWN" ? revision.number - 1 : revision.number;
  return (
    <li className={styles["entry"]}>
      <h3>
        {saysDone(edit)} <span>at revision {revision.number}</span>
      </h3>
      <p className={styles["message"]}>{revision.message}</p>
      <p className={styles["by"]}>
        <time dateTime={revision.at}>{sayDay(revision.at)}</time> · by {revision.by} ·{" "}
        {read === then ? (
          "this reading"
        ) : (
          <Link href={addressAsOf(pageOf(of), then)}>
            {edit.does === "WITHDRAWN" ? "read it as it last stood" : "read it as it stood then"}
          </Link>
        )}
      </p>
      {edit.differences.length > 0 ? <Differences differences={edit.differences} later="became" /> : null}
    </li>
  );
}
