import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { ComboBox } from "../shared/ui/ComboBox.tsx";
import { RegionFieldDocument } from "./RegionField.graphql.ts";

interface Props {
  value: string | undefined;
  onChange: (region: string | undefined) => void;
}

/** One region out of all of them, by typing some of its name; emptied, it is any. */
export function RegionField({ value, onChange }: Props) {
  const { data } = useQuery(RegionFieldDocument);
  const regions = data?.terms.edges.map(({ node }) => node) ?? [];
  const name = regions.find(({ id }) => id === value)?.label ?? "";
  const [typed, setTyped] = useState<string>();
  const words = typed ?? name;
  const choices = regions
    .filter(({ label }) => typed === undefined || label.toLowerCase().includes(typed.trim().toLowerCase()))
    .map(({ id, label }) => ({ id, label }));
  return (
    <ComboBox
      label="Region"
      choices={choices}
      words={words}
      onWords={(next) => {
        setTyped(next);
        if (next === "") onChange(undefined);
      }}
      value={value ?? null}
      onChange={(chosen) => {
        if (chosen === null) return;
        setTyped(undefined);
        onChange(chosen);
      }}
      placeholder="any region"
      none="No region by these letters."
    />
  );
}
