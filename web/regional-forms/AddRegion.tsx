import { useSuspenseQuery } from "@apollo/client/react";
import { useState } from "react";
import { useLocation } from "wouter";
import { ComboBox } from "../shared/ui/ComboBox.tsx";
import styles from "./ComparePage.module.css";
import { RegionCountsDocument } from "./RegionsPage.graphql.ts";

interface Props {
  chosen: readonly string[];
  addressOf: (of: readonly string[]) => string;
}

const OFFERED = 30;

/** Finds a region by typing and lays it beside those chosen. Regions without a claim have nothing to lay beside. */
export function AddRegion({ chosen, addressOf }: Props) {
  const { data } = useSuspenseQuery(RegionCountsDocument);
  const counts = data.regions ?? [];
  const [, go] = useLocation();
  const [words, setWords] = useState("");
  const wanted = words.trim().toLowerCase();
  const choices = counts
    .filter(({ region, within }) => region && within > 0 && !chosen.includes(region.id))
    .filter(({ region }) => region?.label.toLowerCase().includes(wanted))
    .sort((a, b) => b.within - a.within)
    .slice(0, OFFERED)
    .map(({ region, within }) => ({
      id: region?.id ?? "",
      label: region?.label ?? "",
      beside: within === 1 ? "1 claim" : `${within} claims`,
    }));
  return (
    <div className={styles["add"]}>
      <ComboBox
        label="Add a region"
        choices={choices}
        words={words}
        onWords={setWords}
        value={null}
        onChange={(id) => {
          if (id === null) return;
          setWords("");
          go(addressOf([...chosen, id]));
        }}
        none={
          data.regions
            ? "No region by these words that has a claim."
            : "The claims on each region are still being counted."
        }
      />
    </div>
  );
}
