import { useEffect, useState } from "react";
import { foldName } from "#server/domain/fold-name.ts";
import type { CslItem } from "#server/domain/source.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { ComboBox } from "#web/shared/ui/ComboBox.tsx";
import { useFormDesk } from "./form-desk.ts";
import { PlainField } from "./PlainField.tsx";
import { SourceFields } from "./SourceFields.tsx";
import { sourceLine } from "./source-line.ts";

const SHOWN = 40;

/** Where it is printed: a source that is there, found by typing, or a new one; and the place in it. */
export function SourceChoice({ known }: { known: readonly CslItem[] }) {
  const { fields, put, refusalAt } = useFormDesk();
  const chosen = known.find((csl) => csl.id === fields["source"]);
  const name = chosen ? sourceLine(chosen) : (fields["source"] ?? "");
  const [words, setWords] = useState(name);
  const [isNew, setIsNew] = useState((fields["title"] ?? "") !== "");
  useEffect(() => setWords(name), [name]);
  const wanted = foldName(words).split(" ");
  const choices = known
    .map((csl) => ({ id: csl.id, label: sourceLine(csl) }))
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
