import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { ComboBox } from "../shared/ui/ComboBox.tsx";
import { FindConditionDocument } from "./CorrectionPage.graphql.ts";

type Feature = { readonly id: string; readonly label: string };

interface Props {
  value: Feature | undefined;
  onChange: (feature: Feature | undefined) => void;
}

/** A feature that sets a claim aside, found by some of its name. */
export function ConditionField({ value, onChange }: Props) {
  const [words, setWords] = useState("");
  const { data, previousData } = useQuery(FindConditionDocument, {
    variables: { words: words.trim() },
    skip: words.trim() === "",
  });
  const found = (data ?? previousData)?.search.map(({ term }) => term) ?? [];
  return (
    <ComboBox
      label="It says nothing where this is seen"
      choices={found}
      words={words}
      onWords={setWords}
      value={value?.id ?? null}
      onChange={(id) => {
        const chosen = found.find((one) => one.id === id);
        if (chosen) setWords(chosen.label);
        onChange(chosen);
      }}
      hint="A thing that can be seen on the piece, by some of its name."
    />
  );
}
