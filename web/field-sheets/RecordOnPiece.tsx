import type { Seen } from "../shared/apollo/schema-types.graphql.ts";
import { Button } from "../shared/ui/Button.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import styles from "./Plan.module.css";
import { madeOn, partsOfKind } from "./piece-on-plan.ts";
import type { PieceDesk } from "./use-piece-on-plan.ts";

const ANSWERS: readonly { readonly id: Seen; readonly label: string }[] = [
  { id: "PRESENT", label: "seen" },
  { id: "ABSENT", label: "not there" },
  { id: "UNSEEN", label: "not visible" },
];
/** Parts of one kind on which a thing can be recorded here; the others on the page of the piece. */
const MOST_PARTS = 4;

interface Props {
  kind: { readonly id: string; readonly label: string };
  feature: { readonly id: string; readonly label: string };
  desk: PieceDesk;
}

/** How an item was found on each part of its kind; it is stored as soon as it is said. */
export function RecordOnPiece({ kind, feature, desk }: Props) {
  const parts = partsOfKind(desk.piece, kind.id);
  if (parts.length === 0)
    return (
      <p className={styles["none"]}>
        The piece has no part recorded of this kind ({kind.label}). Add it on the page of the piece.
      </p>
    );
  return (
    <ul className={styles["record"]}>
      {parts.slice(0, MOST_PARTS).map((part) => {
        const made = madeOn(desk.piece, part.id, feature.id);
        const on = { part: part.id, feature: feature.id };
        return (
          <li key={part.id}>
            <span className={styles["of"]} aria-hidden="true">
              {part.label}
            </span>
            <RadioGroup
              label={`${part.label}: ${feature.label}`}
              isLabelHidden
              choices={ANSWERS}
              value={made?.seen ?? null}
              onChange={(seen) => desk.record(on, seen)}
              isReadOnly={desk.isStoring}
            />
            {made ? (
              <span className="screen-only">
                <Button look="quiet" isDisabled={desk.isStoring} onPress={() => desk.record(on, null)}>
                  Take back
                </Button>
              </span>
            ) : null}
          </li>
        );
      })}
      {parts.length > MOST_PARTS ? (
        <li>{parts.length - MOST_PARTS} more parts of this kind stand on the page of the piece.</li>
      ) : null}
    </ul>
  );
}
