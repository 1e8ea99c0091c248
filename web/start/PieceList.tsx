import { useId } from "react";
import { YearTicks } from "../shared/years/YearTicks.tsx";
import type { YearAxis } from "../shared/years/year-axis.ts";
import styles from "./PieceList.module.css";
import type { PieceRowFragment } from "./PieceRow.graphql.ts";
import { PieceRow } from "./PieceRow.tsx";

interface Props {
  title: string;
  /** Said once for all of them, beside the title. */
  beside?: string;
  pieces: readonly PieceRowFragment[];
  axis: YearAxis;
}

/** Pieces one below the other, their strips on the same axis so that the eye can run down the years. */
export function PieceList({ title, beside, pieces, axis }: Props) {
  const heading = useId();
  return (
    <section className={styles["list"]} aria-labelledby={heading}>
      <div className={styles["head"]}>
        <h2 id={heading}>
          {title}
          {beside ? <span className={styles["beside"]}> · {beside}</span> : null}
        </h2>
        <div className={styles["axis"]}>
          <YearTicks axis={axis} />
        </div>
      </div>
      <ul>
        {pieces.map((piece) => (
          <PieceRow key={piece.id} examination={piece} axis={axis} />
        ))}
      </ul>
    </section>
  );
}
