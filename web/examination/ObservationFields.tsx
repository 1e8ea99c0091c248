import type { Observation } from "#server/domain/examination.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { SEEN_CHOICES, SURENESS_CHOICES } from "#web/shared/words/seen-words.ts";
import { useDeeds } from "./desk.ts";
import { changeObservation, removeObservation } from "./edit-piece.ts";
import styles from "./ObservationItem.module.css";
import { useTyped } from "./use-typed.ts";

/** The fields of one observation; each change is stored at once. */
export function ObservationFields({ seen }: { seen: Observation }) {
  const { edit, glossary } = useDeeds();
  const stored = seen.note ?? "";
  const note = useTyped(stored);
  const keepNote = () => {
    const text = note.text.trim();
    if (text !== note.before)
      edit(changeObservation(seen.id, { note: text === "" ? undefined : text }), note.since);
    note.end();
  };
  return (
    <div className={`screen-only ${styles["fields"]}`}>
      <RadioGroup
        label="How it was found"
        choices={SEEN_CHOICES}
        value={seen.seen}
        onChange={(how) => edit(changeObservation(seen.id, { seen: how }))}
      />
      {seen.seen === "unseen" ? null : (
        <RadioGroup
          label="How sure"
          choices={SURENESS_CHOICES}
          value={seen.sureness}
          onChange={(sureness) => edit(changeObservation(seen.id, { sureness }))}
        />
      )}
      <TextField
        label="Note"
        value={note.text}
        onChange={note.type}
        onBlur={keepNote}
        lines={2}
        maxLength={2000}
      />
      <p className={styles["deeds"]}>
        <TextLink to={`/terms/${seen.feature}`}>What “{glossary.labelOf(seen.feature)}” is</TextLink>
        <Button look="quiet" onPress={() => edit(removeObservation(seen.id))}>
          Remove
        </Button>
      </p>
    </div>
  );
}
