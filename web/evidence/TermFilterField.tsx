import { useQuery } from "@apollo/client/react";
import { useEffect, useState } from "react";
import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { rankByName } from "../shared/terms/rank-by-name.ts";
import { ComboBox } from "../shared/ui/ComboBox.tsx";
import { FilterChoicesDocument } from "./FilterChoices.graphql.ts";

const TERMS_AT_ONCE = 200;

interface Props {
  label: string;
  kind: TermKind;
  value: string | undefined;
  onChange: (id: string | undefined) => void;
  placeholder: string;
}

/** One term of a kind out of all of them, by typing some of its name; emptied, it narrows nothing. */
export function TermFilterField({ label, kind, value, onChange, placeholder }: Props) {
  const { data, fetchMore } = useQuery(FilterChoicesDocument, {
    variables: { kinds: [kind], first: TERMS_AT_ONCE },
  });
  const terms = data?.terms.edges.map((edge) => edge.node) ?? [];
  const { hasNextPage, endCursor } = data?.terms.pageInfo ?? { hasNextPage: false, endCursor: null };
  useEffect(() => {
    if (hasNextPage) void fetchMore({ variables: { after: endCursor } });
  }, [hasNextPage, endCursor, fetchMore]);

  const name = terms.find((term) => term.id === value)?.label ?? value ?? "";
  const [words, setWords] = useState(name);
  useEffect(() => setWords(name), [name]);
  const byName = terms.toSorted((a, b) => a.label.localeCompare(b.label, "en"));
  const choices = rankByName(byName, words === name ? "" : words).map(({ id, label, broader }) => ({
    id,
    label,
    ...(broader ? { beside: `in ${broader.label}` } : {}),
  }));
  return (
    <ComboBox
      label={label}
      choices={choices}
      words={words}
      onWords={(next) => {
        setWords(next);
        if (next === "" && value !== undefined) onChange(undefined);
      }}
      value={value ?? null}
      onChange={(chosen) => {
        if (chosen === null) return;
        setWords(terms.find((term) => term.id === chosen)?.label ?? "");
        onChange(chosen);
      }}
      placeholder={placeholder}
      none="Nothing by these letters."
    />
  );
}
