import { memo, useEffect, useRef } from "react";
import type { Observation } from "#server/domain/examination.ts";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { seenWords } from "#web/shared/words/seen-words.ts";
import { RowMark } from "#web/strips/RowMark.tsx";
import type { StripMark } from "#web/strips/strip-row.ts";
import { useDeeds } from "./desk.ts";
import { ObservationFields } from "./ObservationFields.tsx";
import styles from "./ObservationItem.module.css";

interface Props {
  seen: Observation;
  mark: StripMark | undefined;
  isOpen: boolean;
}

/** One thing seen, looked for or not to be seen; it unfolds into its fields. */
export const ObservationItem = memo(function ObservationItem({ seen, mark, isOpen }: Props) {
  const { glossary, editObservation } = useDeeds();
  const item = useRef<HTMLLIElement>(null);
  const wasOpen = useRef(false);
  useEffect(() => {
    // Opened from a strip, it takes the focus; opened by its own button, the focus is there already.
    if (isOpen && !wasOpen.current && !item.current?.contains(document.activeElement))
      item.current?.querySelector("button")?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  return (
    <li ref={item} className={styles["observation"]}>
      <Disclosure
        level={3}
        isOpen={isOpen}
        onOpenChange={(opens) => editObservation(opens ? seen.id : undefined)}
        summary={
          <span className={styles["summary"]}>
            <RowMark mark={mark ?? "not-looked"} />
            <span>
              {glossary.labelOf(seen.feature)} <span className={styles["how"]}>{seenWords(seen)}</span>
            </span>
          </span>
        }
      >
        {isOpen ? <ObservationFields seen={seen} /> : null}
      </Disclosure>
      {seen.note === undefined || isOpen ? null : <p className={styles["note"]}>{seen.note}</p>}
    </li>
  );
});
