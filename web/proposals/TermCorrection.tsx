import { useState } from "react";
import type { Term } from "#server/domain/term.ts";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { retire, reword } from "./corrections.ts";
import { MakeDraft } from "./MakeDraft.tsx";
import styles from "./proposals.module.css";

const CHOICES = [
  { id: "words", label: "Its name or its note", beside: "what it is called, what it is" },
  { id: "retire", label: "All of it: retire", beside: "taken only where nothing names it any more" },
] as const;

/** What can be put right of a term. */
export function TermCorrection({ term }: { term: Term }) {
  const [what, setWhat] = useState<(typeof CHOICES)[number]["id"]>();
  const [label, setLabel] = useState(term.label);
  const [note, setNote] = useState(term.note ?? "");
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
      <MakeDraft
        made={made}
        isChosen={what !== undefined}
        hint="For whoever decides. It can be written later."
      />
    </section>
  );
}
