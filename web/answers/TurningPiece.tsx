import { useMemo, useRef, useState } from "react";
import type { Piece } from "#server/domain/examination.ts";
import { useInView } from "#web/shared/navigation/use-in-view.ts";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { AnswerInStrips } from "./AnswerInStrips.tsx";
import styles from "./TurningPiece.module.css";
import { type Turn, turnPiece } from "./turn-piece.ts";
import { useAnswer } from "./use-answer.ts";

interface Props {
  piece: Piece;
  /** What the piece is before anything is changed: "claimed 1760 to 1780". */
  asItIs: string;
  turns: readonly Turn[];
  /** What one chooses among. */
  label: string;
  shows?: readonly string[] | undefined;
  unfolds?: readonly string[];
  tells?: readonly string[] | undefined;
}

const AS_IT_IS = "as-it-is";

/** A small piece with a few things to change, one at a time; the engine answers anew on each. Asked when it comes into sight. */
export function TurningPiece({ piece, asItIs, turns, label, shows, unfolds = [], tells }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const isInView = useInView(place);
  const [chosen, choose] = useState(AS_IT_IS);
  const examined = useMemo(() => {
    const turn = turns.find(({ id }) => id === chosen);
    return turn ? turnPiece(piece, turn.change) : piece;
  }, [piece, turns, chosen]);
  const answer = useAnswer(examined, { skip: !isInView });
  // What a turn adds is seen with the rest.
  const added = turns.flatMap(({ change }) => change.seen?.map((each) => each.id) ?? []);
  return (
    <div ref={place} className={styles["turning"]} data-turning>
      <RadioGroup
        label={label}
        direction="column"
        choices={[{ id: AS_IT_IS, label: asItIs }, ...turns.map(({ id, says }) => ({ id, label: says }))]}
        value={chosen}
        onChange={choose}
      />
      <AnswerInStrips answer={answer} shows={shows && [...shows, ...added]} unfolds={unfolds} tells={tells} />
    </div>
  );
}
