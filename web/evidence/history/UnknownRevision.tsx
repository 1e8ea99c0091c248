import { useSuspenseQuery } from "@apollo/client/react";
import { Link } from "wouter";
import { PageHeading } from "../../shared/ui/PageHeading.tsx";
import reading from "../reading.module.css";
import { OldReadingDocument } from "./OldReading.graphql.ts";
import { nounOf, pageOf } from "./page-of.ts";

/** Says that an address asks for a revision that there is not, which there are, and where to go on. */
export function UnknownRevision({ asked, id }: { asked: string; id: string }) {
  const { data } = useSuspenseQuery(OldReadingDocument, { variables: { id, revision: 0 } });
  const newest = data.newest?.number ?? 0;
  return (
    <article className={reading["head"]}>
      <PageHeading title="No such revision">There is no such revision</PageHeading>
      <p className={reading["note"]}>
        {/^\d+$/.test(asked)
          ? `Revision ${asked} has not been made yet. `
          : `“${asked}” is not the number of a revision. `}
        {newest === 0
          ? "There is no evidence yet."
          : newest === 1
            ? "There is one revision, number 1."
            : `Revisions are numbered from 1 to ${newest}.`}
      </p>
      <p>
        Go on to <Link href={pageOf(id)}>the {nounOf(id)} as it stands now</Link> or to{" "}
        <Link href="/house/history">the list of revisions</Link>.
      </p>
    </article>
  );
}
