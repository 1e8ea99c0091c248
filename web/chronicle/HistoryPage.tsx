import { useEffect, useState } from "react";
import { Link, useSearch } from "wouter";
import type { Revision } from "#server/domain/revision.ts";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { ChooseTwo } from "./ChooseTwo.tsx";
import styles from "./chronicle.module.css";
import { Difference } from "./Difference.tsx";
import { addressOfDifference, readTwo } from "./two-revisions.ts";

interface Listed {
  readonly revisions: readonly (Revision & { readonly name: string; readonly edits: number })[];
  readonly total: number;
  readonly after?: string;
}

/** Every state of the evidence: who made it, when and why; and what any two of them say otherwise. */
export function HistoryPage() {
  const two = readTwo(useSearch());
  const [revisions, setRevisions] = useState<Listed["revisions"]>([]);
  const [answer, setAnswer] = useState<Answered<Listed>>();
  const read = async (after?: string) => {
    const came = await askServer<Listed>("/chronicle/history", after === undefined ? {} : { after });
    setAnswer(came);
    if ("done" in came)
      setRevisions((shown) =>
        after === undefined ? came.done.revisions : [...shown, ...came.done.revisions],
      );
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: read once
  useEffect(() => {
    read();
  }, []);
  const newest = revisions[0]?.number ?? 0;
  const next = answer && "done" in answer ? answer.done.after : undefined;
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <InTheHouse />
        <PageHeading title="Revisions">Revisions of the evidence</PageHeading>
        <p className={styles["note"]}>
          Nothing is overwritten: each change makes a new revision, and every answer names the one it was
          given on. Each carries a hash of its content and of the revision before it, so that a change made
          behind its back shows: <Link href="/house/proof">check it</Link>. The same in a feed:{" "}
          <a href="/feeds/all.atom">all regions</a>.
        </p>
      </header>
      {newest > 0 ? <ChooseTwo key={`${two?.from} ${two?.to}`} two={two} newest={newest} /> : null}
      {two === undefined ? null : <Difference key={`${two.from} ${two.to}`} {...two} />}
      <section className={styles["section"]} aria-labelledby="revisions">
        <h2 id="revisions">All revisions</h2>
        {answer === undefined ? <Waiting what="the revisions" /> : null}
        {answer && "done" in answer && answer.done.total === 0 ? (
          <p className={styles["note"]}>There is no evidence yet. Restore a dump to begin with one.</p>
        ) : null}
        <ol className={styles["list"]}>
          {revisions.map(({ number, at, name, message, edits, hash }) => (
            <li key={number}>
              <p className={styles["says"]}>
                <strong>{number}</strong> {message}
              </p>
              <p className={styles["beside"]}>
                <time dateTime={at}>{sayDay(at)}</time> · by {name} ·{" "}
                {edits === 1 ? "1 edit" : `${edits} edits`} ·{" "}
                <code title={hash}>
                  <span className="visually-hidden">hash begins </span>
                  {hash.slice(0, 10)}
                </code>
              </p>
              <p className={styles["acts"]}>
                <Link
                  href={addressOfDifference(number - 1, number)}
                  aria-label={`What revision ${number} changed`}
                >
                  What it changed
                </Link>
                {number < newest ? (
                  <Link
                    href={addressOfDifference(number, newest)}
                    aria-label={`What changed since revision ${number}`}
                  >
                    What changed since
                  </Link>
                ) : null}
              </p>
            </li>
          ))}
        </ol>
        <Refusals answer={answer} />
        {next === undefined ? null : <Button onPress={() => read(next)}>Show older</Button>}
      </section>
    </article>
  );
}
