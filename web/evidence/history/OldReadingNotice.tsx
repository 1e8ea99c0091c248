import { useSuspenseQuery } from "@apollo/client/react";
import { Link } from "wouter";
import { Differences } from "../../shared/history/Differences.tsx";
import { Disclosure } from "../../shared/ui/Disclosure.tsx";
import { sayDay } from "../../shared/words/say-day.ts";
import styles from "./History.module.css";
import { ChangedSinceDocument } from "./OldReading.graphql.ts";
import { nounOf, pageOf } from "./page-of.ts";

interface Props {
  id: string;
  revision: number;
  /** When the revision was made; revision 0, before the first, has no time. */
  at: string | undefined;
  newest: number;
}

/** Says that a page is read as of an earlier revision, what changed of it since, and where the newest reading is. */
export function OldReadingNotice({ id, revision, at, newest }: Props) {
  const isNewest = revision === newest;
  const noun = nounOf(id);
  return (
    <aside className={styles["notice"]} aria-label="Revision that is read">
      <p>
        <strong>{isNewest ? "The newest reading, kept at its revision." : "An old reading."}</strong>{" "}
        {revision === 0
          ? "Before the first revision there was no evidence."
          : `This ${noun} as of revision ${revision} of ${newest}${at ? `, of ${sayDay(at)}` : ""}; what is named here is read as it stood then too.`}{" "}
        <Link href={pageOf(id)}>Read it as it stands now</Link>
      </p>
      {isNewest ? null : <Since id={id} revision={revision} />}
    </aside>
  );
}

function Since({ id, revision }: { id: string; revision: number }) {
  const { data } = useSuspenseQuery(ChangedSinceDocument, {
    variables: { id, revision },
    fetchPolicy: "network-only",
  });
  const changed = data.changedSince;
  if (changed === null) return <p>Nothing of it is otherwise now.</p>;
  if (changed.does === "ADDED") return <p>It was added since.</p>;
  if (changed.does === "WITHDRAWN") return <p>It was withdrawn since: it no longer counts.</p>;
  if (changed.differences.length === 0) return <p>Only the order of a list is another now.</p>;
  const whats = [...new Set(changed.differences.map(({ what }) => what))];
  return (
    <Disclosure level={2} summary={`What changed since: ${whats.join(", ")}`} isOpenAtFirst>
      <Differences differences={changed.differences} later="is now" />
    </Disclosure>
  );
}
