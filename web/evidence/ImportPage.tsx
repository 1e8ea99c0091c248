import { useApolloClient } from "@apollo/client/react";
import { useDeferredValue, useEffect, useMemo, useState } from "react";
import type { KnownItem } from "#server/domain/sources-in/read-item.ts";
import { readList } from "#server/domain/sources-in/read-list.ts";
import { readAllSources } from "#web/shared/sources/read-all-sources.ts";
import { ChooseFile } from "../shared/ui/ChooseFile.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./ImportPage.module.css";
import { ImportPreview } from "./ImportPreview.tsx";
import { Kicker } from "./Kicker.tsx";
import { type ChosenFile, readChosenFile } from "./read-chosen-file.ts";
import reading from "./reading.module.css";

/** Looks through a list of sources: how each would be stored, and which would be refused and why. Keeps nothing. */
export function ImportPage() {
  const { known, failure } = useKnownSources();
  const [pasted, setPasted] = useState("");
  const [file, setFile] = useState<ChosenFile>();
  const text = file === undefined ? pasted : "text" in file ? file.text : "";
  const asked = useDeferredValue(text);
  const read = useMemo(
    () => (asked === "" || known === undefined ? undefined : readList(asked, known)),
    [asked, known],
  );
  const refusal = file !== undefined && "refusal" in file ? file.refusal : refusalOf(read, file);
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
          Choose or paste a list that another program exported, as BibTeX or as CSL-JSON. It shows how each
          entry would be stored and cited here, what it lacks, which are there already, and which would be
          refused and why. Nothing is kept, and nothing leaves this page.
        </p>
      </header>
      <div className={styles["page"]}>
        <div className={styles["file"]}>
          <ChooseFile
            types={[".bib", ".bibtex", ".json", "text/plain"]}
            onChoose={async (chosen) => setFile(await readChosenFile(chosen))}
          />
          <p role="status">
            {file === undefined ? "or paste its text below" : `Looking through ${file.name}`}
          </p>
        </div>
        <TextField
          label="The list, as BibTeX or CSL-JSON"
          hint="Programs that keep references export both. Line numbers below are those of this text or of the file."
          lines={10}
          value={pasted}
          onChange={(next) => {
            setPasted(next);
            setFile(undefined);
          }}
          spellCheck="false"
          autoComplete="off"
          {...(refusal === undefined ? {} : { refusal })}
        />
        {failure === undefined ? null : (
          <p role="alert">{failure} What is there already cannot be told apart.</p>
        )}
        {read === undefined || typeof read === "string" ? null : <ImportPreview key={asked} items={read} />}
      </div>
    </>
  );
}

function refusalOf(read: unknown, file: ChosenFile | undefined): string | undefined {
  if (typeof read !== "string") return undefined;
  return file === undefined ? read : `${file.name}: ${read}`;
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
