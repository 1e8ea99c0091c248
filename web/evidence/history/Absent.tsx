import { useSuspenseQuery } from "@apollo/client/react";
import { Link } from "wouter";
import { addressAsOf } from "../../shared/navigation/asked-revision.ts";
import { useReadingRevision } from "../../shared/navigation/reading-revision.ts";
import { NotFoundPage } from "../../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../../shared/ui/PageHeading.tsx";
import { sayDay } from "../../shared/words/say-day.ts";
import reading from "../reading.module.css";
import { HistoryDocument } from "./History.graphql.ts";
import { History } from "./History.tsx";
import { nounOf, pageOf } from "./page-of.ts";

/** Edits that are looked through for the one that matters. */
const MOST_EDITS = 50;

/** In the place of a term, claim or source that does not stand: it never was, was withdrawn, or was not there yet. */
export function Absent({ id }: { id: string }) {
  const read = useReadingRevision();
  const { data } = useSuspenseQuery(HistoryDocument, { variables: { id, first: MOST_EDITS } });
  const noun = nounOf(id);
  const edits = data.history.edges.map(({ node }) => node);
  const gone = edits.find(({ revision }) => revision.number <= (read ?? Number.POSITIVE_INFINITY));
  const first = edits.at(-1);
  if (!first) return <NotFoundPage what={noun} id={id} />;
  const title = gone ? `This ${noun} was withdrawn` : `This ${noun} was not there yet`;
  const { revision, edit } = gone ?? first;
  const then = gone ? revision.number - 1 : revision.number;
  return (
    <article className={reading["main"]}>
      <header className={reading["head"]}>
        <PageHeading title={title}>{title}</PageHeading>
        <p className={reading["note"]}>{edit.says}</p>
        <p>
          It was {gone ? "withdrawn" : "added"} at revision {revision.number}, {sayDay(revision.at)}, by{" "}
          {revision.by}: {revision.message.replace(/\.$/, "")}.{" "}
          <Link href={addressAsOf(pageOf(id), then)}>
            {gone ? "Read it as it last stood" : "Read it as it was added"}
          </Link>
        </p>
      </header>
      <History of={id} />
    </article>
  );
}
