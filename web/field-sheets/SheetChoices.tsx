import { useQuery } from "@apollo/client/react";
import { useDeferredValue, useState } from "react";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { Button } from "../shared/ui/Button.tsx";
import { ComboBox } from "../shared/ui/ComboBox.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { sayDating } from "../shared/words/say-dating.ts";
import { FindRegionsDocument } from "./FindRegions.graphql.ts";
import styles from "./Sheet.module.css";
import { EACH, type Each, type SheetQuestion } from "./sheet-question.ts";

interface Props {
  question: SheetQuestion;
  /** Name of the region asked for. */
  regionLabel: string;
  onChange: (question: SheetQuestion) => void;
}

const eachWords: Readonly<Record<Each, string>> = { "3": "short", "5": "longer", "8": "longest" };

/** What the sheet is for, if more is known than the form: a region, a claimed date, and how long it may be. */
export function SheetChoices({ question, regionLabel, onChange }: Props) {
  const [words, setWords] = useState(regionLabel);
  const [typedDate, setTypedDate] = useState(question.date ?? "");
  const settled = useDeferredValue(words.trim());
  const { data, previousData } = useQuery(FindRegionsDocument, {
    variables: { words: settled },
    skip: settled === "" || settled === regionLabel,
  });
  const choices = ((data ?? previousData)?.search ?? []).map(({ term: { id, label, broader } }) => ({
    ...{ id, label },
    ...(broader ? { beside: broader.label } : {}),
  }));
  const date = typedDate.trim();
  const dating = date === "" ? undefined : readDating(date, "event");
  const offered = isProblem(dating) ? dating.instead : undefined;
  return (
    <form
      className={`screen-only ${styles["choices"]}`}
      aria-label="What the sheet is for"
      onSubmit={(event) => {
        event.preventDefault();
        if (!isProblem(dating)) onChange({ ...question, date: date || null });
      }}
    >
      <ComboBox
        label="Region claimed"
        hint="Leave it empty if none is claimed."
        choices={choices}
        words={words}
        onWords={(typed) => {
          setWords(typed);
          if (typed === "" && question.region !== null) onChange({ ...question, region: null });
        }}
        value={question.region}
        onChange={(id) => {
          if (id === null || id === question.region) return;
          setWords(choices.find((choice) => choice.id === id)?.label ?? "");
          onChange({ ...question, region: id });
        }}
        none="No region by these words."
      />
      <div className={styles["date"]}>
        <TextField
          label="Date claimed"
          value={typedDate}
          onChange={setTypedDate}
          hint={
            dating && !isProblem(dating)
              ? `Read as: ${sayDating(dating)}.`
              : "1765, 1765~ (about), 1760/1780, 176X, 17XX; or empty."
          }
          {...(isProblem(dating) ? { refusal: dating.message } : {})}
          autoComplete="off"
          spellCheck="false"
        />
        {offered ? <Button onPress={() => setTypedDate(offered)}>Take {offered}</Button> : null}
        <Button type="submit" isDisabled={isProblem(dating) || date === (question.date ?? "")}>
          Use this date
        </Button>
      </div>
      <RadioGroup
        label="Length"
        choices={EACH.map((id) => ({ id, label: eachWords[id], beside: `${id} a part` }))}
        value={question.each}
        onChange={(each) => onChange({ ...question, each })}
      />
    </form>
  );
}
