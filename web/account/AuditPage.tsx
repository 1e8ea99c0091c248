import { useEffect, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";

interface Entry {
  readonly sequence: number;
  readonly at?: string;
  readonly did?: string;
  readonly by?: string;
  readonly byName?: string;
  readonly about?: string;
  readonly aboutName?: string;
  readonly revision?: number;
}
interface Audit {
  readonly entries: readonly Entry[];
  readonly hasMore: boolean;
}

/** Who did what in the house, newest first: the ledger, with names. For owners. */
export function AuditPage() {
  const [entries, setEntries] = useState<readonly Entry[]>([]);
  const [answer, setAnswer] = useState<Answered<Audit>>();
  const read = async (before?: number) => {
    const came = await askAccount<Audit>("audit", before === undefined ? {} : { before });
    setAnswer(came);
    if ("done" in came)
      setEntries((shown) => (before === undefined ? came.done.entries : [...shown, ...came.done.entries]));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: read once
  useEffect(() => {
    read();
  }, []);
  const last = entries.at(-1);
  return (
    <article className={styles["page"]}>
      <InTheHouse />
      <PageHeading title="Audit">What was done in this house</PageHeading>
      <p className={styles["note"]}>
        Each line is chained to the one before by its hash, so that none can be changed or left out unseen. A
        person stands in it by an id that says nothing; the names are put beside it here.
      </p>
      <Refusals answer={answer} />
      <ol className={styles["list"]}>
        {entries.map(({ sequence, at, did, by, byName, about, aboutName, revision }) => (
          <li key={sequence} className={styles["item"]}>
            <span>
              {byName ?? (by === undefined || by === "program" ? "the program" : by)}: {did ?? "write"}
              {about === undefined || about === by ? null : (
                <>
                  {" "}
                  <About id={about} name={aboutName} />
                </>
              )}
              {revision === undefined ? "" : ` (revision ${revision})`}
            </span>
            <span className={styles["beside"]}>
              {at === undefined ? (
                "no time"
              ) : (
                <time dateTime={at}>{new Date(at).toLocaleString("en-GB")}</time>
              )}{" "}
              · {sequence}
            </span>
          </li>
        ))}
      </ol>
      {last !== undefined && answer && "done" in answer && answer.done.hasMore ? (
        <Button onPress={() => read(last.sequence)}>Show older</Button>
      ) : null}
    </article>
  );
}

const PAGES: Readonly<Record<string, string>> = {
  proposal: "/house/proposals/",
  dispute: "/house/disputes/",
  examination: "/pieces/",
  claim: "/claims/",
};

/** What was done about: led to where it has a page. */
function About({ id, name }: { id: string; name: string | undefined }) {
  const page = PAGES[id.split(".")[0] ?? ""];
  return page === undefined ? (name ?? id) : <TextLink to={`${page}${id}`}>{name ?? id}</TextLink>;
}
