import { useEffect, useState } from "react";
import { id, type TermId } from "#server/domain/ids.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { ComboBox } from "#web/shared/ui/ComboBox.tsx";
import { useTermSearch } from "./use-term-search.ts";

interface Props {
  label: string;
  kinds: readonly TermKind[];
  value: TermId | undefined;
  labelOf: (term: TermId) => string;
  onChange: (term: TermId | undefined, label: string) => void;
  placeholder?: string;
  refusal?: string | undefined;
}

/** One term of the graph, found by typing; emptied, it is not stated. */
export function TermField({ label, kinds, value, labelOf, onChange, placeholder = "", refusal }: Props) {
  const name = value === undefined ? "" : labelOf(value);
  const [words, setWords] = useState(name);
  useEffect(() => setWords(name), [name]);
  const { found, isLooking } = useTermSearch(words === name ? "" : words, kinds);
  const choices = found.map((term) => ({
    id: term.id,
    label: term.label,
    ...(term.broader ? { beside: `in ${term.broader.label}` } : {}),
  }));
  return (
    <ComboBox
      label={label}
      choices={choices}
      isLooking={isLooking}
      words={words}
      onWords={setWords}
      value={value ?? null}
      placeholder={placeholder}
      {...(refusal === undefined ? {} : { refusal })}
      onChange={(chosen) => {
        const term = found.find((each) => each.id === chosen);
        if (chosen === null) onChange(undefined, "");
        else if (term) onChange(id<"term">(term.id), term.label);
        setWords(term?.label ?? "");
      }}
    />
  );
}
