import type { ObservationId } from "#server/domain/ids.ts";
import type { StripMark } from "#web/strips/strip-row.ts";
import { useDesk } from "./desk.ts";
import { PartItem } from "./PartItem.tsx";
import styles from "./PartList.module.css";
import { usePartRows } from "./use-part-rows.ts";

interface Props {
  marks: ReadonlyMap<ObservationId, StripMark>;
}

/** The parts of the piece with what speaks on each; the chosen one is open. */
export function PartList({ marks }: Props) {
  const { chosenPart, editing, asked } = useDesk();
  const rows = usePartRows();
  if (rows.length === 0)
    return (
      <p className={styles["empty"]}>
        <b>Begin with one part.</b> Choose a part in the drawing or below, then add what you see on it: a saw
        mark, a nail, a joint. Each thing is dated as soon as it is recorded.
      </p>
    );
  return (
    <section id="parts" aria-label="Parts">
      <h2 className={styles["heading"]}>
        Parts <span>· {rows.length}</span>
      </h2>
      <ul className={styles["parts"]}>
        {rows.map((row) => {
          const isOpen = row.part.id === chosenPart;
          return (
            <PartItem
              key={row.part.id}
              row={row}
              isOpen={isOpen}
              marks={isOpen ? marks : undefined}
              editing={isOpen ? editing : undefined}
              asked={isOpen && asked?.part === row.part.id ? asked : undefined}
            />
          );
        })}
      </ul>
    </section>
  );
}
