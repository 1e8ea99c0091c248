import { useQuery } from "@apollo/client/react";
import { useDeferredValue, useState } from "react";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { Button } from "../shared/ui/Button.tsx";
import { ComboBox } from "../shared/ui/ComboBox.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { sayDating } from "../shared/words/say-dating.ts";
import { FindFormsDocument } from "./FindForms.graphql.ts";
import { FindRegionsDocument } from "./FindRegions.graphql.ts";
import type { PlanQuestion } from "./plan-question.ts";
import styles from "./Sheet.module.css";

interface Named {
  readonly id: string;
  readonly label: string;
}
interface Props {
  form: Named | null;
  region: Named | null;
  date: string | null;
  onAsk: (question: Omit<PlanQuestion, "piece">) => void;
}

/** What is claimed of the piece that a look is planned for. */
export function PlanChoices({ form: given, region: place, date: claimed, onAsk }: Props) {
  const [form, setForm] = useState(given);
  const [region, setRegion] = useState(place);
  const [date, setDate] = useState(claimed ?? "");
  const dating = date === "" ? undefined : readDating(date, "event");
  const offered = isProblem(dating) ? dating.instead : undefined;
  const isReady = form !== null && dating !== undefined && !isProblem(dating);
  return (
    <form
      className={`screen-only ${styles["choices"]}`}
      aria-label="What is claimed"
      onSubmit={(event) => {
        event.preventDefault();
        if (isReady) onAsk({ form: form.id, region: region?.id ?? null, date });
      }}
    >
      <FindTerm label="Form claimed" kind="form" value={form} onChange={setForm} />
      <FindTerm
        label="Region claimed"
        hint="Leave it empty if none is claimed."
        kind="region"
        value={region}
        onChange={setRegion}
      />
      <div className={styles["date"]}>
        <TextField
          label="Date claimed"
          value={date}
          onChange={(text) => setDate(text.trim())}
          hint={
            dating && !isProblem(dating)
              ? `Read as: ${sayDating(dating)}.`
              : "1765, 1765~ (about), 1760/1780, 176X, 17XX."
          }
          {...(isProblem(dating) ? { refusal: dating.message } : {})}
          autoComplete="off"
          spellCheck="false"
        />
        {offered ? <Button onPress={() => setDate(offered)}>Take {offered}</Button> : null}
        <Button type="submit" look="main" isDisabled={!isReady}>
          Plan the look
        </Button>
      </div>
    </form>
  );
}

interface FindProps {
  label: string;
  hint?: string;
  kind: "form" | "region";
  value: Named | null;
  onChange: (value: Named | null) => void;
}

/** A form or region, found by typing. */
function FindTerm({ label, hint, kind, value, onChange }: FindProps) {
  const [words, setWords] = useState(value?.label ?? "");
  const settled = useDeferredValue(words.trim());
  const { data, previousData } = useQuery(kind === "form" ? FindFormsDocument : FindRegionsDocument, {
    variables: { words: settled },
    skip: settled === "" || settled === value?.label,
  });
  const choices = ((data ?? previousData)?.search ?? []).map(({ term: { id, label: name, broader } }) => ({
    ...{ id, label: name },
    ...(broader ? { beside: broader.label } : {}),
  }));
  return (
    <ComboBox
      label={label}
      {...(hint === undefined ? {} : { hint })}
      choices={choices}
      words={words}
      onWords={(typed) => {
        setWords(typed);
        if (typed === "") onChange(null);
      }}
      value={value?.id ?? null}
      onChange={(id) => {
        const chosen = choices.find((choice) => choice.id === id);
        if (!chosen) return;
        setWords(chosen.label);
        onChange({ id: chosen.id, label: chosen.label });
      }}
      none={`No ${kind} by these words.`}
    />
  );
}
