import { useEffect, useRef, useState } from "react";
import type { Seen, Sureness } from "#server/domain/examination.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { SEEN_CHOICES, SURENESS_CHOICES } from "#web/shared/words/seen-words.ts";
import { type Asked, useDeeds } from "./desk.ts";
import { addObservation } from "./edit-piece.ts";
import styles from "./ObservationItem.module.css";

/** Records the answer to something that was worth looking at: what is known already, how it was found is to be said. */
export function RecordAnswer({ asked }: { asked: Asked }) {
  const { edit, askFor } = useDeeds();
  const [seen, setSeen] = useState<Seen | null>(null);
  const [sureness, setSureness] = useState<Sureness>("sure");
  const box = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    box.current?.scrollIntoView({ block: "center" });
    box.current?.querySelector("input")?.focus({ preventScroll: true });
  }, []);
  return (
    <fieldset ref={box} className={styles["answer"]}>
      <legend>{asked.label}: what was found?</legend>
      <RadioGroup label="How it was found" choices={SEEN_CHOICES} value={seen} onChange={setSeen} />
      {seen === null || seen === "unseen" ? null : (
        <RadioGroup label="How sure" choices={SURENESS_CHOICES} value={sureness} onChange={setSureness} />
      )}
      <p className={styles["deeds"]}>
        <Button
          look="main"
          isDisabled={seen === null}
          onPress={() => {
            if (seen === null) return;
            const { part, feature } = asked;
            edit(addObservation({ part, feature, seen, sureness: seen === "unseen" ? "sure" : sureness }));
            askFor(undefined);
          }}
        >
          Record
        </Button>
        <Button look="quiet" onPress={() => askFor(undefined)}>
          Not now
        </Button>
      </p>
    </fieldset>
  );
}
