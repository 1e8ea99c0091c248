import { useApolloClient } from "@apollo/client/react";
import { useEffect, useState } from "react";
import { citeSource } from "#server/domain/cite-source.ts";
import { foldName } from "#server/domain/fold-name.ts";
import { id } from "#server/domain/ids.ts";
import type { CslItem } from "#server/domain/source.ts";
import { readAllSources } from "#web/shared/sources/read-all-sources.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { ComboBox } from "#web/shared/ui/ComboBox.tsx";
import { useFormDesk } from "./form-desk.ts";
import { PlainField } from "./PlainField.tsx";
import { SourceFields } from "./SourceFields.tsx";

const SHOWN = 40;
const lineOf = (csl: CslItem) => citeSource({ id: id(csl.id), kind: "book", csl, reading: "known" });

/** Where it is printed: a source that is there, found by typing, or a new one; and the place in it. */
export function SourceChoice() {
  const { fields, put, refusalAt } = useFormDesk();
  const known = useSources();
  const chosen = known.find((csl) => csl.id === fields["source"]);
  const name = chosen ? lineOf(chosen) : (fields["source"] ?? "");
  const [words, setWords] = useState(name);
  const [isNew, setIsNew] = useState((fields["title"] ?? "") !== "");
  useEffect(() => setWords(name), [name]);
  const wanted = foldName(words).split(" ");
  const choices = known
    .map((csl) => ({ id: csl.id, label: lineOf(csl) }))
    .filter(({ label }) => wanted.every((word) => foldName(label).includes(word)))
    .slice(0, SHOWN);
  const refusal = refusalAt("source");
  return (
    <>
      {isNew ? (
        <SourceFields />
      ) : (
        <ComboBox
          label="Printed in"
          choices={choices}
          words={words}
          onWords={setWords}
          value={chosen?.id ?? null}
          placeholder="author, words of the title, or year"
          none="No source by these words."
          onChange={(source) => put({ source: source ?? "" })}
          {...(refusal === undefined ? {} : { refusal })}
        />
      )}
      <p>
        <Button
          onPress={() => {
            put({ source: "", ...(isNew ? { title: "", author: "", year: "" } : {}) });
            setIsNew(!isNew);
          }}
        >
          {isNew ? "Choose one that is there" : "It is not there: describe it"}
        </Button>
      </p>
      <PlainField of="locator" label="Where in it" placeholder="p. 112, plate 4, section 3" />
    </>
  );
}

function useSources(): readonly CslItem[] {
  const client = useApolloClient();
  const [found, setFound] = useState<readonly CslItem[]>([]);
  useEffect(() => {
    let isLeft = false;
    readAllSources(client)
      .catch(() => [])
      .then((items) => {
        if (!isLeft) setFound(items);
      });
    return () => {
      isLeft = true;
    };
  }, [client]);
  return found;
}
