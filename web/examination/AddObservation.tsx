import { memo, useState } from "react";
import type { Observation, Part, Seen } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { SuggestBox } from "#web/shared/ui/SuggestBox.tsx";
import { SEEN_CHOICES } from "#web/shared/words/seen-words.ts";
import { useDeeds } from "./desk.ts";
import { addObservation } from "./edit-piece.ts";
import styles from "./ObservationItem.module.css";
import { useFeatures } from "./use-features.ts";

interface Props {
  part: Part;
  /** What is recorded on it. */
  recorded: readonly Observation[];
}

/**
 * Adds a thing to a part: how it was found, then what, by typing. Features looked for on such a part come first. One that is
 * recorded on it already is opened, to be corrected.
 */
export const AddObservation = memo(function AddObservation({ part, recorded }: Props) {
  const { edit, learn, editObservation } = useDeeds();
  const [words, setWords] = useState("");
  const [seen, setSeen] = useState<Seen>("present");
  const { choices: found, areNear, isLooking } = useFeatures(words, part.kind);
  const findRecorded = (feature: string) => recorded.find((each) => each.feature === feature);
  const choices = found.map((each) =>
    findRecorded(each.id) ? { ...each, beside: "recorded already" } : each,
  );
  return (
    <div className={styles["adding"]}>
      <SuggestBox
        label={`Add to ${part.label}`}
        choices={choices}
        isLooking={isLooking}
        words={words}
        onWords={setWords}
        keepsFocus={(chosen) => findRecorded(chosen.id) === undefined}
        {...(areNear ? { says: `Nothing goes by “${words.trim()}”. These come near:` } : {})}
        none="Nothing by these words. Try fewer, or take a broader term and write the rest in its note."
        placeholder="saw mark, nail, joint, wood …"
        onChoose={(chosen) => {
          const feature = id<"term">(chosen.id);
          const already = findRecorded(feature);
          learn(feature, chosen.label);
          if (already) editObservation(already.id);
          else edit(addObservation({ part: part.id, feature, seen, sureness: "sure" }));
          setWords("");
        }}
      />
      <RadioGroup label="as" choices={SEEN_CHOICES} value={seen} onChange={setSeen} />
    </div>
  );
});
