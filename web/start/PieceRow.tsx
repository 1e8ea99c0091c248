import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import type { YearAxis } from "../shared/years/year-axis.ts";
import type { PieceRowFragment } from "./PieceRow.graphql.ts";
import styles from "./PieceRow.module.css";
import { PieceState } from "./PieceState.tsx";
import { useChangePiece } from "./use-change-piece.ts";

interface Props {
  examination: PieceRowFragment;
  axis: YearAxis;
}

/** One piece: what it is and what is claimed, its state in a sentence, its strips; can be deleted, and brought back. */
export function PieceRow({ examination, axis }: Props) {
  const { id, piece, changedAt, deleted } = examination;
  const { change, refusal } = useChangePiece(examination);
  // What was pressed here last: the button that takes its place gets the focus.
  const [last, setLast] = useState<"delete" | "undo">();
  const press = (what: "delete" | "undo") => {
    setLast(what);
    change(what);
  };
  if (deleted)
    return (
      <li className={styles["gone"]}>
        <p role="status">“{piece.title}” is deleted.</p>
        <Button autoFocus={last === "delete"} onPress={() => press("undo")}>
          Undo
        </Button>
        {refusal ? <p role="alert">{refusal}</p> : null}
      </li>
    );
  const { date, region, form } = piece.attribution;
  return (
    <li className={styles["row"]}>
      <div className={styles["words"]}>
        <h3 className={styles["title"]}>
          <TextLink to={`/pieces/${id}`}>{piece.title}</TextLink>
          {piece.invented ? <span className={styles["invented"]}> invented for demonstration</span> : null}
        </h3>
        <p className={styles["claimed"]}>
          Claimed: {form ? `${form.label}, ` : ""}
          {region ? `${region.label}, ` : ""}
          <b>{date}</b>
        </p>
      </div>
      <PieceState id={id} axis={axis} />
      <p className={styles["changed"]}>
        changed {sayDay(changedAt)}
        <Button look="quiet" autoFocus={last === "undo"} onPress={() => press("delete")}>
          Delete<span className="visually-hidden"> {piece.title}</span>
        </Button>
      </p>
      {refusal ? (
        <p role="alert" className={styles["refusal"]}>
          {refusal}
        </p>
      ) : null}
    </li>
  );
}
