import type { ObservationId } from "#server/domain/ids.ts";
import type { StripMark } from "#web/strips/strip-row.ts";
import { useDesk } from "./desk.ts";
import { inTreeOrder } from "./in-tree-order.ts";
import { PartItem } from "./PartItem.tsx";
import styles from "./PartList.module.css";

interface Props {
  marks: ReadonlyMap<ObservationId, StripMark>;
}

/** The parts of the piece with what speaks on each; the chosen one is open. */
export function PartList({ marks }: Props) {
  const { piece } = useDesk();
  if (piece.parts.length === 0)
    return (
      <p className={styles["empty"]}>
        <b>Begin with one part.</b> Choose a part in the drawing or below, then add what you see on it: a saw
        mark, a nail, a joint. Each thing is dated as soon as it is recorded.
      </p>
    );
  return (
    <section aria-label="Parts">
      <h2 className={styles["heading"]}>
        Parts <span>· {piece.parts.length}</span>
      </h2>
      <ul className={styles["parts"]}>
        {inTreeOrder(piece.parts).map(({ part, depth }) => (
          <PartItem key={part.id} part={part} depth={depth} marks={marks} />
        ))}
      </ul>
    </section>
  );
}
