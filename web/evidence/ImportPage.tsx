import { useApolloClient } from "@apollo/client/react";
import { useDeferredValue, useEffect, useMemo, useState } from "react";
import { type KnownItem, type ReadItem, readCsl } from "#server/domain/read-csl.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./ImportPage.module.css";
import { Kicker } from "./Kicker.tsx";
import { readAllSources } from "./read-all-sources.ts";
import reading from "./reading.module.css";

/** Looks through a list of sources: how each would be cited, and which would be refused and why. Keeps nothing. */
export function ImportPage() {
  const { known, failure } = useKnownSources();
  const [text, setText] = useState("");
  const asked = useDeferredValue(text.trim());
  const read = useMemo(
    () => (asked === "" || known === undefined ? undefined : readCsl(asked, known)),
    [asked, known],
  );
  return (
    <>
      <header className={reading["head"]}>
        <Kicker
          steps={[
            { to: "/evidence", name: "evidence" },
            { to: "/evidence?kind=SOURCE", name: "sources" },
          ]}
        />
        <PageHeading title="Look through a list of sources">Look through a list of sources</PageHeading>
        <p className={reading["note"]}>
          Paste a list that another program exported. It shows how each item would be cited here, and which
          would be refused and why. Nothing is kept, and nothing leaves this page.
        </p>
      </header>
      <div className={styles["page"]}>
        <TextField
          label="The list, as CSL-JSON"
          hint="Programs that keep references export it, often as “CSL JSON”. BibTeX is not read yet."
          lines={10}
          value={text}
          onChange={setText}
          spellCheck="false"
          autoComplete="off"
          {...(typeof read === "string" ? { refusal: read } : {})}
        />
        {failure === undefined ? null : (
          <p role="alert">{failure} What is there already cannot be told apart.</p>
        )}
        {read === undefined || typeof read === "string" ? null : <Preview items={read} />}
      </div>
    </>
  );
}

/** What is there already, read once; where it cannot be read, nothing is known to be there and it is said so. */
function useKnownSources() {
  const client = useApolloClient();
  const [found, setFound] = useState<{ known?: readonly KnownItem[]; failure?: string }>({});
  useEffect(() => {
    let isLeft = false;
    readAllSources(client)
      .then((known) => ({ known }))
      .catch((error: unknown) => ({ known: [], failure: `${sayFailure(error).what}` }))
      .then((next) => {
        if (!isLeft) setFound(next);
      });
    return () => {
      isLeft = true;
    };
  }, [client]);
  return found;
}

function Preview({ items }: { items: readonly ReadItem[] }) {
  const refused = items.filter(({ refusals }) => refusals.length > 0).length;
  return (
    <section className={reading["section"]}>
      <h2>What would become of them</h2>
      <p role="status" className={styles["count"]}>
        {items.length - refused} of {items.length} would be taken, {refused} refused
      </p>
      <ol className={reading["list"]}>
        {items.map(({ at, text, kind, refusals }) => (
          <li key={at} value={at}>
            <p className={styles["text"]}>{text}</p>
            {refusals.length === 0 ? (
              <p className={reading["beside"]}>
                would be taken, {kind === undefined ? "kind to be chosen by a person" : `as ${kind}`}
              </p>
            ) : (
              <ul className={styles["refusals"]}>
                {refusals.map((refusal) => (
                  <li key={refusal}>Refused: {refusal}</li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
