import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import styles from "./SearchFilters.module.css";
import { isNarrowed, type SearchFilter } from "./search-filter.ts";
import { TermFilterField } from "./TermFilterField.tsx";
import { YearFilterField } from "./YearFilterField.tsx";

interface Props {
  filter: SearchFilter;
  /** Puts what is named into the address; an empty text takes it out. */
  onChange: (changes: Readonly<Record<string, string>>) => void;
}

/** Narrows a search by kind of part, region and years; folded away, and its choices not read, until it is wanted. */
export function SearchFilters({ filter, onChange }: Props) {
  const [isOpen, setOpen] = useState(isNarrowed(filter));
  return (
    <Disclosure level={2} summary="Narrow by part, region or years" isOpen={isOpen} onOpenChange={setOpen}>
      {isOpen ? <Filters filter={filter} onChange={onChange} /> : null}
    </Disclosure>
  );
}

const Filters = ({ filter, onChange }: Props) => (
  <>
    <div className={styles["filters"]}>
      <TermFilterField
        label="Looked for on"
        kind="PART"
        value={filter.part}
        onChange={(part) => onChange({ part: part ?? "" })}
        placeholder="any part"
      />
      <TermFilterField
        label="Claimed for region"
        kind="REGION"
        value={filter.region}
        onChange={(region) => onChange({ region: region ?? "" })}
        placeholder="any region"
      />
      <YearFilterField label="Dated from" value={filter.from} onChange={(from) => onChange({ from })} />
      <YearFilterField
        label="Dated to"
        value={filter.to}
        onChange={(to) => onChange({ to })}
        refusal={
          filter.from !== undefined && filter.to !== undefined && filter.to < filter.from
            ? "Earlier than the year before it; no claim is of these years."
            : undefined
        }
      />
    </div>
    <p className={styles["hint"]}>
      Parts and regions count with those above and below them. A claim is of these years if its date can mean
      one of them; with a region, one claim must meet both.
    </p>
    {isNarrowed(filter) ? (
      <Button look="quiet" onPress={() => onChange({ part: "", region: "", from: "", to: "" })}>
        Take these filters away
      </Button>
    ) : null}
  </>
);
