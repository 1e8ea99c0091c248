import { useState } from "react";
import { listIn } from "#server/domain/proposals/form/form-fields.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { useTermSearch } from "#web/shared/terms/use-term-search.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { SuggestBox } from "#web/shared/ui/SuggestBox.tsx";
import { useTermName } from "../use-term-name.ts";
import { useFormDesk } from "./form-desk.ts";
import { KINDS_OF_FIELD } from "./relation-choices.ts";
import styles from "./writing.module.css";

interface Props {
  of: string;
  /** What one adds: "Another way it can be made". */
  label: string;
  placeholder?: string;
  kinds?: readonly TermKind[];
}

/** A field that holds several terms, or ways of several terms: each can be taken out, another is added by typing. */
export function TermsField({ of, label, placeholder = "", kinds }: Props) {
  const { fields, put, refusalAt } = useFormDesk();
  const [words, setWords] = useState("");
  const { found, isLooking } = useTermSearch(words, kinds ?? KINDS_OF_FIELD[of] ?? []);
  const entries = listIn(fields, of);
  const set = (next: readonly string[]) => put({ [of]: next.join(" | ") });
  const refusal = refusalAt(of);
  return (
    <div className={styles["several"]} data-refused={refusal !== undefined}>
      {entries.length > 0 ? (
        <ul>
          {entries.map((entry) => (
            <li key={entry}>
              <WayName way={entry} />{" "}
              <TakeOut way={entry} onPress={() => set(entries.filter((one) => one !== entry))} />
            </li>
          ))}
        </ul>
      ) : null}
      <SuggestBox
        label={label}
        choices={found.map((term) => ({ id: term.id, label: term.label }))}
        isLooking={isLooking}
        words={words}
        onWords={setWords}
        placeholder={placeholder}
        onChoose={(chosen) => {
          if (!entries.includes(chosen.id)) set([...entries, chosen.id]);
          setWords("");
        }}
      />
      {refusal === undefined ? null : <p className={styles["refusal"]}>{refusal}</p>}
    </div>
  );
}

const TakeOut = ({ way, onPress }: { way: string; onPress: () => void }) => {
  const name = useTermName(way.split("+")[0]?.trim());
  return (
    <Button look="quiet" onPress={onPress} aria-label={`Take out ${name}`}>
      take out
    </Button>
  );
};

const WayName = ({ way }: { way: string }) => (
  <span>
    {way.split("+").map((term, i) => (
      <span key={term}>
        {i > 0 ? " together with " : ""}
        <TermName term={term.trim()} />
      </span>
    ))}
  </span>
);

const TermName = ({ term }: { term: string }) => <>{useTermName(term)}</>;
