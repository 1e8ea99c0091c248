import { useState } from "react";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import { fieldsOfItem } from "#server/domain/proposals/form/source-of-fields.ts";
import { SOURCE_KINDS } from "#server/domain/source.ts";
import { readCitationLine } from "#server/domain/sources-in/read-citation-line.ts";
import { readList } from "#server/domain/sources-in/read-list.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { readingWords } from "#web/shared/words/claim-words.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { useFormDesk } from "./form-desk.ts";
import { PlainField } from "./PlainField.tsx";

const KINDS = SOURCE_KINDS.map((id) => ({ id, label: id }));
const READINGS = Object.entries(readingWords).map(([id, label]) => ({ id, label }));

/** Fields of a source, filled by hand or from a citation that was pasted. */
export function SourceFields() {
  return (
    <>
      <PasteCitation />
      <ChoiceField of="source-kind" label="What it is" choices={KINDS} otherwise="book" look="folded" />
      <PlainField of="author" label="Author" placeholder="Family, Given; Family, Given" />
      <PlainField of="title" label="Title" />
      <PlainField of="year" label="Year" placeholder="1923" />
      <Disclosure summary="More that helps others to find it">
        <PlainField of="container" label="In (journal or larger work)" />
        <PlainField of="publisher" label="Publisher" />
        <PlainField of="place" label="Place" />
        <PlainField of="volume" label="Volume" />
        <PlainField of="pages" label="Pages" />
        <PlainField of="number" label="Number (of a patent or standard)" />
        <PlainField of="isbn" label="ISBN" />
        <PlainField of="doi" label="DOI" />
        <PlainField of="url" label="Address" />
        <PlainField of="source-note" label="Remark" lines={2} />
      </Disclosure>
      <ChoiceField
        of="reading"
        label="How far did you read it?"
        choices={READINGS}
        otherwise="known"
        look="folded"
      />
    </>
  );
}

/** A citation from elsewhere: what can be read off it goes into the fields, to be looked over. */
function PasteCitation() {
  const { put } = useFormDesk();
  const [text, setText] = useState("");
  const [told, setTold] = useState("");
  const fill = () => {
    const read = readPasted(text);
    const names = Object.keys(read);
    if (names.length > 0) put(read);
    setTold(
      names.length > 0
        ? `Filled: ${names.join(", ")}. Look it over.`
        : "Nothing could be read off it; fill the fields by hand.",
    );
  };
  return (
    <div>
      <TextField
        label="Paste a citation (BibTeX, CSL-JSON, or a line with its ISBN)"
        value={text}
        onChange={setText}
        lines={3}
        maxLength={20_000}
        spellCheck="false"
      />
      <p>
        <Button isDisabled={text.trim() === ""} onPress={fill}>
          Fill the fields from it
        </Button>{" "}
        <span role="status">{told}</span>
      </p>
    </div>
  );
}

/** The first entry of a list, or what is plain in a line. */
function readPasted(text: string): FormFields {
  const isList = /^\s*[[{@]/.test(text);
  const items = isList ? readList(text, []) : [];
  if (typeof items === "string" || items.length === 0) return isList ? {} : readCitationLine(text);
  const item = items[0];
  if (item?.csl === undefined) return {};
  return { ...fieldsOfItem(item.csl), ...(item.kind ? { "source-kind": item.kind } : {}) };
}
