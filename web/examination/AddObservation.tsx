import { memo, useState } from "react";
import type { Part, Seen } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { SuggestBox } from "#web/shared/ui/SuggestBox.tsx";
import { SEEN_CHOICES } from "#web/shared/words/seen-words.ts";
import { useDeeds } from "./desk.ts";
import { addObservation } from "./edit-piece.ts";
import styles from "./ObservationItem.module.css";
import { useFeatures } from "./use-features.ts";

/** Adds a thing to a part: how it was found, then what, by typing. Features looked for on such a part come first. */
export const AddObservation = memo(function AddObservation({ part }: { part: Part }) {
  const { edit, learn } = useDeeds();
  const [words, setWords] = useState("");
  const [seen, setSeen] = useState<Seen>("present");
  const choices = useFeatures(words, part.kind);
  return (
    <div className={styles["adding"]}>
      <SuggestBox
        label={`Add to ${part.label}`}
        choices={choices}
        words={words}
        onWords={setWords}
        placeholder="saw mark, nail, joint, wood …"
        onChoose={(chosen) => {
          const feature = id<"term">(chosen.id);
          learn(feature, chosen.label);
          edit(addObservation({ part: part.id, feature, seen, sureness: "sure" }));
          setWords("");
        }}
      />
      <RadioGroup label="as" choices={SEEN_CHOICES} value={seen} onChange={setSeen} />
    </div>
  );
});
