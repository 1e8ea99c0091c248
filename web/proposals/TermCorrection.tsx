import { useState } from "react";
import type { Term } from "#server/domain/term.ts";
import { Button } from "../shared/ui/Button.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { retire, reword } from "./corrections.ts";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";
import { useMakeDraft } from "./use-make-draft.ts";

const CHOICES = [
  { id: "words", label: "Its name or its note", beside: "what it is called, what it is" },
  { id: "retire", label: "All of it: retire", beside: "taken only where nothing names it any more" },
] as const;

/** What can be put right of a term. */
export function TermCorrection({ term }: { term: Term }) {
  const [what, setWhat] = useState<(typeof CHOICES)[number]["id"]>();
  const [label, setLabel] = useState(term.label);
  const [note, setNote] = useState(term.note ?? "");
  const { make, step, why, setWhy } = useMakeDraft();
  const isReworded = label.trim() !== "" && (label !== term.label || note !== (term.note ?? ""));
  const made =
    what === "retire"
      ? retire(term)
      : what === "words" && isReworded
        ? reword(term, label.trim(), note.trim())
        : undefined;
  return (
    <section className={styles["form"]} aria-label="What is wrong">
      <RadioGroup
        label="What is wrong?"
        direction="column"
        choices={CHOICES}
        value={what ?? null}
        onChange={setWhat}
      />
      {what === "words" ? (
        <>
          <TextField label="It is called" value={label} onChange={setLabel} />
          <TextField label="What it is" value={note} onChange={setNote} lines={3} />
        </>
      ) : null}
      {what === undefined ? null : (
        <TextField
          label="Why"
          value={why}
          onChange={setWhy}
          lines={4}
          maxLength={5000}
          hint="For whoever decides. It can be written later."
        />
      )}
      <Refusals of={[step]} />
      <Button
        look="main"
        isDisabled={made === undefined || step.isUnderWay}
        onPress={() => made && void make(made)}
      >
        Make a draft and see what it would do
      </Button>
    </section>
  );
}
